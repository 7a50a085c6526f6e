//! Balance: seconds on one leg, both legs in one chart.

use exercises::chart::{DayAxis, NAMES_WIDTH, groups, stance};
use exercises::review::Review;
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::Key;
use words::review::Names;

use crate::patient::context::PatientContext;
use crate::shared::chart::StanceView;
use crate::shared::width::column_width;

/// A chart for each set of conditions, with a verdict in words for each leg for which there is one.
#[component]
pub fn Balance(page: RecordPage, review: Review) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let last = review.days.last().map_or(DayNumber(0), |day| day.day);
    let axis = DayAxis::for_points(review.start, DayNumber(0), last, column_width() - NAMES_WIDTH);
    let all = groups(&review.balance);
    let shown = (!all.is_empty()).then(|| {
        let charts = all.into_iter().map(|group| {
            let title = words.stance_conditions(&group, names);
            let legs = group.legs.iter().map(|series| {
                let found = words.stance(series);
                (!found.not_enough_data).then(|| {
                    let stand = series.leg.map(|leg| view! { <strong>{words.stand_on(leg)}": "</strong> });
                    view! { <p>{stand}{found.line(words)}</p> }
                })
            });
            let legs = legs.collect_view();
            view! { <section class="stack-1"><h3>{title.clone()}</h3>{legs}<StanceView chart=stance(&group, &axis) label=title/></section> }
        });
        let charts = charts.collect_view();
        view! { <section class="stack"><h2>{words.text(Key::BalanceTitle)}</h2>{charts}</section> }
    });
    view! { {shown} }
}
