//! Tests by repetitions: the results, and whether they changed.

use exercises::review::Review;
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::Key;
use words::review::{Names, ReviewQuestion};

use crate::patient::context::PatientContext;

/// Each test with its first, last and best result. Nothing if there are no tests.
#[component]
pub fn Counts(page: RecordPage, review: Review) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let tests = review.counts.iter().map(|series| {
        let (title, said) = (words.count_conditions(series, names), words.count_change(series).line(words));
        view! { <section class="stack-1"><h3>{title}</h3><p>{said}</p><p class="number">{words.count_days(series, review.start)}</p></section> }
    });
    let tests = tests.collect_view();
    (!review.counts.is_empty()).then(|| {
        view! { <section class="stack"><h2>{words.question(ReviewQuestion::Counts)}</h2>{tests}<p class="soft">{words.text(Key::OneAttemptVaries)}</p></section> }
    })
}
