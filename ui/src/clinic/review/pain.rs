//! Did it hurt?

use exercises::chart::lines;
use exercises::id::ComplaintId;
use exercises::review::PainSeries;
use leptos::prelude::*;
use words::review::{ReviewQuestion, upper};

use super::context::ReviewContext;
use super::finding::Finding;
use crate::shared::chart::LinesView;

/// For each complaint: the verdict, flares, the chart, the ratings at the visits, and the pain while doing what is meant for it.
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
            {while_doing(None)}
        </section>
    }
}

/// The pain while doing the items that are meant for a complaint, or for none.
fn while_doing(complaint: Option<ComplaintId>) -> impl IntoView {
    let context = ReviewContext::current();
    let lines = context.read(|review, names| {
        let meant = review.during.iter().filter(|series| names.find(series.item).and_then(|item| item.serves) == complaint);
        let asked = meant.filter(|series| context.words.is_asked(series, names));
        asked.map(|series| context.words.during(series, names, review.start)).collect::<Vec<_>>()
    });
    lines.unwrap_or_default().into_iter().map(|line| view! { <p class="small">{line}</p> }).collect_view()
}

/// One complaint.
#[component]
fn Complaint(series: PainSeries) -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let name = context.read(|_, names| upper(&names.complaint(series.complaint))).unwrap_or_default();
    let visits = context.read(|review, _| words.at_visits(&series.at_visits, review.start)).flatten();
    let found =
        context.read(|review, names| (words.pain(&series, review.start), words.pain_details(&series, names, review.start)));
    let (said, details) = found.unzip();
    let details = details.unwrap_or_default().into_iter().map(|line| view! { <p>{line}</p> }).collect_view();
    let during = while_doing(Some(series.complaint));
    let label = words.chart_line(&name);
    let line = move || {
        let axis = context.points(false).filter(|_| series.points.len() > 1)?;
        let chart = lines(&series.points, &series.at_visits, &axis);
        Some(view! { <LinesView chart label=label.clone() changes=context.changes_on(&axis)/> })
    };
    view! {
        <article>
            <h3>{name}</h3>
            {said.map(|said| view! { <Finding said/> })}
            {details}
            {line}
            <p class="small soft">{visits}</p>
            {during}
        </article>
    }
}
