//! A verdict and the figures that it is based on.

use leptos::prelude::*;
use words::review::Finding as Said;

/// The verdict in bold, followed by the figures. `before` comes before the verdict: a leg, a name.
#[component]
pub fn Finding(said: Said, #[prop(optional, into)] before: String) -> impl IntoView {
    // Prevents a line break between a number and its sign.
    let figures = said.figures.replace(" %", "\u{a0}%");
    let before = (!before.is_empty()).then(|| view! { <span>{before}" "</span> });
    view! { <p class="finding">{before}<b>{said.word}</b>" "<span class="soft">{figures}</span></p> }
}
