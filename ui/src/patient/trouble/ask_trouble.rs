//! "Something is wrong" outside a run.

use exercises::alarm::{Scope, Trouble};
use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use wire::patient::{RaiseTrouble, TroubleRequest};

use super::list::TroubleList;
use super::which::Which;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::screen;

/// Asks what is wrong, and during which exercise if that decides what is paused. `during` is the exercise from which the person
/// came, if any.
#[component]
pub fn AskTrouble(during: Option<(PlanId, ItemId)>) -> impl IntoView {
    let context = PatientContext::current();
    let chosen = RwSignal::new(None::<Trouble>);
    let raise = move |trouble: Trouble, during: Option<(PlanId, ItemId)>| {
        let plan = during.map(|(plan, _)| plan).or_else(|| context.any_plan());
        let item = during.map(|(_, item)| item);
        match plan {
            // Without a plan there is nothing to pause and no clinic to inform; the advice is the same.
            None => context.replace(Page::Advice(trouble)),
            Some(plan) => context.app.request::<RaiseTrouble>(TroubleRequest { plan, trouble, item }, move |today| {
                context.show(today);
                context.replace(Page::Advice(trouble));
            }),
        }
    };
    let several = context.today.with_untracked(|today| today.as_ref().is_some_and(|today| today.items.len() > 1));
    let chose = move |trouble: Trouble| {
        if during.is_none() && several && trouble.scope() == Scope::Exercise {
            chosen.set(Some(trouble))
        } else {
            raise(trouble, during)
        }
    };
    move || match chosen.get() {
        None => screen(move || view! { <TroubleList chose nothing=move || context.back()/> }),
        Some(trouble) => {
            screen(move || view! { <Which chose=move |item| raise(trouble, item) back=move || chosen.set(None)/> })
        }
    }
}
