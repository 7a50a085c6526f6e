//! The days' strings side by side, one chart per exercise.

use exercises::chart::{DayAxis, legend_entries, weeks};
use exercises::review::Review;
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::Key;
use words::review::Names;

use crate::patient::context::PatientContext;
use crate::shared::chart::{Legend, WeeksChart};
use crate::shared::width::column_width;

/// At which times of the day and since when not, for each exercise, without a verdict.
#[component]
pub fn Strings(page: RecordPage, review: Review) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let last = review.days.last().map_or(DayNumber(0), |day| day.day);
    let axis = DayAxis::for_strings(review.start, DayNumber(0), last, column_width());
    let items = page.plan.prescription.items.iter().filter_map(|item| {
        let chart = weeks(&review.days, item.id, &axis, None);
        let said = review.adherence.iter().find(|one| one.item == item.id).and_then(|one| words.done_plainly(one));
        if chart.is_none() && said.is_none() {
            return None;
        }
        let name = names.item(item.id);
        Some(view! {
            <section class="stack-1">
                <h3>{name.clone()}</h3>
                <p class="soft">{said}</p>
                {chart.map(|chart| view! { <WeeksChart chart label=name/> })}
            </section>
        })
    });
    let items = items.collect_view();
    let elsewhere = words.other_device_not_counted(&review).map(|said| view! { <p class="soft">{said}</p> });
    view! {
        <section class="stack">
            <h2>{words.text(Key::DoneWhen)}</h2>
            {items}
            {elsewhere}
            <Legend only=legend_entries(&review.days)/>
        </section>
    }
}
