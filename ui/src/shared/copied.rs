//! The note that the data folder is a copy, or was put back to an earlier state.

use leptos::prelude::*;
use words::Key;

use super::AppContext;

/// What it means, until the person closes it; empty if the folder is the one that was used last.
#[component]
pub fn DataCopied() -> impl IntoView {
    let app = AppContext::current();
    let said = move || {
        let (role, copied) = app.state.with(|state| state.as_ref().and_then(|state| state.role.zip(state.copied)))?;
        Some(app.words().data_copied(role, copied))
    };
    let close = move |_| {
        app.state.update(|state| {
            if let Some(state) = state {
                state.copied = None;
            }
        });
    };
    move || {
        said().map(|said| {
            view! {
                <div class="sheet copied" role="status">
                    <p>{said}</p>
                    <button type="button" class="quiet" on:click=close>{app.text(Key::Close)}</button>
                </div>
            }
        })
    }
}
