//! Exporting all data unencrypted.

use leptos::prelude::*;
use wire::device::ExportOwnData;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::saved::SavedFiles;

/// What the export contains, the button, and where it was saved.
#[component]
pub fn Save() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let saved = RwSignal::new(Vec::new());
    let save = move |_| context.app.request::<ExportOwnData>((), move |files| saved.set(files));
    view! {
        <section class="stack">
            <p>{words.text(Key::MineWhat)}</p>
            <button type="button" class="main" disabled=context.app.busy on:click=save>{words.text(Key::MineSave)}</button>
            <SavedFiles files=saved folder=true/>
        </section>
    }
}
