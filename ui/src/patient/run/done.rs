//! The end of a run: what was done, and what comes next.

use exercises::guide::{GuideView, Phase};
use exercises::run::{RunEnd, Work};
use leptos::prelude::*;
use wire::patient::RunScript;
use words::Key;

use super::dizzier::Dizzier;
use super::driver::Driver;
use super::parts::Parts;
use super::results::Results;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::{Fault, screen};

/// What was done; then whether it has made dizzy, where that is asked; then the question, if there is one.
#[component]
pub fn Done(script: Box<RunScript>) -> impl IntoView {
    let context = PatientContext::current();
    let driver = Driver::current();
    let phase = driver.view.with_untracked(|view| view.phase);
    // Somebody who said that something is wrong has said what.
    let asks = script.exercise.kind.rules().asks_dizziness() && phase != Phase::Ended(RunEnd::Trouble);
    let during = (script.plan, script.run.item);
    let asking = RwSignal::new(false);
    let leave = move || match driver.question.get_untracked() {
        Some(Some(question)) => context.replace(Page::After(vec![question])),
        _ => context.close(),
    };
    let go_on = move || if asks { asking.set(true) } else { leave() };
    let script = StoredValue::new(script);
    move || match asking.get() {
        true => screen(move || view! { <Dizzier during go_on=leave/> }),
        false => screen(move || view! { <WhatWasDone script=script.get_value() go_on/> }),
    }
}

/// What was done, as it was logged.
#[component]
fn WhatWasDone(script: Box<RunScript>, go_on: impl Fn() + Copy + Send + Sync + 'static) -> impl IntoView {
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
                    <button type="button" class="main" disabled=move || !saved() && !driver.unsaved.get() on:click=move |_| go_on()>{words.text(Key::ContinueOn)}</button>
                </div>
            </div>
        </main>
    }
}
