//! The page about reminders.

use leptos::prelude::*;
use words::Key;

use super::calendar::Calendar;
use super::meeting::Meeting;
use super::quiet::Quiet;
use super::stay::WhileClosed;
use crate::patient::desk::Desk;
use crate::shared::Fault;

/// The next one, a meeting, quiet times, another calendar, and what happens while the window is closed.
#[component]
pub fn Reminders() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    desk.look_at_reminders();
    let known = Memo::new(move |_| desk.reminders.with(Option::is_some));
    let next = move || desk.reminders.with(|stand| stand.as_ref().map(|stand| words.next_reminder(stand)));
    view! {
        <main class="screen">
            <div class="column stack-8">
                <div class="stack-2">
                    <h1>{words.text(Key::RemindersTitle)}</h1>
                    <p role="status"><strong>{next}</strong></p>
                    <p class="soft">{words.text(Key::RemindersWhat)}</p>
                </div>
                <Fault/>
                <Show when=move || known.get()><Meeting/><Quiet/></Show>
                <Calendar/>
                <WhileClosed/>
                <button type="button" class="quiet" on:click=move |_| desk.close()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
