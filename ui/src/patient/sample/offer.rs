//! The way into a sample.

use leptos::prelude::*;
use words::Key;

use super::around;
use crate::patient::desk::Desk;

/// The way in, below the form for a card.
#[component]
pub fn OfferSample() -> impl IntoView {
    let desk = Desk::here();
    let text = move |key| desk.house.text(key);
    view! {
        <section class="stack-2">
            <p id="sample-what" class="small soft">{text(Key::SampleWhat)}</p>
            <button type="button" aria-describedby="sample-what" disabled=desk.house.busy on:click=move |_| around(desk, true)>
                {text(Key::SampleLook)}
            </button>
        </section>
    }
}
