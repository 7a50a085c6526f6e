//! What to know before an exercise is done for the first time, or for the first time at its level.

use exercises::run::{Run, RunEnd};
use leptos::prelude::*;
use wire::patient::{Checkpoint, RunScript, RunSnapshot};
use words::Key;

use super::context::PatientContext;
use super::how_to::{List, Steps};
use super::page::Page;
use super::{sounds, wake};
use crate::shared::Fault;
use crate::shared::figure::Figure;

/// Precautions and signs to stop, with the pain limit, then the steps. The buttons stay at the foot of the page.
#[component]
pub fn Cautions(script: Box<RunScript>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let level = script.exercise.level(script.run.rung.as_ref());
    let (texts, drawing, needs) = (level.texts(words.lang()), level.figure(), words.needs(level.equipment()));
    let change = words.change_of(&script.item, &script.exercise);
    let (hand, cue) = (script.hand_on_support, script.item.note.clone());
    let with = words.done_with(&script.item).map(|with| view! { <p><strong>{with}</strong></p> });
    let limit = script.item.dose.kind().rules().asks_pain().then(|| words.stop_above(script.item.pain_limit));
    let held = script.item.dose.is_kept();
    let (plan, run) = (script.plan, script.run.clone());
    let begin = move |_| {
        sounds::unlock();
        wake::keep();
        context.replace(Page::Run(script.clone()));
    };
    let not_now = move |_| {
        let stopped = Run { end: RunEnd::Stopped, ..run.clone() };
        context.app.request::<Checkpoint>(RunSnapshot { plan, run: stopped }, move |_| context.back());
    };
    let told = texts.map(|texts| {
        view! {
            <div class="stack-1"><p class="soft">{texts.name.clone()}</p><h1>{words.text(Key::BeforeYouBegin)}</h1></div>
            <List title=words.text(Key::Precautions) lines=texts.cautions.clone()/>
            <List title=words.text(Key::SignsToStop) lines=texts.stop_signs.clone() alarm=true/>
            {hand.then(|| view! { <p><strong>{words.text(Key::HandOnSupport)}</strong></p> })}
            {with}
            {limit.map(|limit| view! { <p><strong>{limit}</strong></p> })}
            <Figure drawing held/>
            <Steps texts needs change cue/>
        }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                {told}
                <p class="soft">{words.text(Key::IfInDoubt)}</p>
                <div class="page-foot">
                    <Fault/>
                    <div class="row">
                        <button type="button" data-back="" on:click=not_now>{words.text(Key::NotNow)}</button>
                        <button type="button" class="main" on:click=begin>{words.text(Key::ReadStart)}</button>
                    </div>
                </div>
            </div>
        </main>
    }
}
