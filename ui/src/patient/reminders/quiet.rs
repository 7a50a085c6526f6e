//! Daily quiet times.

use exercises::remind::{QuietTimesDraft, Span};
use leptos::prelude::*;
use wire::device::{QuietTimesRequest, SetReminders};
use words::{Key, Words};

use super::spans::Spans;
use crate::patient::context::PatientContext;
use crate::patient::time_field::TimeField;

/// The default for a new quiet time: noon to one o'clock.
const PROPOSED: Span = Span { from: 12 * 60, to: 13 * 60 };

/// The list, and a form for one more. Additions and removals are saved immediately, and the page says so: leaving it loses nothing.
#[component]
pub fn Quiet() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let held = context
        .reminders
        .with_untracked(|reminders| reminders.as_ref().map(|reminders| reminders.quiet.clone()).unwrap_or_default());
    let draft = RwSignal::new(QuietTimesDraft::new(held));
    let span = RwSignal::new(PROPOSED);
    let kept = RwSignal::new(None::<String>);
    let unfit = move || !draft.with(|draft| draft.accepts(span.get())) || context.app.busy.get();
    let keep = move |changed: QuietTimesDraft, said: fn(Words, &str) -> String, span: Span| {
        let quiet = changed.quiet().to_vec();
        context.app.request::<SetReminders>(QuietTimesRequest { quiet }, move |reminders| {
            draft.set(QuietTimesDraft::new(reminders.quiet.clone()));
            context.reminders.set(Some(reminders));
            kept.set(Some(said(words, &words.quiet_span(span))));
        });
    };
    let add = move |_| {
        let span = span.get_untracked();
        let mut changed = draft.get_untracked();
        changed.add(span);
        keep(changed, |words, span| words.quiet_added(span), span);
    };
    let out = move |span| {
        let mut changed = draft.get_untracked();
        changed.remove(span);
        keep(changed, |words, span| words.quiet_taken_out(span), span);
    };
    view! {
        <section class="stack">
            <h2>{words.text(Key::NoReminderHoursTitle)}</h2>
            <p class="soft">{words.text(Key::NoReminderHoursWhat)}</p>
            <Spans draft out/>
            <div class="row">
                <TimeField label=words.text(Key::From).to_owned() chosen=PROPOSED.from set=move |from| span.update(|span| span.from = from)/>
                <TimeField label=words.text(Key::To).to_owned() chosen=PROPOSED.to set=move |to| span.update(|span| span.to = to)/>
            </div>
            <button type="button" disabled=unfit on:click=add>{words.text(Key::NoReminderHoursAdd)}</button>
            <p role="status">{move || kept.get()}</p>
        </section>
    }
}
