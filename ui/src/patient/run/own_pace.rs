//! Movements at the person's own pace: they count by pressing, or say when all are done. A prompt needs one press.

use exercises::day_string;
use exercises::guide::{GuideView, Phase, Press};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::count::Count;
use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;
use crate::shared::AppContext;

/// The screen of movements at the person's own pace.
#[component]
pub fn OwnPaceRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let going = Signal::derive(move || day_string::reps(hanging(&driver.view.get())));
    let prompt = Memo::new(move |_| driver.view.get().is_prompt());
    let pressed = view! { <CountButtons prompt/> }.into_any();
    view! {
        <Guided script something_wrong pressed>
            <RunStringView going/>
            <Show when=move || !prompt.get()><Count/></Show>
        </Guided>
    }
}

/// The bob rises with what was counted, because nobody knows how far the present movement has got.
fn hanging(view: &GuideView) -> f64 {
    match view.repetition {
        Some((counted, of)) if view.phase == Phase::OwnPace && of > 0 => f64::from(counted) / f64::from(of),
        _ => 0.0,
    }
}

/// The buttons to count one movement and to say that all are done; of a prompt the one that says it was done.
#[component]
fn CountButtons(prompt: Memo<bool>) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let may_count = Memo::new(move |_| driver.view.get().controls.count);
    let count = move |_| driver.press(Press::CountOne);
    let all_done = move |_| driver.press(Press::AllDone);
    let done = move || words.text(if prompt.get() { Key::DoneNow } else { Key::AllMovementsDone });
    view! {
        <div class="stack count-buttons" class:not-yet=move || !may_count.get()>
            <Show when=move || !prompt.get()>
                <button type="button" class="count-one" disabled=move || !may_count.get() on:click=count>{words.text(Key::CountOne)}</button>
            </Show>
            <button type="button" class="main" disabled=move || !may_count.get() on:click=all_done>{done}</button>
        </div>
    }
}
