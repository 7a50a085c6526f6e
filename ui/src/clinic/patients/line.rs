//! One patient of the list.

use chrono::NaiveDate;
use exercises::closing::CloseReason;
use leptos::prelude::*;
use std::cmp::Ordering;
use std::collections::BTreeMap;
use wire::clinic::PatientLine;
use words::{Key, Words};

use crate::clinic::context::{ClinicContext, Page};

/// The code as a button for the review (or for the first plan if there is none), the patient's state, and the next plan. Who has no plan, or
/// a damaged record, can be removed from here; all others from their review. `first` is the line at first, and `all` has it as it is now: the
/// elements stay when it changes, or a press that has begun on one of them would be lost.
#[component]
pub fn Line(first: PatientLine, all: Memo<BTreeMap<String, PatientLine>>) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let was = StoredValue::new(first);
    let line = Memo::new(move |_| {
        // While the row is being removed, its line is gone already.
        all.with(|all| was.with_value(|was| all.get(&was.code).unwrap_or(was).clone()))
    });
    let is = move |of: fn(&PatientLine) -> bool| Memo::new(move |_| line.with(of));
    let (has_plan, damaged, closed) =
        (is(|line| line.plan.is_some()), is(|line| line.damaged), is(|line| line.closed.is_some()));
    let next = move || words.text(if has_plan.get() { Key::PlanNext } else { Key::PlanFirst });
    let code = move || was.with_value(|line| line.code.clone());
    view! {
        <li class="patient">
            <Open line has_plan closed/>
            <Show when=move || !has_plan.get()>
                <button type="button" class="quiet" aria-label=words.named_text(words.text(Key::PatientRemove), &code())
                    on:click=move |_| context.show(Page::Remove(code()))>{words.text(Key::PatientRemove)}</button>
            </Show>
            <Show when=move || !damaged.get()>
                <button type="button" class="quiet" aria-label=words.named_text(words.text(Key::VisitOpen), &code())
                    on:click=move |_| context.visit(code())>{words.text(Key::VisitOpen)}</button>
                <button type="button" class="quiet" aria-label=words.case_of(&code())
                    on:click=move |_| context.case(code())>{words.text(Key::CaseTitle)}</button>
            </Show>
            <Show when=move || !closed.get()>
                <button type="button" aria-label=move || words.named_text(next(), &code())
                    on:click=move |_| context.plan(code())>{next}</button>
            </Show>
        </li>
    }
}

/// The button for the review or the first plan, with how the patient stands.
#[component]
fn Open(line: Memo<PatientLine>, has_plan: Memo<bool>, closed: Memo<bool>) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let today = context.app.state.with_untracked(|state| state.as_ref().map(|s| s.now.date()));
    let open = move |_| {
        let code = line.with_untracked(|line| line.code.clone());
        if has_plan.get_untracked() { context.review(code) } else { context.plan(code) }
    };
    let alarms = move || {
        let alarms = line.with(|line| line.alarms);
        (alarms > 0).then(|| view! { <strong class="alarms">{words.alarms_open(alarms)}</strong> })
    };
    let new_summary = Memo::new(move |_| line.with(PatientLine::has_new_summary));
    view! {
        <button type="button" class="open" on:click=open>
            <span class="state">
                <span class="who"><b>{line.with_untracked(|line| line.code.clone())}</b>" "{move || line.with(|line| line.name.clone())}</span>
                {alarms}
                <Show when=move || closed.get()><strong class="news">{words.text(Key::CaseClosed)}</strong></Show>
                <Show when=move || new_summary.get()><strong class="news">{words.text(Key::NewSummary)}</strong></Show>
            </span>
            <Show when=move || has_plan.get()><span class="go">{words.text(Key::PlanReview)}</span></Show>
            <span class="small soft">{move || line.with(|line| stands(words, line, today))}</span>
        </button>
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
