//! Is the plan working: results of tests by repetitions.

use leptos::prelude::*;
use words::review::ReviewQuestion;

use super::context::ReviewContext;
use super::finding::Finding;

/// Each test with its results and whether they changed. Nothing if there are no tests.
#[component]
pub fn Counts() -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let tests = context.read(|review, names| {
        let test = |series: &_| {
            (words.count_conditions(series, names), words.count_change(series), words.count_days(series, review.start))
        };
        review.counts.iter().map(test).collect::<Vec<_>>()
    });
    let tests = tests.filter(|tests| !tests.is_empty())?;
    let tests = tests.into_iter().map(|(title, said, days)| {
        view! {
            <article>
                <p class="small soft">{title}</p>
                <Finding said/>
                <p class="small number">{days}</p>
            </article>
        }
    });
    Some(view! { <section><h2>{context.question(ReviewQuestion::Counts)}</h2>{tests.collect_view()}</section> })
}
