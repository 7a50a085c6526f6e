//! The page for corrections.

use exercises::correct::{Day, by_day, earlier_days};
use exercises::id::PlanId;
use leptos::prelude::*;
use words::Key;

use super::context::CorrectionContext;
use super::line::Line;
use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// The last days, newest first, and the entries of each.
#[component]
pub fn Correct(plan: PlanId) -> impl IntoView {
    let patient = PatientContext::current();
    let words = patient.app.words();
    let context = CorrectionContext::new(plan);
    provide_context(context);
    let days = move || {
        context.page.get().map(|page| {
            if page.entries.is_empty() {
                return view! { <p>{words.correct_none(context.days.get_untracked())}</p> }.into_any();
            }
            by_day(&page.entries).into_iter().map(|day| view! { <OneDay day/> }).collect_view().into_any()
        })
    };
    let earlier = move || {
        let start = context.page.with(|page| page.as_ref().map(|page| page.plan.header.start))?;
        let today = patient.today.with_untracked(|today| today.as_ref().map(|today| today.now.date()))?;
        let days = earlier_days(context.days.get(), start, today)?;
        let look = move |_| context.load_days(days);
        Some(view! { <button type="button" on:click=look>{words.text(Key::CorrectEarlier)}</button> })
    };
    let fault = move || context.open.get().is_none().then(|| view! { <Fault/> });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-2"><h1>{words.text(Key::CorrectTitle)}</h1><p class="soft">{words.text(Key::CorrectWhat)}</p></div>
                {fault}
                {days}
                {earlier}
                <button type="button" class="quiet" data-back="" on:click=move |_| patient.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}

/// One day with its entries.
#[component]
fn OneDay(day: Day) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let lines = day.lines.into_iter().map(|line| view! { <Line line/> }).collect_view();
    view! { <section class="stack-1"><h2>{words.weekday_date(day.day)}</h2><ul class="told">{lines}</ul></section> }
}
