//! Exporting all data unencrypted.

use leptos::prelude::*;
use wire::device::ExportOwnData;
use words::Key;

use crate::patient::context::PatientContext;

/// What the export contains, the button, and where it was saved.
#[component]
pub fn Save() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let folder = RwSignal::new(None::<String>);
    let save = move |_| {
        context
            .app
            .request::<ExportOwnData>((), move |files| folder.set(files.first().map(|file| file.folder().to_owned())));
    };
    let told = move || folder.get().map(|folder| view! { <p class="path">{words.mine_saved(&folder)}</p> });
    view! {
        <section class="stack">
            <p>{words.text(Key::MineWhat)}</p>
            <button type="button" class="main" disabled=context.app.busy on:click=save>{words.text(Key::MineSave)}</button>
            <div role="status">{told}</div>
        </section>
    }
}
