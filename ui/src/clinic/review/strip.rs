//! The line at the top: every answer in a word.

use leptos::prelude::*;
use words::review::StripCell;

use super::context::ReviewContext;

/// Done, pain, activities, balance, alarms and proposals beside each other.
#[component]
pub fn Strip() -> impl IntoView {
    let context = ReviewContext::current();
    let cells = context.read(|review, names| context.words.review_strip(review, names)).unwrap_or_default();
    let cell = |cell: StripCell| {
        view! {
            <div class:attention=cell.attention>
                <dt>{cell.title}</dt>
                <dd><b>{cell.word}</b>" "<span class="small soft">{cell.figure}</span></dd>
            </div>
        }
    };
    view! { <dl class="strip">{cells.into_iter().map(cell).collect_view()}</dl> }
}
