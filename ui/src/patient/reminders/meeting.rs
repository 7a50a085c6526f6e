//! Suppressing reminders during a meeting.

use exercises::remind::MEETINGS;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// A button for each duration, or one to end the current meeting.
#[component]
pub fn Meeting() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let busy = context.app.busy;
    let goes_on = Memo::new(move |_| {
        context.reminders.with(|reminders| reminders.as_ref().and_then(|reminders| reminders.meeting_until))
    });
    let shown = move || {
        match goes_on.get() {
        Some(until) => view! {
            <p><strong>{words.meeting_until(&words.minute(until.minute()))}</strong></p>
            <button type="button" disabled=busy on:click=move |_| context.meeting(None)>{words.text(Key::MeetingEnd)}</button>
        }
        .into_any(),
        None => {
            let lengths = MEETINGS.map(|minutes| {
                let begin = move |_| context.meeting(Some(minutes));
                view! { <button type="button" disabled=busy on:click=begin>{words.for_minutes(minutes)}</button> }
            });
            view! {
                <p class="soft">{words.text(Key::MeetingWhat)}</p>
                <div class="row lengths">{lengths}</div>
            }
            .into_any()
        }
    }
    };
    view! { <section class="stack"><h2>{words.text(Key::MeetingTitle)}</h2>{shown}</section> }
}
