//! The page about reminders.

use leptos::prelude::*;
use words::Key;

use super::background::WhileClosed;
use super::calendar::Calendar;
use super::meeting::Meeting;
use super::quiet::Quiet;
use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// The next reminder, a meeting, quiet times, another calendar, and what happens while the window is closed.
#[component]
pub fn Reminders() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    context.load_reminders();
    let known = Memo::new(move |_| context.reminders.with(Option::is_some));
    let next =
        move || context.reminders.with(|reminders| reminders.as_ref().map(|reminders| words.next_reminder(reminders)));
    view! {
        <main class="screen">
            <div class="column stack-8">
                <div class="stack-2">
                    <h1>{words.text(Key::RemindersTitle)}</h1>
                    <p role="status"><strong>{next}</strong></p>
                    <p class="soft">{words.text(Key::RemindersWhat)}</p>
                    <p>{words.text(Key::RemindersNotDriving)}</p>
                    <p class="soft">{words.text(Key::RemindersMayFail)}</p>
                </div>
                <Fault/>
                <Show when=move || known.get()><Meeting/><Quiet/></Show>
                <Calendar/>
                <WhileClosed/>
                <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
