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

/// The list, one more, and, once anything is changed, the button that keeps it.
#[component]
pub fn Quiet() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let held = desk.reminders.with_untracked(|stand| stand.as_ref().map(|stand| stand.quiet.clone()).unwrap_or_default());
    let draft = RwSignal::new(Draft::new(held));
    let span = RwSignal::new(PROPOSED);
    let unfit = move || !draft.with(|draft| draft.takes(span.get()));
    let add = move |_| draft.update(|draft| draft.add(span.get_untracked()));
    let save = move |_| {
        let quiet = draft.with_untracked(|draft| draft.quiet().to_vec());
        desk.house.ask::<SetReminders>(QuietTimes { quiet }, move |stand| {
            draft.set(Draft::new(stand.quiet.clone()));
            desk.reminders.set(Some(stand));
        });
    };
    view! {
        <section class="stack">
            <h2>{words.text(Key::QuietTitle)}</h2>
            <p class="soft">{words.text(Key::QuietWhat)}</p>
            <Spans draft/>
            <div class="row">
                <TimeField label=words.text(Key::From).to_owned() chosen=PROPOSED.from set=move |from| span.update(|span| span.from = from)/>
                <TimeField label=words.text(Key::To).to_owned() chosen=PROPOSED.to set=move |to| span.update(|span| span.to = to)/>
            </div>
            <button type="button" disabled=unfit on:click=add>{words.text(Key::QuietAdd)}</button>
            <Show when=move || draft.with(Draft::is_changed)>
                <button type="button" class="main" disabled=desk.house.busy on:click=save>{words.text(Key::QuietSave)}</button>
            </Show>
        </section>
    }
}
