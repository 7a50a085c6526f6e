//! Repetitions as they are done: the bob goes along the string by the tempo, the count is in large digits.

use exercises::guide::{GuideView, Phase, Press};
use exercises::plan::Leg;
use exercises::thread;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::{Key, Words};

use super::controls::RunControls;
use super::driver::Driver;
use super::hold::title;
use super::thread::Thread;
use crate::shared::figure::{Figure, NARROW};
use crate::shared::{Fault, House};

/// The screen of repetitions.
#[component]
pub fn RepsRun(script: Box<RunScript>, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let words = House::here().words();
    let driver = Driver::here();
    let name = script.exercise.text(words.lang).map(|texts| texts.name.clone());
    let drawing =
        script.run.rung.as_ref().map_or_else(|| script.exercise.poses.clone(), |rung| script.exercise.figure(rung));
    let pose = Signal::derive(move || driver.view.get().pose);
    let mirrored = Memo::new(move |_| driver.view.get().part.leg == Some(Leg::Left));
    let going = Signal::derive(move || thread::reps(driver.view.get().pose));
    let title = Memo::new(move |_| title(&driver.view.get(), words));
    let part = Memo::new(move |_| part(&driver.view.get(), words));
    let failed = Memo::new(move |_| (driver.view.get().controls.failed, driver.view.get().marked));
    let tap = move || words.text(if failed.get().1 { Key::TakeItBack } else { Key::ThatFailed });
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
                <Thread going/>
                <Count/>
            </div>
            <button type="button" class="failed" disabled=move || !failed.get().0 on:click=move |_| driver.press(Press::Failed)>{tap}</button>
            <RunControls something_wrong/>
        </main>
    }
}

/// The repetition in large digits; in a rest or a count-in the seconds.
#[component]
fn Count() -> impl IntoView {
    let words = House::here().words();
    let driver = Driver::here();
    let shown = Memo::new(move |_| {
        let view = driver.view.get();
        match (view.phase, view.repetition, view.seconds) {
            (Phase::Beat(_) | Phase::Paused { .. } | Phase::Ended(_), Some((n, of)), _) => {
                (u32::from(n), words.fill(Key::OfSo, &[("of", &of)]))
            }
            (_, _, seconds) => (seconds.unwrap_or(0), "s".to_owned()),
        }
    });
    view! {
        <div class="count" role="timer">
            <span class="seconds">{move || shown.get().0}</span>
            <span class="soft">" "{move || shown.get().1}</span>
        </div>
    }
}

fn part(view: &GuideView, words: Words) -> String {
    let key = if view.phase == Phase::Resting { Key::NextSetOf } else { Key::SetOf };
    let part = words.fill(key, &[("n", &view.part.number), ("of", &view.part.of)]);
    words.with_side(part, view.part.leg)
}
