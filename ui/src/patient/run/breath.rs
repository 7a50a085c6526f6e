//! Breathing at a pace: the bob rises with breathing in and sinks with breathing out.

use exercises::day_string;
use exercises::guide::Phase;
use leptos::prelude::*;
use wire::patient::RunScript;

use super::clock_left::ClockLeft;
use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;

/// The screen of breathing at a pace.
#[component]
pub fn BreathRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let going = Signal::derive(move || {
        let view = driver.view.get();
        day_string::reps(if matches!(view.phase, Phase::Breathing(_)) { view.pose } else { 0.0 })
    });
    view! { <Guided script something_wrong><RunStringView going/><ClockLeft/></Guided> }
}
