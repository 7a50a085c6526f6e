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
use crate::shared::clock;

/// The screen of a hold or a stretch.
#[component]
pub fn HoldRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let (part_ms, calm) = (script.item.dose.part_ms(), clock::is_still());
    let going = Signal::derive(move || {
        let view = driver.view.get();
        match view.phase {
            Phase::EasingIn => day_string::easing_in(view.progress),
            Phase::Stretching => day_string::stretch(view.progress),
            _ => day_string::hold(straight(&view)),
        }
        .breathing(held(&view, part_ms).filter(|_| !calm))
    });
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    view! { <Guided script something_wrong><RunStringView going><Seconds seconds/></RunStringView></Guided> }
}

/// Milliseconds of the hold or stretch that are over; `None` while nothing is held.
fn held(view: &GuideView, part_ms: u32) -> Option<f64> {
    matches!(view.phase, Phase::Holding | Phase::Stretching).then(|| view.progress * f64::from(part_ms))
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
