//! Movements on a beat: the bob swings to the other side on each beat, and falls as the time passes.

use exercises::day_string;
use exercises::guide::{GuideView, Phase};
use leptos::prelude::*;
use wire::patient::RunScript;

use super::driver::Driver;
use super::guided::Guided;
use super::run_string::RunStringView;
use super::seconds::Seconds;
use crate::shared::clock;

/// The screen of movements on a beat. Where the person wants no motion the bob hangs still.
#[component]
pub fn BeatRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let driver = Driver::current();
    let calm = clock::is_still();
    let going = Signal::derive(move || {
        let view = driver.view.get();
        day_string::beat(fallen(&view), view.beats.filter(|_| !calm))
    });
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    view! { <Guided script something_wrong><RunStringView going><Seconds seconds/></RunStringView></Guided> }
}

/// How far the bob has fallen.
fn fallen(view: &GuideView) -> f64 {
    match view.phase {
        Phase::OnBeat | Phase::Paused { .. } => view.progress,
        Phase::Ended(_) => 1.0,
        Phase::Resting => 1.0 - view.progress,
        _ => 0.0,
    }
}
