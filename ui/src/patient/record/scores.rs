//! Pain of each complaint, and the activities that the person named.

use exercises::chart::{DayAxis, lines};
use exercises::review::Review;
use exercises::score::Score;
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::Key;
use words::review::{Finding, Names, upper};

use crate::patient::context::PatientContext;
use crate::shared::chart::LinesView;
use crate::shared::width::column_width;

/// A chart for each, with a verdict in words where there is one.
#[component]
pub fn Scores(page: RecordPage, review: Review) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let last = review.days.last().map_or(DayNumber(0), |day| day.day);
    let axis = DayAxis::for_points(review.start, DayNumber(0), last, column_width());
    let chart = move |title: String, found: Finding, points: &[(DayNumber, Score)], visits: &[(DayNumber, Score)]| {
        // What was never rated has neither a chart nor a verdict.
        (!points.is_empty() || !found.not_enough_data).then(|| {
            let said = (!found.not_enough_data).then(|| view! { <p>{found.line(words)}</p> });
            let drawn =
                (!points.is_empty()).then(|| view! { <LinesView chart=lines(points, visits, &axis) label=title.clone()/> });
            view! { <section class="stack-1"><h3>{title}</h3>{said}{drawn}</section> }
        })
    };
    let pain: Vec<_> = review
        .pain
        .iter()
        .filter_map(|series| {
            let title = upper(&names.complaint(series.complaint));
            chart(title, words.pain(series, review.start), &series.points, &series.at_visits)
        })
        .collect();
    let activities: Vec<_> = review
        .activities
        .iter()
        .filter_map(|series| {
            let title = upper(&names.activity(series.activity));
            chart(title, words.activity_change(&series.change), &series.points, &series.at_visits)
        })
        .collect();
    let titled = |title: Key, any: bool, charts: AnyView| {
        any.then(|| view! { <section class="stack"><h2>{words.text(title)}</h2>{charts}</section> })
    };
    view! {
        {titled(Key::PainTitle, !pain.is_empty(), pain.collect_view().into_any())}
        {titled(Key::ActivitiesTitle, !activities.is_empty(), activities.collect_view().into_any())}
    }
}
