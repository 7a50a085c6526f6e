//! Suppressing reminders during a meeting, directly on Now.

use exercises::remind::MEETINGS;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// Whether reminders are to come that a meeting would suppress.
pub fn can_be_in_meeting(context: PatientContext) -> Memo<bool> {
    Memo::new(move |_| {
        let come = context.reminders.with(|reminders| reminders.as_ref().is_some_and(|it| !it.silent && it.next.is_some()));
        come && !context.is_sample()
    })
}

/// A button for each duration, while it is `wanted`, which lives longer than this part of the page: that is drawn anew every minute.
#[component]
pub fn MeetingNow(wanted: Memo<bool>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let lengths = move || {
        MEETINGS.map(|minutes| {
            let begin = move |_| context.meeting(Some(minutes));
            view! { <button type="button" disabled=context.app.busy on:click=begin>{words.for_minutes(minutes)}</button> }
        })
    };
    view! {
        <Show when=move || wanted.get()>
            <div class="meeting-now stack-1" role="group" aria-labelledby="meeting-now">
                <p id="meeting-now" class="small soft">{words.text(Key::MeetingNow)}</p>
                <div class="row lengths">{lengths()}</div>
            </div>
        </Show>
    }
}
