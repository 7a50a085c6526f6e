//! Pain of each complaint, and the activities that the person named.

use exercises::chart::{DayAxis, lines};
use exercises::review::Review;
use exercises::score::Score;
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::Key;
use words::review::{Names, upper};

use crate::patient::context::PatientContext;
use crate::shared::chart::LinesView;
use crate::shared::width::column_width;

/// A chart for each, with a verdict in words.
#[component]
pub fn Scores(page: RecordPage, review: Review) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let last = review.days.last().map_or(DayNumber(0), |day| day.day);
    let axis = DayAxis::for_points(review.start, DayNumber(0), last, column_width());
    let chart = move |title: String, said: String, points: &[(DayNumber, Score)], visits: &[(DayNumber, Score)]| {
        let drawn =
            (!points.is_empty()).then(|| view! { <LinesView chart=lines(points, visits, &axis) label=title.clone()/> });
        view! { <section class="stack-1"><h3>{title}</h3><p>{said}</p>{drawn}</section> }
    };
    let pain = review.pain.iter().map(|series| {
        chart(upper(&names.complaint(series.complaint)), words.pain(series).line(words), &series.points, &series.at_visits)
    });
    let activities = review.activities.iter().map(|series| {
        let said = words.activity_change(&series.change).line(words);
        chart(upper(&names.activity(series.activity)), said, &series.points, &series.at_visits)
    });
    let titled = |title: Key, any: bool, charts: AnyView| {
        any.then(|| view! { <section class="stack"><h2>{words.text(title)}</h2>{charts}</section> })
    };
    view! {
        {titled(Key::PainTitle, !review.pain.is_empty(), pain.collect_view().into_any())}
        {titled(Key::ActivitiesTitle, !review.activities.is_empty(), activities.collect_view().into_any())}
    }
}
