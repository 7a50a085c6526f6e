//! Erasing everything: what is erased, and a question before it happens.

use leptos::prelude::*;
use words::Key;

use super::sure::Sure;
use crate::patient::context::PatientContext;

/// What is erased and what stays; the button asks for confirmation first.
#[component]
pub fn Erase() -> impl IntoView {
    let words = PatientContext::current().app.words();
    let asked = RwSignal::new(false);
    let shown = move || {
        if asked.get() {
            return view! { <Sure keep=move || asked.set(false)/> }.into_any();
        }
        view! {
            <button type="button" class="alarm" on:click=move |_| asked.set(true)>{words.text(Key::EraseTitle)}</button>
        }
        .into_any()
    };
    view! {
        <section class="stack erase">
            <h2>{words.text(Key::EraseTitle)}</h2>
            <p>{words.text(Key::EraseWhat)}</p>
            <p>{words.text(Key::EraseFirst)}</p>
            {shown}
        </section>
    }
}
