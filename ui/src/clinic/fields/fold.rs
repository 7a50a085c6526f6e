//! A part that is folded away until it is wanted.

use leptos::prelude::*;

/// A heading that opens, with what is inside in a few words beside it. `open` is how it stands at first.
#[component]
pub fn Fold(
    #[prop(into)] title: String,
    #[prop(into)] inside: Signal<String>,
    #[prop(optional)] open: bool,
    children: Children,
) -> impl IntoView {
    view! {
        <details class="fold" open=open>
            <summary><span class="title">{title}</span><span class="inside small soft">{inside}</span></summary>
            <div class="stack">{children()}</div>
        </details>
    }
}
