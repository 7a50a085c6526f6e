//! Before and between trials: where to put the phone, what should be near, and the button to continue.

use exercises::guide::{Phase, Press};
use exercises::plan::BodySide;
use exercises::run::{Trial, Work};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::super::driver::Driver;
use super::where_phone::WherePhone;
use crate::patient::sounds;
use crate::shared::figure::Figure;
use crate::shared::{AppContext, Fault};

/// The leg, the set-up, the last time, and the button that starts the countdown.
#[component]
pub fn Between(
    script: Box<RunScript>,
    next: impl Fn() + Copy + Send + 'static,
    something_wrong: impl Fn() + Copy + Send + 'static,
) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let view = driver.view.get_untracked();
    let name = words.exercise_name(&script.exercise).to_owned();
    let drawing =
        script.run.rung.as_ref().map_or_else(|| script.exercise.poses.clone(), |rung| script.exercise.figure(rung));
    let leg = words.stood_on(view.part.side);
    let by_leg = view.kind.is_by_leg();
    let part = words.part_of_kind(view.kind, view.part.number, view.part.of, false);
    let last = last(driver).map(|trial| words.last_attempt(words.seconds(trial.held_ms)));
    let rest = Memo::new(move |_| driver.view.get().seconds.filter(|_| driver.view.get().phase == Phase::Resting));
    let resting =
        move || rest.get().map(|s| words.rest_for(s)).unwrap_or_else(|| words.text(Key::WhenReadyStart).to_owned());
    let first = last.is_none();
    let steps = move || {
        words.set_up_steps(driver.set_up.get(), driver.motion.has_sensor(), by_leg).map(|step| view! { <li>{step}</li> })
    };
    let mirrored = view.part.side == Some(BodySide::Left);
    let pose = Signal::stored(1.0);
    let start = move |_| {
        sounds::unlock();
        if driver.set_up.get_untracked().placement().is_some() {
            driver.motion.ask_leave(next);
        } else {
            next();
        }
    };
    view! {
        <main class="screen run">
            <div class="run-head">
                <p class="soft">{words.list_comma(&name, &part)}</p>
                <h1>{leg}</h1>
                <p>{words.conditions(&script.run.work)}</p>
            </div>
            <Fault/>
            <div class="between">
                <div class="between-side">
                    // Without a sensor as well the hand is over what counts the time, as the steps say.
                    <Figure drawing mirrored pose set_up=driver.set_up/>
                    <WherePhone/>
                </div>
                <div class="between-words">
                    {last.map(|last| view! { <p class="last-try number">{last}</p> })}
                    <ol class="steps" class:brief=!first>{steps}</ol>
                    <p class="soft number">{resting}</p>
                </div>
            </div>
            <div class="controls stack">
                <button type="button" class="main" on:click=start>{words.text(Key::StartCount)}</button>
                <div class="row">
                    <button type="button" on:click=move |_| driver.press(Press::Stop)>{words.text(Key::Stop)}</button>
                    <button type="button" class="alarm" on:click=move |_| something_wrong()>{words.text(Key::SomethingWrong)}</button>
                </div>
            </div>
        </main>
    }
}

/// The last trial, if it was measured.
fn last(driver: Driver) -> Option<Trial> {
    let Work::Balance(balance) = driver.run().work else { return None };
    balance.trials.last().copied().filter(|trial| trial.end != exercises::run::TrialEnd::CutOff)
}
