//! The title of a page.

use leptos::html::H1;
use leptos::prelude::*;

/// The title; it takes the focus when its page is shown, so that keyboard and reader go on from there.
#[component]
pub fn Title(#[prop(into)] text: String) -> impl IntoView {
    let title = NodeRef::<H1>::new();
    Effect::new(move || {
        if let Some(title) = title.get() {
            // Refused only when the page has gone.
            let _ = title.focus();
        }
    });
    view! { <h1 node_ref=title tabindex="-1">{text}</h1> }
}
