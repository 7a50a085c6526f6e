//! One plan's record.

use exercises::review::{Review, then_and_now};
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::review::Names;
use words::{Key, Words};

use super::balance::Balance;
use super::counts::Counts;
use super::scores::Scores;
use super::strings::Strings;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;

/// The record in a sentence, then the answers to four questions: when it was done, balance, pain, activities. A note before anything was done.
#[component]
pub fn OneRecord(page: RecordPage) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let id = page.plan.header.id;
    let visit = (!context.is_sample()).then(|| view! {
        <section class="sheet stack">
            <p>{words.visit_on(&words.date_in_full(page.plan.prescription.review))}</p>
            <button type="button" class="main" on:click=move |_| context.open(Page::Visit(id))>{words.text(Key::ForTheVisit)}</button>
        </section>
    });
    let record = match page.review.clone().filter(has_begun) {
        None if page.later.is_some() => ().into_any(),
        None => view! { <p>{words.text(Key::NothingYet)}</p> }.into_any(),
        Some(review) => {
            let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
            let short = words.record_in_short(&review, names);
            let compared = (!then_and_now(&review).is_empty()).then(|| {
                view! { <button type="button" on:click=move |_| context.open(Page::ThenAndNow(id))>{words.text(Key::ThenAndNow)}</button> }
            });
            let few = lacks_data(&review, words).then(|| view! { <p class="soft">{words.text(Key::RecordFewData)}</p> });
            view! {
                <p class="large">{short}</p>
                {compared}
                <Strings page=page.clone() review=review.clone()/>
                {few}
                <Balance page=page.clone() review=review.clone()/>
                <Counts page=page.clone() review=review.clone()/>
                <Scores page=page.clone() review/>
            }
            .into_any()
        }
    };
    let misdated = page.review.as_ref().map_or(0, |review| review.wrong_clock.entries.len());
    let wrong_clock = (misdated > 0).then(|| view! { <p>{words.record_wrong_clock(misdated)}</p> });
    let behind =
        page.later.map(|later| view! { <p><strong>{words.clock_is_behind(later.date(), page.offer.1)}</strong></p> });
    view! {
        <section class="stack-5">
            <p class="soft">{page.plan.header.clinic.clone()}</p>
            {behind}
            {wrong_clock}
            {record}
            {visit}
            <button type="button" class="quiet" on:click=move |_| context.open(Page::Correct(id))>{words.text(Key::CorrectOpen)}</button>
        </section>
    }
}

/// Whether there is not enough data for a verdict on one of the charts, which then shows none.
fn lacks_data(review: &Review, words: Words) -> bool {
    let stance = review.balance.iter().map(|series| words.stance(series));
    let pain = review.pain.iter().map(|series| words.pain(series, review.start));
    let activities = review.activities.iter().map(|series| words.activity_change(&series.change));
    stance.chain(pain).chain(activities).any(|found| found.not_enough_data)
}

/// Whether there is anything to show: a slot that is over, an extra session, a balance trial, or a rating.
fn has_begun(review: &Review) -> bool {
    let knots = review.days.iter().any(|day| !day.knots.is_empty());
    let extra = review.adherence.iter().any(|item| item.extra.runs > 0);
    knots
        || extra
        || !review.balance.is_empty()
        || !review.counts.is_empty()
        || review.pain.iter().any(|pain| !pain.points.is_empty())
}
