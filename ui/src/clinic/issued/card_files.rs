//! The files of an issued card.

use leptos::prelude::*;
use wire::clinic::{RemoveCardFiles, SaveOtherForms};
use wire::saved::SavedFile;
use words::Key;

use crate::shared::AppContext;
use crate::shared::saved::SavedFiles;

/// Where the card was saved, that its files are not encrypted, more forms of it, and a button that removes them.
#[component]
pub fn CardFiles(files: Vec<SavedFile>) -> impl IntoView {
    let app = AppContext::current();
    let (files, whole) = (RwSignal::new(files), RwSignal::new(false));
    let more = move |_| {
        app.request::<SaveOtherForms>((), move |all| {
            files.set(all);
            whole.set(true);
        });
    };
    let remove = move |_| {
        app.request::<RemoveCardFiles>((), move |()| {
            files.set(Vec::new());
            whole.set(true);
        });
    };
    let inside = move || {
        if files.with(Vec::is_empty) {
            return view! { <p role="status">{app.text(Key::CardFilesRemoved)}</p> }.into_any();
        }
        view! {
            <SavedFiles files/>
            <p class="small">{app.text(Key::CardFilesClear)}</p>
            <div class="presses">
                <Show when=move || !whole.get()>
                    <button type="button" disabled=app.busy on:click=more>{app.text(Key::CardFilesMore)}</button>
                </Show>
                <button type="button" disabled=app.busy on:click=remove>{app.text(Key::CardFilesRemove)}</button>
            </div>
        }
        .into_any()
    };
    view! { <div class="stack card-files"><h2>{app.text(Key::IssuedFiles)}</h2>{inside}</div> }
}
