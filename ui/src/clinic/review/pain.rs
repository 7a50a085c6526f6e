//! Did it hurt?

use exercises::chart::lines;
use exercises::review::PainSeries;
use leptos::prelude::*;
use words::review::{ReviewQuestion, upper};

use super::context::ReviewContext;
use super::finding::Finding;
use crate::shared::chart::LinesView;

/// For each complaint: the verdict, the chart, and the ratings at the visits.
#[component]
pub fn Pain() -> impl IntoView {
    let context = ReviewContext::current();
    let all = context.read(|review, _| review.pain.clone()).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{context.words.unanswered(ReviewQuestion::Pain)}</p> });
    view! {
        <section>
            <h2>{context.question(ReviewQuestion::Pain)}</h2>
            {none}
            {all.into_iter().map(|series| view! { <Complaint series/> }).collect_view()}
        </section>
    }
}

/// One complaint.
#[component]
fn Complaint(series: PainSeries) -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let name = context.read(|_, names| upper(&names.complaint(series.complaint))).unwrap_or_default();
    let visits = context.read(|review, _| words.at_visits(&series.at_visits, review.start)).flatten();
    let said = words.pain(&series);
    let label = words.chart_line(&name);
    let line = move || {
        let axis = context.points(false).filter(|_| series.points.len() > 1)?;
        Some(view! { <LinesView chart=lines(&series.points, &series.at_visits, &axis) label=label.clone()/> })
    };
    view! {
        <article>
            <h3>{name}</h3>
            <Finding said/>
            {line}
            <p class="small soft">{visits}</p>
        </article>
    }
}
