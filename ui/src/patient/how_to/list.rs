//! A list with a title.

use leptos::prelude::*;

/// A list of lines with a title.
#[component]
pub fn List(title: &'static str, lines: Vec<String>, #[prop(optional)] alarm: bool) -> impl IntoView {
    let lines = lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    view! { <section class="stack-1" class:stop-signs=alarm><h2>{title}</h2><ul class="lines">{lines}</ul></section> }
}
