//! Did it hurt?

use exercises::chart::lines;
use exercises::review::PainSeries;
use leptos::prelude::*;
use words::Key;
use words::review::{Question, upper};

use super::desk::Desk;
use super::finding::Finding;
use crate::shared::chart::LinesView;

/// Each complaint: the word, the line, and the visits' own ratings.
#[component]
pub fn Pain() -> impl IntoView {
    let desk = Desk::here();
    let all = desk.read(|review, _| review.pain.clone()).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{desk.words.unanswered(Question::Pain)}</p> });
    view! {
        <section>
            <h2>{desk.question(Question::Pain)}</h2>
            {none}
            {all.into_iter().map(|series| view! { <Complaint series/> }).collect_view()}
        </section>
    }
}

/// One complaint.
#[component]
fn Complaint(series: PainSeries) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let name = desk.read(|_, names| upper(&names.complaint(series.complaint))).unwrap_or_default();
    let visits = desk.read(|review, _| words.at_visits(&series.at_visits, review.start)).flatten();
    let said = words.pain(&series);
    let label = words.fill(Key::ChartLine, &[("name", &name)]);
    let line = move || {
        let axis = desk.points(false).filter(|_| series.points.len() > 1)?;
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
