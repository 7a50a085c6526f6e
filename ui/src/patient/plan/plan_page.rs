//! The Plan page.

use leptos::prelude::*;
use wire::patient::{PlanPage, ShowPlan};
use words::Key;

use super::one_plan::OnePlan;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::Fault;

/// Every plan that is followed, and the button for a new card.
#[component]
pub fn Plan() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    let plans = ArcRwSignal::new(None::<Vec<PlanPage>>);
    let answer = plans.clone();
    context.app.query::<ShowPlan>((), move |pages| answer.set(Some(pages)));
    let shown = move || {
        plans.get().map(|pages| {
            if pages.is_empty() {
                return view! { <p>{text(Key::AddCardWhat)}</p> }.into_any();
            }
            pages.into_iter().map(|page| view! { <OnePlan page/> }).collect_view().into_any()
        })
    };
    view! {
        <div class="column stack-5">
            <h1>{text(Key::PlacePlan)}</h1>
            <Fault/>
            {shown}
            {(!context.is_sample()).then(|| view! {
                <button type="button" on:click=move |_| context.open(Page::Reminders)>{text(Key::RemindersTitle)}</button>
                <button type="button" on:click=move |_| context.open(Page::Card)>{text(Key::AddNewCard)}</button>
            })}
        </div>
    }
}
