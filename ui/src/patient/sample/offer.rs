//! The way into a sample.

use leptos::prelude::*;
use words::Key;

use super::around;
use crate::patient::context::PatientContext;

/// The button that opens a sample, below the form for a card.
#[component]
pub fn OfferSample() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    view! {
        <section class="stack-2">
            <p id="sample-what" class="small soft">{text(Key::SampleWhat)}</p>
            <button type="button" aria-describedby="sample-what" disabled=context.app.busy on:click=move |_| around(context, true)>
                {text(Key::SampleLook)}
            </button>
        </section>
    }
}
