//! One patient of the list.

use chrono::NaiveDate;
use exercises::closing::CloseReason;
use leptos::prelude::*;
use std::cmp::Ordering;
use wire::clinic::PatientLine;
use words::{Key, Words};

use crate::clinic::context::{ClinicContext, Page};

/// The code as a button for the review (or for the first plan if there is none), the patient's state, and the next plan. Who has no plan, or
/// a damaged record, can be removed from here; all others from their review.
#[component]
pub fn Line(line: PatientLine) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let today = context.app.state.with_untracked(|state| state.as_ref().map(|s| s.now.date()));
    let alarms = (line.alarms > 0).then(|| words.alarms_open(line.alarms));
    let alarms = alarms.map(|alarms| view! { <strong class="alarms">{alarms}</strong> });
    let has_plan = line.plan.is_some();
    let (to_review, to_plan, to_remove) = (line.code.clone(), line.code.clone(), line.code.clone());
    let (to_visit, to_case) = (line.code.clone(), line.code.clone());
    let closed = line.closed.is_some();
    let open = move |_| if has_plan { context.review(to_review.clone()) } else { context.plan(to_review.clone()) };
    let next = words.text(if has_plan { Key::PlanNext } else { Key::PlanFirst });
    let name = line.name.clone();
    view! {
        <li class="patient">
            <button type="button" class="open" on:click=open>
                <span class="who"><b>{line.code.clone()}</b>" "{name}</span>
                {alarms}
                {closed.then(|| view! { <strong class="news">{words.text(Key::CaseClosed)}</strong> })}
                {line.has_new_summary().then(|| view! { <strong class="news">{words.text(Key::NewSummary)}</strong> })}
                {has_plan.then(|| view! { <span class="go">{words.text(Key::PlanReview)}</span> })}
                <span class="small soft">{stands(words, &line, today)}</span>
            </button>
            {(!has_plan).then(|| view! {
                <button type="button" class="quiet" aria-label=words.named_text(words.text(Key::PatientRemove), &line.code)
                    on:click=move |_| context.show(Page::Remove(to_remove.clone()))>{words.text(Key::PatientRemove)}</button>
            })}
            {(!line.damaged).then(|| view! {
                <button type="button" class="quiet" aria-label=words.named_text(words.text(Key::VisitOpen), &line.code)
                    on:click=move |_| context.visit(to_visit.clone())>{words.text(Key::VisitOpen)}</button>
            })}
            {(!line.damaged).then(|| view! {
                <button type="button" class="quiet" aria-label=words.case_of(&line.code)
                    on:click=move |_| context.case(to_case.clone())>{words.text(Key::CaseTitle)}</button>
            })}
            {(!closed).then(|| view! {
                <button type="button" aria-label=words.named_text(next, &line.code)
                    on:click=move |_| context.plan(to_plan.clone())>{next}</button>
            })}
        </li>
    }
}

/// "review on 9 December; summary up to 24 November".
fn stands(words: Words, line: &PatientLine, today: Option<NaiveDate>) -> String {
    if line.damaged {
        return words.text(Key::RecordDamaged).to_owned();
    }
    if let Some((on, reason)) = line.closed {
        let on = words.date(on);
        return match reason {
            CloseReason::Other => words.case_closed_since(&on),
            reason => words.case_closed_on(&on, words.close_reason(reason)),
        };
    }
    let Some((_, review)) = line.plan else { return words.text(Key::PlanNone).to_owned() };
    let visit = match today.map(|today| review.cmp(&today)) {
        Some(Ordering::Equal) => words.text(Key::ListVisitToday).to_owned(),
        Some(Ordering::Less) => words.list_visit_was(&words.date(review)),
        _ => words.list_visit_on(&words.date(review)),
    };
    let summary = match line.covered_until {
        Some(until) => words.summary_until(&words.date(until)),
        None => words.text(Key::SummaryNone).to_owned(),
    };
    words.visit_and_summary(&visit, &summary)
}
