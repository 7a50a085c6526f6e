//! Repetitions in progress: the bob moves along the string with the tempo.

use exercises::day_string;
use exercises::guide::Press;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::count::Count;
use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;
use crate::shared::AppContext;

/// The screen of repetitions.
#[component]
pub fn RepsRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let going = Signal::derive(move || day_string::reps(driver.view.get().pose));
    let pressed = view! { <Failed/> }.into_any();
    view! { <Guided script something_wrong pressed><RunStringView going/><Count/></Guided> }
}

/// A button to mark a repetition as failed, and to undo that. It keeps its place, and is not seen before the first repetition.
#[component]
fn Failed() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let failed = Memo::new(move |_| (driver.view.get().controls.failed, driver.view.get().marked));
    let tap = move || words.text(if failed.get().1 { Key::RepetitionFailedUndo } else { Key::RepetitionFailed });
    view! {
        <button type="button" class="failed" class:not-yet=move || !failed.get().0 disabled=move || !failed.get().0 on:click=move |_| driver.press(Press::Failed)>{tap}</button>
    }
}
