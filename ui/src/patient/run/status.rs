//! What a screen reader says during a run, and the device's own voice if the person wants it: a few words at each phase and
//! half-way, never the seconds.

use exercises::guide::{Beat, Breathing, GuideView, Phase, SoundMode};
use exercises::run::RunEnd;
use leptos::prelude::*;
use words::{Key, Words};

use super::balance::during_trial;
use super::driver::Driver;
use crate::patient::{sounds, voice};
use crate::shared::AppContext;

/// The status of the run, which is always on the page.
#[component]
pub fn RunStatus() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let kind = driver.view.with_untracked(|view| view.kind);
    let trial = move || during_trial(kind, driver.set_up.get().touch_ends(), driver.motion.has_sensor());
    let said = Memo::new(move |_| said(&driver.view.get(), trial(), words));
    let shaken = Memo::new(move |_| pattern(&driver.view.get()));
    Effect::new(move || {
        let pattern = shaken.get();
        if !pattern.is_empty() {
            sounds::shake(pattern);
        }
    });
    Effect::new(move || {
        let said = said.get();
        if sounds::sound_mode() == SoundMode::Voice && !said.is_empty() {
            voice::speak(&said, words.locale);
        }
    });
    on_cleanup(voice::stop);
    view! { <p class="heard" role="status">{said}</p> }
}

fn said(view: &GuideView, trial: Key, words: Words) -> String {
    let side = words.side_of_part(view.part.side);
    let part = words.part_of(view.part.number, view.part.of);
    let with = |key| {
        let parts: Vec<&str> = [words.text(key), &part, &side].into_iter().filter(|text| !text.is_empty()).collect();
        words.commas(&parts)
    };
    match view.phase {
        Phase::CountIn => with(Key::GetReady),
        Phase::Holding | Phase::Stretching | Phase::Timing | Phase::OnBeat | Phase::Tallying | Phase::Trial if view.half => {
            words.text(Key::Halfway).to_owned()
        }
        Phase::Holding => with(Key::Hold),
        Phase::EasingIn => with(Key::EaseIn),
        Phase::Stretching => with(Key::KeepStretch),
        Phase::OnBeat => with(Key::MoveOnBeat),
        Phase::OwnPace if view.is_prompt() => String::new(),
        Phase::OwnPace => with(Key::OwnPace),
        Phase::Timing | Phase::Tallying => words.text(Key::TimeRuns).to_owned(),
        Phase::Saying => words.text(Key::HowManyComplete).to_owned(),
        Phase::Confirming => words.text(Key::MinutesDone).to_owned(),
        Phase::Breathing(part) => words.breathing(part).to_owned(),
        Phase::Trial => words.text(trial).to_owned(),
        Phase::Resting if view.part.changes_side => with(Key::ChangeSides),
        Phase::Resting => words.text(Key::Rest).to_owned(),
        Phase::Paused { slept: false } => words.text(Key::Paused).to_owned(),
        Phase::Paused { slept: true } => words.text(Key::PausedAsleep).to_owned(),
        Phase::Waiting => with(Key::WhenReady),
        Phase::Beat(_) => view.repetition.map(|(n, of)| words.part_of(n, of)).unwrap_or_default(),
        Phase::Settling => words.text(Key::AttemptOver).to_owned(),
        Phase::Ended(RunEnd::Completed) => words.text(Key::Done).to_owned(),
        Phase::Ended(_) => words.text(Key::StoppedHere).to_owned(),
    }
}

/// The vibration that accompanies the sound of a phase.
fn pattern(view: &GuideView) -> &'static [u16] {
    match view.phase {
        Phase::Holding | Phase::Stretching | Phase::Timing | Phase::Tallying | Phase::Trial if view.half => &[60, 80, 60],
        Phase::Holding | Phase::Stretching | Phase::Timing | Phase::OnBeat | Phase::Tallying | Phase::Trial => {
            &[80, 60, 220]
        }
        Phase::Resting | Phase::Settling | Phase::Saying => &[220, 60, 80],
        Phase::Beat(Beat::Up) | Phase::EasingIn | Phase::Breathing(Breathing::In) => &[60],
        Phase::Beat(Beat::Down) | Phase::Breathing(Breathing::Out) => &[120],
        Phase::Ended(RunEnd::Completed) => &[220, 60, 220, 60, 220],
        _ => &[],
    }
}
