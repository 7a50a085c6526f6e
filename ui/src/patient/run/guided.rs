//! The frame of a guided run with controls: the current phase, the moving figure, and the buttons.

use exercises::guide::{GuideView, Phase};
use exercises::plan::BodySide;
use leptos::prelude::*;
use wire::patient::RunScript;
use words::{Key, Words};

use super::controls::RunControls;
use super::driver::Driver;
use crate::shared::figure::{Figure, NARROW};
use crate::shared::{AppContext, Fault};

/// Head, figure and controls of a run. `children` is shown beside the figure, `pressed` has the buttons besides the usual ones.
#[component]
pub fn Guided(
    script: Box<RunScript>,
    something_wrong: impl Fn() + Copy + Send + 'static,
    #[prop(optional)] pressed: Option<AnyView>,
    children: Children,
) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let name = words.exercise_name(&script.exercise).to_owned();
    let above = name.clone();
    let drawing =
        script.run.rung.as_ref().map_or_else(|| script.exercise.poses.clone(), |rung| script.exercise.figure(rung));
    // Before the first part begins, it is said what it is done with.
    let with = words.done_with(&script.item);
    let with = move || {
        let before = matches!(driver.view.get().phase, Phase::Waiting | Phase::CountIn);
        with.clone().filter(|_| before).map(|with| view! { <p><strong>{with}</strong></p> })
    };
    let cue = (!script.item.note.is_empty()).then(|| view! { <p class="note">{script.item.note.clone()}</p> });
    let pose = Signal::derive(move || driver.view.get().pose);
    let mirrored = Memo::new(move |_| driver.view.get().part.side == Some(BodySide::Left));
    let moves_up = script.exercise.poses.moves_up();
    let title = Memo::new(move |_| title(&driver.view.get(), &name, moves_up, words));
    let part = Memo::new(move |_| part(&driver.view.get(), words));
    view! {
        <main class="screen run">
            <div class="run-head">
                <p class="soft">{above}</p>
                <h1>{title}</h1>
                <p>{part}</p>
                {with}
                {cue}
            </div>
            <Fault/>
            <div class="run-middle">
                <div class="run-figure">
                    {move || view! { <Figure drawing=drawing.clone() pose mirrored=mirrored.get() size=NARROW/> }}
                </div>
                {children()}
            </div>
            {pressed}
            <RunControls something_wrong/>
        </main>
    }
}

/// The current phase, in a few words.
fn title(view: &GuideView, name: &str, moves_up: bool, words: Words) -> String {
    let key = match view.phase {
        Phase::Waiting => Key::WhenReady,
        Phase::CountIn => Key::GetReady,
        Phase::Holding => Key::Hold,
        Phase::EasingIn => Key::EaseIn,
        Phase::Stretching => Key::KeepStretch,
        Phase::OwnPace if view.is_prompt() => return name.to_owned(),
        Phase::OwnPace => Key::OwnPace,
        Phase::Timing | Phase::Tallying => Key::TimeRuns,
        Phase::OnBeat => Key::MoveOnBeat,
        Phase::Saying => Key::HowManyComplete,
        Phase::Confirming => Key::MinutesDone,
        Phase::Breathing(part) => return words.breathing(part).to_owned(),
        Phase::Resting if view.part.changes_side => Key::ChangeSides,
        Phase::Resting => Key::Rest,
        Phase::Paused { slept: false } => Key::Paused,
        Phase::Paused { slept: true } => Key::PausedAsleep,
        Phase::Beat(beat) => return words.beat(moves_up, beat).to_owned(),
        Phase::Trial | Phase::Settling => Key::TouchWhenDown,
        Phase::Ended(_) => Key::Done,
    };
    words.text(key).to_owned()
}

/// The current part; during a rest the one that follows.
fn part(view: &GuideView, words: Words) -> String {
    let part = words.part_of_kind(view.kind, view.part.number, view.part.of, view.phase == Phase::Resting);
    words.with_side(part, view.part.side)
}
