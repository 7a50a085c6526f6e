//! The top of the Now page if there is nothing to start.

use leptos::prelude::*;

/// A title and a few lines.
#[component]
pub fn Message(title: &'static str, lines: Vec<String>) -> impl IntoView {
    let lines = lines.into_iter().map(|line| view! { <p>{line}</p> }).collect_view();
    view! { <div class="stack-2"><h1>{title}</h1>{lines}</div> }
}
