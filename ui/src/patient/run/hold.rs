//! A hold as it is done: the bob falls second by second, and the string above it is straight.

use exercises::day_string;
use exercises::guide::{GuideView, Phase};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Words;

use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;
use super::seconds::Seconds;

/// The screen of a hold.
#[component]
pub fn HoldRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let going = Signal::derive(move || day_string::hold(straight(&driver.view.get())));
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    view! { <Guided script part something_wrong><RunStringView going><Seconds seconds/></RunStringView></Guided> }
}

/// How much of the string is straight: during the hold as it goes on, else as it was or will be.
fn straight(view: &GuideView) -> f64 {
    match view.phase {
        Phase::Holding | Phase::Paused { .. } => view.progress,
        Phase::Ended(_) => 1.0,
        Phase::Resting => 1.0 - view.progress,
        _ => 0.0,
    }
}

/// Which part: of a rest the one that follows.
fn part(view: &GuideView, words: Words) -> String {
    let (n, of) = (view.part.number, view.part.of);
    let part = if view.phase == Phase::Resting { words.next_hold_of(n, of) } else { words.hold_of(n, of) };
    words.with_side(part, view.part.leg)
}
