//! The possible corrections of one entry.

use exercises::correct::{Change, Correctable, EntryContent};
use exercises::log::Barrier;
use exercises::log::Correction;
use leptos::prelude::*;
use words::Key;
use words::review::upper;

use super::context::CorrectionContext;
use super::days::Days;
use crate::patient::context::PatientContext;
use crate::patient::score_buttons::ScoreButtons;
use crate::shared::Fault;

/// Another answer, "a mistake", or the original value: one press.
#[component]
pub fn Choices(line: Correctable) -> impl IntoView {
    let patient = PatientContext::current();
    let words = patient.app.words();
    let context = CorrectionContext::current();
    let choices = line.choices();
    let button = move |text: &'static str, to: Correction| {
        view! { <button type="button" disabled=patient.app.busy on:click=move |_| context.correct(line, to)>{text}</button> }
    };
    let changes = move || view! { <Changes line change=choices.change/> };
    // Below a long list the other choices would be out of sight.
    let list = matches!(choices.change, Change::Reason(_));
    view! {
        <div class="told-choices stack">
            <Fault/>
            {(!list).then(changes)}
            {choices.take_out.then(|| button(words.take_out(line.said), Correction::Never))}
            {choices.stands.then(|| button(words.text(Key::CorrectUndo), Correction::Stands))}
            {list.then(changes)}
        </div>
    }
}

/// The other values that an entry can have.
#[component]
fn Changes(line: Correctable, change: Change) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let context = CorrectionContext::current();
    match change {
        Change::Nothing => ().into_any(),
        Change::Score { now, pain } => {
            let ends = if pain { [Key::PainLeast, Key::PainMost] } else { [Key::ActivityLeast, Key::ActivityMost] };
            let [least, most] = ends.map(|key| words.text(key));
            let label = words.text(Key::CorrectChange).to_owned();
            let give = move |score| context.say(line, line.said.with_score(score));
            view! { <ScoreButtons label least most now give/> }.into_any()
        }
        Change::Other(other) => {
            let text = context.named(|names| words.said_so(other, names)).unwrap_or_default();
            view! { <AnswerButton line wanted=other text/> }.into_any()
        }
        Change::Reason(now) => {
            let others = Barrier::ALL.into_iter().filter(|reason| *reason != now);
            let buttons = others.map(|reason| {
                let (wanted, text) = (line.said.with_reason(reason), upper(words.barrier(reason)));
                view! { <AnswerButton line wanted text/> }
            });
            view! { <div class="choices">{buttons.collect_view()}</div> }.into_any()
        }
        Change::Days { from, until, why } => view! { <Days line from until why/> }.into_any(),
    }
}

/// One of these values.
#[component]
fn AnswerButton(line: Correctable, wanted: EntryContent, text: String) -> impl IntoView {
    let busy = PatientContext::current().app.busy;
    let context = CorrectionContext::current();
    view! { <button type="button" disabled=busy on:click=move |_| context.say(line, wanted)>{text}</button> }
}
