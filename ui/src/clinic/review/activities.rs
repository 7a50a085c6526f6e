//! Is it working: the activities that the patient named.

use exercises::review::ActivitySeries;
use leptos::prelude::*;
use words::review::{Question, upper};

use super::desk::Desk;
use super::finding::Finding;

/// Each activity in a line, and all together.
#[component]
pub fn Activities() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let all = desk.read(|review, _| review.activities.clone()).unwrap_or_default();
    let together =
        desk.read(|review, _| review.activities_together.as_ref().map(|all| words.activities_together(all))).flatten();
    let none = all.is_empty().then(|| view! { <p class="soft">{words.unanswered(Question::Activities)}</p> });
    let line = |series: ActivitySeries| {
        let name = desk.read(|_, names| upper(&names.activity(series.activity))).unwrap_or_default();
        view! { <Finding before=format!("{name}:") said=words.activity_change(&series.change)/> }
    };
    view! {
        <section>
            <h2>{desk.question(Question::Activities)}</h2>
            {none}
            {all.into_iter().map(line).collect_view()}
            {together.map(|said| view! { <Finding said/> })}
        </section>
    }
}
