//! A word and the figures that it rests on.

use leptos::prelude::*;
use words::review::Finding as Said;

/// The word in bold, the figures after it. `before` stands before the word: a leg, a name.
#[component]
pub fn Finding(said: Said, #[prop(optional, into)] before: String) -> impl IntoView {
    // A number stays with its sign.
    let figures = said.figures.replace(" %", "\u{a0}%");
    let before = (!before.is_empty()).then(|| view! { <span>{before}" "</span> });
    view! { <p class="finding">{before}<b>{said.word}</b>" "<span class="soft">{figures}</span></p> }
}
