//! The three places at the foot of the window.

use leptos::prelude::*;

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

impl Place {
    const ALL: [(Self, &str); 3] = [(Self::Now, "Now"), (Self::Plan, "Plan"), (Self::Record, "Record")];
}

/// Three words, the chosen one marked.
#[component]
pub fn Places(place: RwSignal<Place>) -> impl IntoView {
    let words = Place::ALL.map(|(this, word)| {
        let current = move || (place.get() == this).then_some("page");
        view! { <button type="button" aria-current=current on:click=move |_| place.set(this)>{word}</button> }
    });
    view! { <nav class="places">{words}</nav> }
}
