//! The three places at the foot of the window.

use leptos::prelude::*;
use words::Key;

use super::desk::Desk;

/// Where in the window the person is.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// What to do now, and next.
    Now,
    /// What was agreed until the next visit.
    Plan,
    /// What was done, and what goes to the visit.
    Record,
}

/// The places with their words, in order.
const PLACES: [(Place, Key); 3] =
    [(Place::Now, Key::PlaceNow), (Place::Plan, Key::PlacePlan), (Place::Record, Key::PlaceRecord)];

/// Three words, the chosen one marked.
#[component]
pub fn Places() -> impl IntoView {
    let desk = Desk::here();
    let words = PLACES.map(|(this, word)| {
        let current = move || (desk.place.get() == this).then_some("page");
        let go = move |_| desk.go(this);
        view! { <button type="button" aria-current=current on:click=go>{desk.house.text(word)}</button> }
    });
    view! { <nav class="places" aria-label=desk.house.text(Key::PlacesLabel)>{words}</nav> }
}
