//! A hold as it is done: the bob falls second by second, and the string above it is straight.

use exercises::guide::{GuideView, Phase};
use exercises::plan::Leg;
use exercises::thread;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::{Key, Words};

use super::controls::RunControls;
use super::driver::Driver;
use super::seconds::Seconds;
use super::thread::Thread;
use crate::shared::figure::{Figure, NARROW};
use crate::shared::{Fault, House};

/// The screen of a hold.
#[component]
pub fn HoldRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let words = House::here().words();
    let driver = Driver::here();
    let name = script.exercise.text(words.lang).map(|texts| texts.name.clone());
    let drawing =
        script.run.rung.as_ref().map_or_else(|| script.exercise.poses.clone(), |rung| script.exercise.figure(rung));
    let pose = Signal::derive(move || driver.view.get().pose);
    let mirrored = Memo::new(move |_| driver.view.get().part.leg == Some(Leg::Left));
    let going = Signal::derive(move || thread::hold(straight(&driver.view.get())));
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    let title = Memo::new(move |_| title(&driver.view.get(), words));
    let part = Memo::new(move |_| part(&driver.view.get(), words));
    view! {
        <main class="screen run">
            <div class="run-head">
                <p class="soft">{name}</p>
                <h1>{title}</h1>
                <p>{part}</p>
            </div>
            <Fault/>
            <div class="run-middle">
                <div class="run-figure">
                    {move || view! { <Figure drawing=drawing.clone() pose mirrored=mirrored.get() size=NARROW/> }}
                </div>
                <Thread going><Seconds seconds/></Thread>
            </div>
            <RunControls something_wrong/>
        </main>
    }
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

/// What is on, in a word or two.
pub fn title(view: &GuideView, words: Words) -> String {
    let key = match view.phase {
        Phase::Waiting => Key::WhenReady,
        Phase::CountIn => Key::GetReady,
        Phase::Holding => Key::Hold,
        Phase::Resting if view.part.changes_side => Key::ChangeSides,
        Phase::Resting => Key::Rest,
        Phase::Paused { slept: false } => Key::Paused,
        Phase::Paused { slept: true } => Key::PausedAsleep,
        Phase::Beat(exercises::guide::Beat::Up) => Key::BeatUp,
        Phase::Beat(exercises::guide::Beat::Keep) => Key::BeatKeep,
        Phase::Beat(exercises::guide::Beat::Down) => Key::BeatDown,
        Phase::Trial | Phase::Settling => Key::TouchWhenDown,
        Phase::Ended(_) => Key::Done,
    };
    words.text(key).to_owned()
}

/// Which part: of a rest the one that follows.
fn part(view: &GuideView, words: Words) -> String {
    let key = if view.phase == Phase::Resting { Key::NextHoldOf } else { Key::HoldOf };
    let part = words.fill(key, &[("n", &view.part.number), ("of", &view.part.of)]);
    words.with_side(part, view.part.leg)
}
