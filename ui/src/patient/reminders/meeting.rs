//! "Not now, I am in a meeting."

use exercises::remind::MEETINGS;
use leptos::prelude::*;
use words::Key;

use crate::patient::desk::Desk;

/// A button for each length, or the end of the one that goes on.
#[component]
pub fn Meeting() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let busy = desk.house.busy;
    let goes_on = Memo::new(move |_| desk.reminders.with(|stand| stand.as_ref().and_then(|stand| stand.meeting_until)));
    let shown = move || match goes_on.get() {
        Some(until) => view! {
            <p><strong>{words.fill(Key::MeetingUntil, &[("time", &words.minute(until.minute()))])}</strong></p>
            <button type="button" disabled=busy on:click=move |_| desk.meeting(None)>{words.text(Key::MeetingEnd)}</button>
        }
        .into_any(),
        None => {
            let lengths = MEETINGS.map(|minutes| {
                let begin = move |_| desk.meeting(Some(minutes));
                view! { <button type="button" disabled=busy on:click=begin>{words.for_minutes(minutes)}</button> }
            });
            view! {
                <p class="soft">{words.text(Key::MeetingWhat)}</p>
                <div class="row lengths">{lengths}</div>
            }
            .into_any()
        }
    };
    view! { <section class="stack"><h2>{words.text(Key::MeetingTitle)}</h2>{shown}</section> }
}
