//! Minutes of walking, warmth or rest: the time goes on with the screen off.

use exercises::day_string;
use exercises::guide::Phase;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::clock_left::ClockLeft;
use super::driver::Driver;
use super::guided::Guided;
use super::minutes_done::MinutesDone;
use super::run_string::RunStringView;
use crate::shared::AppContext;

/// The screen of a time that needs no guidance.
#[component]
pub fn TimerRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let going = Signal::derive(move || {
        let view = driver.view.get();
        day_string::hold(if view.phase == Phase::Confirming { 1.0 } else { view.progress })
    });
    let confirming = Memo::new(move |_| driver.view.get().phase == Phase::Confirming);
    let effort = words.effort_of(script.item.dose);
    let told = view! {
        <Show when=move || !confirming.get() fallback=move || view! { <MinutesDone/> }>
            <div class="stack-1 soft told">
                {effort.clone().map(|effort| view! { <p>{effort}</p> })}
                <p>{words.text(Key::ScreenMayBeOff)}</p>
            </div>
        </Show>
    };
    let pressed = told.into_any();
    view! { <Guided script something_wrong pressed><RunStringView going><ClockLeft/></RunStringView></Guided> }
}
