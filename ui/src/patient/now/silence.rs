//! While no reminder comes: until when.

use leptos::prelude::*;
use words::Key;

use crate::patient::desk::Desk;
use crate::patient::page::Page;

/// One line, with the end of a meeting and the way to everything about reminders; nothing while one may come.
#[component]
pub fn Silence() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let said = Memo::new(move |_| desk.reminders.with(|stand| words.silence(stand.as_ref()?)));
    let meeting =
        Memo::new(move |_| desk.reminders.with(|stand| stand.as_ref().is_some_and(|stand| stand.meeting_until.is_some())));
    let end = move || {
        meeting.get().then(|| {
            view! {
                <button type="button" class="quiet" disabled=desk.house.busy on:click=move |_| desk.meeting(None)>
                    {words.text(Key::MeetingEnd)}
                </button>
            }
        })
    };
    let shown = move || {
        said.get().map(|line| {
            view! {
                <p>{line}</p>
                {end}
                <button type="button" class="quiet" on:click=move |_| desk.open(Page::Reminders)>{words.text(Key::RemindersTitle)}</button>
            }
        })
    };
    view! { <div class="silence small" role="status">{shown}</div> }
}
