//! The buttons for the three main pages at the bottom of the window.

use leptos::prelude::*;
use words::Key;

use super::context::PatientContext;
use super::page::Place;

/// The main pages with their names, in order.
const PLACES: [(Place, Key); 3] =
    [(Place::Now, Key::PlaceNow), (Place::Plan, Key::PlacePlan), (Place::Record, Key::PlaceRecord)];

/// Three buttons, the chosen one marked.
#[component]
pub fn Places() -> impl IntoView {
    let context = PatientContext::current();
    let words = PLACES.map(|(this, word)| {
        let current = move || (context.place.get() == this).then_some("page");
        let go = move |_| context.go(this);
        view! { <button type="button" aria-current=current on:click=go>{context.app.text(word)}</button> }
    });
    view! { <nav class="places" aria-label=context.app.text(Key::PlacesLabel)>{words}</nav> }
}
