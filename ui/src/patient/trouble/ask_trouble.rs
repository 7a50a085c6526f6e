//! "Something is wrong": what it is, during which exercise, and what is paused.

use exercises::alarm::Trouble;
use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use wire::patient::{RaiseTrouble, TroubleRequest};

use super::confirm::Confirm;
use super::list::TroubleList;
use super::which::Which;
use crate::patient::context::PatientContext;
use crate::patient::page::{Page, Raised};
use crate::shared::screen;

/// How far the person has come.
#[derive(Clone, PartialEq)]
enum Step {
    What,
    Which(Trouble),
    Confirm(Raised),
}

/// Asks what is wrong, and during which exercise if that decides what is paused. Only what is urgent is recorded at once; of
/// everything else it is said first what it pauses. `during` is the exercise from which the person came, if any; `nothing` leads
/// back, and `stop` ends a run before anything is recorded. `at_once` is
/// what is wrong, where that was said already.
#[component]
pub fn AskTrouble(
    during: Option<(PlanId, ItemId)>,
    nothing: impl Fn() + Copy + Send + 'static,
    stop: impl Fn() + Copy + Send + 'static,
    #[prop(optional)] at_once: Option<Trouble>,
) -> impl IntoView {
    let context = PatientContext::current();
    let step = RwSignal::new(Step::What);
    let record = move |raised: Raised| {
        let open = {
            let raised = raised.clone();
            move || context.replace(Page::Advice(Box::new(raised)))
        };
        // Without a plan there is nothing to pause and no clinic to inform; the advice is the same.
        let Some(plan) = raised.plan else { return open() };
        stop();
        let Raised { trouble, item, circumstances, .. } = raised;
        context.app.request::<RaiseTrouble>(TroubleRequest { plan, trouble, item, circumstances }, move |today| {
            context.show(today);
            open();
        });
    };
    let proceed = move |trouble: Trouble, during: Option<(PlanId, ItemId)>| {
        let plan = during.map(|(plan, _)| plan).or_else(|| context.any_plan());
        let raised = Raised { item: during.map(|(_, item)| item), ..Raised::new(plan, trouble) };
        match trouble.is_urgent() || plan.is_none() {
            true => record(raised),
            false => step.set(Step::Confirm(raised)),
        }
    };
    let several = context.today.with_untracked(|today| today.as_ref().is_some_and(|today| today.items.len() > 1));
    let chose = move |trouble: Trouble| {
        if during.is_none() && several && asks_which(trouble) {
            step.set(Step::Which(trouble));
        } else {
            proceed(trouble, during.or_else(|| asks_which(trouble).then(|| context.only_item()).flatten()));
        }
    };
    if let Some(trouble) = at_once {
        proceed(trouble, during);
    }
    let back = move || if at_once.is_some() { nothing() } else { step.set(Step::What) };
    move || match step.get() {
        Step::What => screen(move || view! { <TroubleList chose nothing/> }),
        Step::Which(trouble) => {
            screen(move || view! { <Which chose=move |item| proceed(trouble, item) back=move || step.set(Step::What)/> })
        }
        Step::Confirm(raised) => screen(move || view! { <Confirm raised record back/> }),
    }
}

/// Whether the exercise decides what is paused or made easier.
fn asks_which(trouble: Trouble) -> bool {
    matches!(trouble, Trouble::NearlyFell | Trouble::TooMuchPain | Trouble::Other)
}
