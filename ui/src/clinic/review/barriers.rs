//! What got in the way?

use leptos::prelude::*;
use words::review::Question;

use super::desk::Desk;

/// Reasons with how often each was given; those that need attention first.
#[component]
pub fn Barriers() -> impl IntoView {
    let desk = Desk::here();
    let all = desk.read(|review, _| review.barriers.clone()).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{desk.words.unanswered(Question::Barriers)}</p> });
    let lines = all.into_iter().map(|(barrier, times)| view! {
        <li class:first=barrier.first()><span class="number">{times}</span>" "<span>{desk.words.barrier(barrier)}</span></li>
    });
    view! {
        <section class="barriers">
            <h2>{desk.question(Question::Barriers)}</h2>
            {none}
            <ul>{lines.collect_view()}</ul>
        </section>
    }
}
