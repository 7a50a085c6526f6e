//! Saved keys of this clinic, chosen when it is set up on a new computer.

use leptos::prelude::*;
use leptos::task::spawn_local;
use words::Key;

use crate::clinic::fields::Fold;
use crate::shared::{AppContext, file};

/// A chosen file with saved keys.
#[derive(Clone)]
pub struct SavedKeys {
    /// The file's name.
    pub file: String,
    /// Its bytes in Base64.
    pub bytes: String,
}

/// A folded section with a file field.
#[component]
pub fn SavedKeysField(saved: RwSignal<Option<SavedKeys>>) -> impl IntoView {
    let app = AppContext::current();
    let take = move |field: web_sys::HtmlInputElement| {
        let Some(chosen) = file::chosen(&field).into_iter().next() else { return };
        spawn_local(async move {
            match file::base64(&chosen).await {
                Ok(bytes) => saved.set(Some(SavedKeys { file: chosen.name(), bytes })),
                Err(failure) => app.fault.set(Some(failure)),
            }
        });
    };
    let chosen = move || saved.with(|saved| saved.as_ref().map(|saved| app.words().set_up_saved_chosen(&saved.file)));
    view! {
        <Fold title=app.text(Key::SetUpSaved) inside=Signal::derive(String::new)>
            <p class="small soft">{app.text(Key::SetUpSavedWhat)}</p>
            <label class="pick">
                <span>{app.text(Key::SetUpSavedFile)}</span>
                <input type="file" on:change:target=move |event| take(event.target())/>
            </label>
            <p role="status">{chosen}</p>
        </Fold>
    }
}
