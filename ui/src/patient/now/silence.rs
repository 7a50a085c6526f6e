//! While reminders are suppressed: until when.

use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::page::Page;

/// One line, with a button to end a meeting or else the way to all reminder settings; empty if reminders are not suppressed.
#[component]
pub fn Silence() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let said = Memo::new(move |_| context.reminders.with(|reminders| words.silence(reminders.as_ref()?)));
    let meeting = Memo::new(move |_| {
        context.reminders.with(|reminders| reminders.as_ref().is_some_and(|reminders| reminders.meeting_until.is_some()))
    });
    let button = move || {
        match meeting.get() {
        true => view! {
            <button type="button" class="quiet" disabled=context.app.busy on:click=move |_| context.meeting(None)>
                {words.text(Key::MeetingEnd)}
            </button>
        }
        .into_any(),
        false => view! {
            <button type="button" class="quiet" on:click=move |_| context.open(Page::Reminders)>{words.text(Key::RemindersTitle)}</button>
        }
        .into_any(),
    }
    };
    let shown = move || {
        said.get().map(|line| {
            view! {
                <p>{line}</p>
                {button}
            }
        })
    };
    view! { <div class="silence small" role="status">{shown}</div> }
}
