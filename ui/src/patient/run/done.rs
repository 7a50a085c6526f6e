//! The end of a run: what was done, and what comes next.

use exercises::guide::{GuideView, Phase};
use exercises::run::{RunEnd, Work};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::driver::Driver;
use super::parts::Parts;
use super::results::Results;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::Fault;

/// What was done, as it was logged; then the question, if there is one.
#[component]
pub fn Done(script: Box<RunScript>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let driver = Driver::current();
    let run = driver.run();
    let GuideView { phase, .. } = driver.view.get_untracked();
    let title = if phase == Phase::Ended(RunEnd::Completed) { Key::Done } else { Key::StoppedHere };
    let sides = script.item.side.in_turn().len() as u32;
    let what = words.done_of(&run, sides);
    let results = match &run.work {
        Work::Balance(balance) => {
            Some(view! { <Results balance=balance.clone() sensed=driver.sensed.get_untracked() own=script.own.clone()/> })
        }
        _ => None,
    };
    let go_on = move |_| match driver.question.get_untracked() {
        Some(Some(question)) => context.replace(Page::After(vec![question])),
        _ => context.close(),
    };
    let saved = move || driver.question.get().is_some();
    view! {
        <main class="screen">
            <div class="column ended">
                <div class="stack-5">
                    <div class="stack-1">
                        <p class="soft">{words.exercise_name(&script.exercise).to_owned()}</p>
                        <h1>{words.text(title)}</h1>
                        <p>{what}</p>
                    </div>
                    <Parts run side=script.item.side/>
                    {results}
                </div>
                <div class="ended-foot stack">
                    <Fault/>
                    <Show when=move || driver.unsaved.get()>
                        <button type="button" on:click=move |_| driver.save_again()>{words.text(Key::SaveAgain)}</button>
                    </Show>
                    <button type="button" class="main" disabled=move || !saved() && !driver.unsaved.get() on:click=go_on>{words.text(Key::ContinueOn)}</button>
                </div>
            </div>
        </main>
    }
}
