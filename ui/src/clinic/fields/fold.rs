//! A section that can be folded.

use leptos::prelude::*;

/// A heading that unfolds its content, with a short summary of the content beside it. `open` is the state at the beginning, and
/// whenever that changes.
#[component]
pub fn Fold(
    #[prop(into)] title: String,
    #[prop(into)] inside: Signal<String>,
    #[prop(optional, into)] open: Signal<bool>,
    children: Children,
) -> impl IntoView {
    view! {
        <details class="fold" open=open>
            <summary><span class="title">{title}</span><span class="inside small soft">{inside}</span></summary>
            <div class="stack">{children()}</div>
        </details>
    }
}
