//! "Something is wrong" during a run.

use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use wire::patient::{RaiseTrouble, TroubleRequest};

use super::list::TroubleList;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;

/// Asks what is wrong. `nothing` returns to the paused run; `stop` ends the run before the complaint is logged.
#[component]
pub fn During(
    plan: PlanId,
    item: ItemId,
    nothing: impl Fn() + Copy + Send + 'static,
    stop: impl Fn() + Copy + Send + 'static,
) -> impl IntoView {
    let context = PatientContext::current();
    let chose = move |trouble| {
        stop();
        context.app.request::<RaiseTrouble>(TroubleRequest { plan, trouble, item: Some(item) }, move |today| {
            context.show(today);
            context.replace(Page::Advice(trouble));
        });
    };
    view! { <TroubleList chose nothing/> }
}
