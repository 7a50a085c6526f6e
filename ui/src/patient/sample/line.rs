//! The line that marks a sample on every page.

use leptos::prelude::*;
use words::Key;

use super::around;
use crate::patient::context::PatientContext;

/// Says on every page that this is a sample, with a button to leave it; empty otherwise.
#[component]
pub fn SampleLine() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    let is_sample = Memo::new(move |_| context.is_sample());
    view! {
        <Show when=move || is_sample.get()>
            <aside class="sample" aria-label=text(Key::SampleIs)>
                <p>{text(Key::SampleIs)}</p>
                <button type="button" class="quiet" on:click=move |_| around(context, false)>{text(Key::SampleExit)}</button>
            </aside>
        </Show>
    }
}
