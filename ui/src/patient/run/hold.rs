//! A hold or a stretch in progress: the bob falls as the seconds pass, and the string above it is straight. A stretch is eased into:
//! the slack string calms down first.

use exercises::day_string;
use exercises::guide::{GuideView, Phase};
use leptos::prelude::*;
use wire::patient::RunScript;

use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;
use super::seconds::Seconds;

/// The screen of a hold or a stretch.
#[component]
pub fn HoldRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let going = Signal::derive(move || {
        let view = driver.view.get();
        match view.phase {
            Phase::EasingIn => day_string::easing_in(view.progress),
            Phase::Stretching => day_string::stretch(view.progress),
            _ => day_string::hold(straight(&view)),
        }
    });
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    view! { <Guided script something_wrong><RunStringView going><Seconds seconds/></RunStringView></Guided> }
}

/// How much of the string is straight: during the hold according to its progress, otherwise as at its end or beginning.
fn straight(view: &GuideView) -> f64 {
    match view.phase {
        Phase::Holding | Phase::Stretching | Phase::Paused { .. } => view.progress,
        Phase::Ended(_) => 1.0,
        Phase::Resting => 1.0 - view.progress,
        _ => 0.0,
    }
}
