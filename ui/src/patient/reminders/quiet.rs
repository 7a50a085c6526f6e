//! Quiet times of every day.

use exercises::remind::{QuietTimesDraft, Span};
use leptos::prelude::*;
use wire::device::{QuietTimesRequest, SetReminders};
use words::Key;

use super::spans::Spans;
use crate::patient::context::PatientContext;
use crate::patient::time_field::TimeField;

/// What is proposed for the next one: noon to one o'clock.
const PROPOSED: Span = Span { from: 12 * 60, to: 13 * 60 };

/// The list, one more, and, once anything is changed, the button that keeps it.
#[component]
pub fn Quiet() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let held = context
        .reminders
        .with_untracked(|reminders| reminders.as_ref().map(|reminders| reminders.quiet.clone()).unwrap_or_default());
    let draft = RwSignal::new(QuietTimesDraft::new(held));
    let span = RwSignal::new(PROPOSED);
    let unfit = move || !draft.with(|draft| draft.accepts(span.get()));
    let add = move |_| draft.update(|draft| draft.add(span.get_untracked()));
    let save = move |_| {
        let quiet = draft.with_untracked(|draft| draft.quiet().to_vec());
        context.app.request::<SetReminders>(QuietTimesRequest { quiet }, move |reminders| {
            draft.set(QuietTimesDraft::new(reminders.quiet.clone()));
            context.reminders.set(Some(reminders));
        });
    };
    view! {
        <section class="stack">
            <h2>{words.text(Key::NoReminderHoursTitle)}</h2>
            <p class="soft">{words.text(Key::NoReminderHoursWhat)}</p>
            <Spans draft/>
            <div class="row">
                <TimeField label=words.text(Key::From).to_owned() chosen=PROPOSED.from set=move |from| span.update(|span| span.from = from)/>
                <TimeField label=words.text(Key::To).to_owned() chosen=PROPOSED.to set=move |to| span.update(|span| span.to = to)/>
            </div>
            <button type="button" disabled=unfit on:click=add>{words.text(Key::NoReminderHoursAdd)}</button>
            <Show when=move || draft.with(QuietTimesDraft::is_changed)>
                <button type="button" class="main" disabled=context.app.busy on:click=save>{words.text(Key::NoReminderHoursSave)}</button>
            </Show>
        </section>
    }
}
