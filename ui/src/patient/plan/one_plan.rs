//! One clinic's plan.

use exercises::score::Score;
use leptos::prelude::*;
use wire::patient::PlanPage;
use words::{Key, Words};

use super::plan_item::PlanItem;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;

/// The clinic, the next visit, the exercises, and their purpose.
#[component]
pub fn OnePlan(page: PlanPage) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let PlanPage { plan, fingerprint, exercises, paused, ahead } = page;
    let id = plan.header.id;
    let items = plan.prescription.items.iter().map(|item| {
        let exercise = exercises.iter().find(|exercise| exercise.id == item.exercise).cloned();
        let paused = paused.iter().find(|(held, _)| *held == item.id).map(|(_, trouble)| *trouble);
        let ahead = ahead.as_ref().and_then(|(from, plan)| Some((*from, plan.item(item.id)?.schedule.clone())));
        let ahead = ahead.filter(|(_, schedule)| *schedule != item.schedule);
        view! { <PlanItem plan=plan.clone() item=item.clone() exercise paused ahead/> }
    });
    let items = items.collect_view();
    view! {
        <section class="stack-5">
            <div class="stack-1">
                <p><strong>{plan.header.clinic.clone()}</strong></p>
                <p>{words.visit_on(&words.date_in_full(plan.prescription.review))}</p>
            </div>
            <ul class="stack">{items}</ul>
            {facts(words.text(Key::BeingTreated), complaints(&plan, words))}
            {facts(words.text(Key::MyActivities), activities(&plan, words))}
            {facts(words.text(Key::Baselines), baselines(&plan, words))}
            <button type="button" on:click=move |_| context.open(Page::DaysOff(id))>{words.text(Key::TakeDaysOff)}</button>
            <p class="small soft number">{words.security_code_of_card(&fingerprint)}" "{words.plan_version(plan.header.revision)}</p>
        </section>
    }
}

/// A titled list of names with their values at the visit; empty if there are none.
fn facts(title: &'static str, lines: Vec<(String, String)>) -> Option<impl IntoView> {
    (!lines.is_empty()).then(|| {
        let lines =
            lines.into_iter().map(|(name, value)| view! { <div><dt>{name}</dt><dd class="number">{value}</dd></div> });
        view! { <section class="stack-2"><h2>{title}</h2><dl class="figures">{lines.collect_view()}</dl></section> }
    })
}

fn complaints(plan: &exercises::plan::Plan, words: Words) -> Vec<(String, String)> {
    let line = |complaint: &exercises::plan::Complaint| {
        let name = match words.side(complaint.side) {
            "" => complaint.name.clone(),
            side => words.name_with_side(&complaint.name, side),
        };
        (name, complaint.pain.map(|pain| words.pain_then(pain)).unwrap_or_default())
    };
    plan.prescription.complaints.iter().map(line).collect()
}

fn activities(plan: &exercises::plan::Plan, words: Words) -> Vec<(String, String)> {
    let value = |rating: Option<Score>| rating.map(|n| words.of_ten(n)).unwrap_or_default();
    plan.prescription.activities.iter().map(|activity| (activity.name.clone(), value(activity.rating))).collect()
}

fn baselines(plan: &exercises::plan::Plan, words: Words) -> Vec<(String, String)> {
    let line = |taken: &exercises::plan::StanceBaseline| {
        let name = words.leg_surface_eyes(words.stand_on(taken.leg), words.surface(taken.surface), words.eyes(taken.eyes));
        let seconds = words.seconds(u32::from(taken.tenths) * 100);
        (name, if taken.capped { words.seconds_or_more(seconds) } else { words.seconds_short(seconds) })
    };
    plan.dated_baselines().iter().map(line).collect()
}
