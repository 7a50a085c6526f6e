//! What can be chosen for one entry.

use exercises::correct::{Change, Correctable, Correction, Said};
use exercises::log::Barrier;
use leptos::prelude::*;
use words::Key;
use words::review::upper;

use super::bench::Bench;
use super::days::Days;
use crate::patient::desk::Desk;
use crate::patient::score::Score;
use crate::shared::Fault;

/// Another answer, "a mistake", or as it was said first: one press.
#[component]
pub fn Choices(line: Correctable) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let bench = Bench::here();
    let choices = line.choices();
    let button = move |text: &'static str, to: Correction| {
        view! { <button type="button" disabled=desk.house.busy on:click=move |_| bench.put_right(line, to)>{text}</button> }
    };
    let changes = move || view! { <Changes line change=choices.change/> };
    // Below a long list the rest would not be seen.
    let list = matches!(choices.change, Change::Reason(_));
    view! {
        <div class="told-choices stack">
            <Fault/>
            {(!list).then(changes)}
            {choices.take_out.then(|| button(words.take_out(line.said), Correction::Never))}
            {choices.stands.then(|| button(words.text(Key::CorrectStands), Correction::Stands))}
            {list.then(changes)}
        </div>
    }
}

/// What an entry can say instead.
#[component]
fn Changes(line: Correctable, change: Change) -> impl IntoView {
    let words = Desk::here().house.words();
    let bench = Bench::here();
    match change {
        Change::Nothing => ().into_any(),
        Change::Score { now, pain } => {
            let ends = if pain { [Key::PainLeast, Key::PainMost] } else { [Key::ActivityLeast, Key::ActivityMost] };
            let [least, most] = ends.map(|key| words.text(key));
            let label = words.text(Key::CorrectChange).to_owned();
            let give = move |score| bench.say(line, line.said.with_score(score));
            view! { <Score label least most now give/> }.into_any()
        }
        Change::Other(other) => {
            let text = bench.named(|names| words.said_so(other, names)).unwrap_or_default();
            view! { <Say line wanted=other text/> }.into_any()
        }
        Change::Reason(now) => {
            let others = Barrier::ALL.into_iter().filter(|reason| *reason != now);
            let buttons = others.map(|reason| {
                let (wanted, text) = (line.said.with_reason(reason), upper(words.barrier(reason)));
                view! { <Say line wanted text/> }
            });
            view! { <div class="choices">{buttons.collect_view()}</div> }.into_any()
        }
        Change::Days { from, until, why } => view! { <Days line from until why/> }.into_any(),
    }
}

/// One thing that the entry can say instead.
#[component]
fn Say(line: Correctable, wanted: Said, text: String) -> impl IntoView {
    let busy = Desk::here().house.busy;
    let bench = Bench::here();
    view! { <button type="button" disabled=busy on:click=move |_| bench.say(line, wanted)>{text}</button> }
}
