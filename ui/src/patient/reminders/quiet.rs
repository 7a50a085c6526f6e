//! Quiet times of every day.

use exercises::remind::{Draft, Span};
use leptos::prelude::*;
use wire::own::{QuietTimes, SetReminders};
use words::Key;

use super::spans::Spans;
use crate::patient::desk::Desk;
use crate::patient::time_field::TimeField;

/// What is proposed for the next one: noon to one o'clock.
const PROPOSED: Span = Span { from: 12 * 60, to: 13 * 60 };

/// The list, and one more. What is added or taken out is kept at once, and the page says so: leaving it loses nothing.
#[component]
pub fn Quiet() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let held = desk.reminders.with_untracked(|stand| stand.as_ref().map(|stand| stand.quiet.clone()).unwrap_or_default());
    let draft = RwSignal::new(Draft::new(held));
    let span = RwSignal::new(PROPOSED);
    let kept = RwSignal::new(None::<String>);
    let unfit = move || !draft.with(|draft| draft.takes(span.get())) || desk.house.busy.get();
    let keep = move |changed: Draft, said: Key, span: Span| {
        let quiet = changed.quiet().to_vec();
        desk.house.ask::<SetReminders>(QuietTimes { quiet }, move |stand| {
            draft.set(Draft::new(stand.quiet.clone()));
            desk.reminders.set(Some(stand));
            kept.set(Some(words.fill(said, &[("span", &words.quiet_span(span))])));
        });
    };
    let add = move |_| {
        let span = span.get_untracked();
        let mut changed = draft.get_untracked();
        changed.add(span);
        keep(changed, Key::QuietAdded, span);
    };
    let out = move |span| {
        let mut changed = draft.get_untracked();
        changed.take_out(span);
        keep(changed, Key::QuietTakenOut, span);
    };
    view! {
        <section class="stack">
            <h2>{words.text(Key::QuietTitle)}</h2>
            <p class="soft">{words.text(Key::QuietWhat)}</p>
            <Spans draft out/>
            <div class="row">
                <TimeField label=words.text(Key::From).to_owned() chosen=PROPOSED.from set=move |from| span.update(|span| span.from = from)/>
                <TimeField label=words.text(Key::To).to_owned() chosen=PROPOSED.to set=move |to| span.update(|span| span.to = to)/>
            </div>
            <button type="button" disabled=unfit on:click=add>{words.text(Key::QuietAdd)}</button>
            <p role="status">{move || kept.get()}</p>
        </section>
    }
}
