//! Adds exercises from files.

use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;
use wire::prescribing::{ImportOwn, ImportOwnRequest};
use words::Key;

use super::state::OwnPage;
use crate::shared::{AppContext, file};

/// A file field for the files of exercises.
#[component]
pub fn Import() -> impl IntoView {
    let (app, page) = (AppContext::current(), expect_context::<OwnPage>());
    let take = move |field: HtmlInputElement| {
        let chosen = file::chosen(&field);
        spawn_local(async move {
            let mut files = Vec::new();
            for one in chosen {
                match file::text(&one).await {
                    Ok(text) => files.push((one.name(), text)),
                    Err(failure) => {
                        app.fault.set(Some(failure));
                        files.clear();
                        break;
                    }
                }
            }
            // Allows the same file to be chosen again.
            field.set_value("");
            if !files.is_empty() {
                app.request::<ImportOwn>(ImportOwnRequest { files }, move |all| page.all.set(Some(all)));
            }
        });
    };
    view! {
        <label class="pick">
            <span>{app.text(Key::OwnImport)}</span>
            <input type="file" multiple accept=".toml" on:change:target=move |event| take(event.target())/>
        </label>
    }
}
