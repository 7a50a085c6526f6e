//! The plans that were issued to a patient.

use exercises::catalogue::Exercise;
use exercises::plan::Plan;
use leptos::prelude::*;
use std::collections::BTreeMap;
use wire::cases::{IssuedRevision, ShowIssued};
use words::Key;

use crate::clinic::context::{ClinicContext, Page};

/// The newest first: number, days, items with dose and times, and what is different from the one before.
#[component]
pub fn Plans(code: String, plans: Vec<Plan>, issued_by: BTreeMap<u16, String>, exercises: Vec<Exercise>) -> impl IntoView {
    let words = ClinicContext::current().app.words();
    let none = plans.is_empty().then(|| view! { <p class="empty">{words.text(Key::CasePlansNone)}</p> });
    let cards = plans.iter().enumerate().map(|(place, plan)| {
        let changes = plans.get(place + 1).map(|before| words.plan_changes(before, plan, &exercises));
        let items = plan.prescription.items.iter().map(|item| words.issued_item(item, &exercises)).collect();
        let by = issued_by.get(&plan.header.revision).map(|name| words.case_plan_by(name));
        view! { <Issued code=code.clone() plan=plan.clone() newest=place == 0 by items changes/> }
    });
    view! {
        <section class="stack-5" aria-label=words.text(Key::CasePlans)>
            <h2>{words.text(Key::CasePlans)}</h2>
            {none}
            {cards.collect_view()}
        </section>
    }
}

#[component]
fn Issued(
    code: String,
    plan: Plan,
    newest: bool,
    by: Option<String>,
    items: Vec<String>,
    changes: Option<Vec<String>>,
) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let revision = plan.header.revision;
    let days = [plan.header.issued, plan.prescription.review].map(|day| words.date_in_full(day));
    let show = move |_| {
        let code = code.clone();
        context.app.request::<ShowIssued>(IssuedRevision { code: code.clone(), revision }, move |card| {
            context.show(Page::Issued(code, Box::new(card)));
        });
    };
    let list =
        |lines: Vec<String>| view! { <ul>{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul> };
    let changes = changes.map(|changes| match changes.is_empty() {
        true => view! { <p class="small soft">{words.text(Key::CasePlanUnchanged)}</p> }.into_any(),
        false => view! { <h4>{words.text(Key::CasePlanChanges)}</h4>{list(changes)} }.into_any(),
    });
    view! {
        <article class="sheet stack issued-plan">
            <h3>{words.case_plan_line(revision, &days[0], &days[1])}
                {newest.then(|| view! { " · "<strong class="news">{words.text(Key::CasePlanNewest)}</strong> })}</h3>
            {by.map(|by| view! { <p class="small soft">{by}</p> })}
            {list(items)}
            {changes}
            <button type="button" aria-label=words.case_plan_show_n(revision) disabled=context.app.busy on:click=show>
                {words.text(Key::CasePlanShow)}
            </button>
        </article>
    }
}
