//! What got in the way?

use leptos::prelude::*;
use words::review::ReviewQuestion;

use super::context::ReviewContext;

/// The reasons with how often each was given; those that need attention come first.
#[component]
pub fn Barriers() -> impl IntoView {
    let context = ReviewContext::current();
    let all = context.read(|review, _| review.barriers.clone()).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{context.words.unanswered(ReviewQuestion::Barriers)}</p> });
    let lines = all.into_iter().map(|(barrier, times)| view! {
        <li class:first=barrier.first()><span class="number">{times}</span>" "<span>{context.words.barrier(barrier)}</span></li>
    });
    view! {
        <section class="barriers">
            <h2>{context.question(ReviewQuestion::Barriers)}</h2>
            {none}
            <ul>{lines.collect_view()}</ul>
        </section>
    }
}
