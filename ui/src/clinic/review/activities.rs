//! Is the plan working: the activities that the patient named.

use exercises::review::ActivitySeries;
use leptos::prelude::*;
use words::review::{ReviewQuestion, upper};

use super::context::ReviewContext;
use super::finding::Finding;

/// One line for each activity, and one for all together.
#[component]
pub fn Activities() -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let all = context.read(|review, _| review.activities.clone()).unwrap_or_default();
    let together =
        context.read(|review, _| review.activities_together.as_ref().map(|all| words.activities_together(all))).flatten();
    let none = all.is_empty().then(|| view! { <p class="soft">{words.unanswered(ReviewQuestion::Activities)}</p> });
    let line = |series: ActivitySeries| {
        let name = context.read(|_, names| upper(&names.activity(series.activity))).unwrap_or_default();
        view! { <Finding before=format!("{name}:") said=words.activity_change(&series.change)/> }
    };
    view! {
        <section>
            <h2>{context.question(ReviewQuestion::Activities)}</h2>
            {none}
            {all.into_iter().map(line).collect_view()}
            {together.map(|said| view! { <Finding said/> })}
        </section>
    }
}
