//! Locks the clinic's store.

use leptos::prelude::*;
use words::Key;

use crate::clinic::context::ClinicContext;

/// A button at the top of each page; Ctrl+L does the same.
#[component]
pub fn LockButton() -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    view! {
        <button type="button" class="lock" title=app.text(Key::LockHint) aria-keyshortcuts="Control+L"
            on:click=move |_| context.lock()>{app.text(Key::Lock)}</button>
    }
}
