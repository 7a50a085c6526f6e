//! Exporting the coming slots for another calendar.

use leptos::prelude::*;
use wire::device::ExportCalendar;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::saved::SavedFiles;

/// The purpose of such a file, the button, and where it was saved.
#[component]
pub fn Calendar() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let saved = RwSignal::new(Vec::new());
    let save = move |_| context.app.request::<ExportCalendar>((), move |file| saved.set(vec![file]));
    view! {
        <section class="stack">
            <h2>{words.text(Key::CalendarTitle)}</h2>
            <p class="soft">{words.text(Key::CalendarWhat)}</p>
            <button type="button" disabled=context.app.busy on:click=save>{words.text(Key::CalendarSave)}</button>
            <SavedFiles files=saved/>
        </section>
    }
}
