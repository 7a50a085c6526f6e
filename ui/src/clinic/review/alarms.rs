//! Did anything alarming happen?

use exercises::review::ReviewAlarm;
use leptos::prelude::*;
use words::review::{Finding, ReviewQuestion};

use super::context::ReviewContext;

/// A banner for each alarm that no card has cleared; one line for each other alarm; "no alarm" if there were none.
#[component]
pub fn Alarms() -> impl IntoView {
    let context = ReviewContext::current();
    let all: Vec<(ReviewAlarm, Finding)> = context
        .read(|review, names| review.alarms.iter().map(|alarm| (*alarm, context.words.review_alarm(alarm, names))).collect())
        .unwrap_or_default();
    if all.is_empty() {
        return view! { <p class="no-alarm">{context.words.unanswered(ReviewQuestion::Alarms)}</p> }.into_any();
    }
    let banners = all.into_iter().map(|(alarm, said)| view! {
        <li class="alarm-banner" class:cleared=alarm.cleared><strong>{said.word}</strong>" "<span>{said.figures}</span></li>
    });
    view! { <ul class="stack" aria-label=context.question(ReviewQuestion::Alarms)>{banners.collect_view()}</ul> }.into_any()
}
