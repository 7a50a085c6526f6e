//! Taking days off.

use chrono::NaiveDate;
use exercises::id::PlanId;
use exercises::log::DayOffReason;
use leptos::prelude::*;
use wire::patient::{DaysOffRequest, ShowPlan, TakeDaysOff as Command};
use words::Key;
use words::review::upper;

use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// Largest number of days that can be taken off at once.
const MAX_DAYS: usize = 28;
/// How far ahead days off can begin, in days, if the plan lasts as long.
const MAX_AHEAD: usize = 180;

/// The first and the last day off, and the reason.
#[component]
pub fn TakeDaysOff(plan: PlanId) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let busy = context.app.busy;
    let today = context.today.with_untracked(|today| today.as_ref().map(|today| today.now.date())).unwrap_or_default();
    let (from, until) = (RwSignal::new(today), RwSignal::new(today));
    let review = RwSignal::new(None::<NaiveDate>);
    context.app.query::<ShowPlan>((), move |pages| {
        let page = pages.into_iter().find(|page| page.plan.header.id == plan);
        review.set(page.map(|page| page.plan.prescription.review));
    });
    let excuse = move |why| {
        let request = DaysOffRequest { plan, from: from.get_untracked(), until: until.get_untracked(), why };
        context.app.request::<Command>(request, move |today| {
            context.show(today);
            context.close();
        });
    };
    let begin = move |day| {
        from.set(day);
        until.update(|until| *until = day.max(*until).min(last_of(day)));
    };
    let last = move || review.get().unwrap_or(NaiveDate::MAX);
    let first_days = move || options(today, today, MAX_AHEAD, last(), from.get_untracked());
    let last_days = move || options(today, from.get(), MAX_DAYS, last(), until.get_untracked());
    let reasons = DayOffReason::ALL.map(|why| {
        view! { <button type="button" disabled=busy on:click=move |_| excuse(why)>{upper(words.day_off_reason(why))}</button> }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><h1>{words.text(Key::TakeDaysOff)}</h1><p>{words.text(Key::TakeDaysOffWhat)}</p></div>
                <Fault/>
                <label>{words.text(Key::DaysOffFrom)}<select on:change=chosen(begin)>{first_days}</select></label>
                <label>{words.text(Key::DaysOffUntil)}<select on:change=chosen(move |day| until.set(day))>{last_days}</select></label>
                <h2>{words.text(Key::DaysOffWhySaves)}</h2>
                <div class="choices">{reasons}</div>
                <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}

/// The last day that can be chosen if `first` is the first.
fn last_of(first: NaiveDate) -> NaiveDate {
    first.iter_days().nth(MAX_DAYS - 1).unwrap_or(first)
}

/// Calls `set` with the day that was chosen from a list.
fn chosen(set: impl Fn(NaiveDate) + 'static) -> impl FnMut(leptos::ev::Event) {
    move |event| {
        if let Ok(day) = event_target_value(&event).parse() {
            set(day);
        }
    }
}

/// A number of days from `first`, none of them after `last`.
fn options(today: NaiveDate, first: NaiveDate, days: usize, last: NaiveDate, selected: NaiveDate) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let days = first.iter_days().take(days).take_while(|day| *day <= last);
    let days = days.map(|day| {
        let said = if day == today { words.text(Key::DaysOffToday).to_owned() } else { words.weekday_date(day) };
        view! { <option value=day.to_string() selected=day == selected>{said}</option> }
    });
    days.collect_view()
}
