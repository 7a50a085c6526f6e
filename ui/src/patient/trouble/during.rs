//! "Something is wrong" during a run.

use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use wire::patient::{RaiseTrouble, TroubleAsk};

use super::list::TroubleList;
use crate::patient::desk::Desk;
use crate::patient::page::Page;

/// Asks what is wrong. `nothing` goes back to the run on pause; `stop` ends it before the trouble is recorded.
#[component]
pub fn During(
    plan: PlanId,
    item: ItemId,
    nothing: impl Fn() + Copy + Send + 'static,
    stop: impl Fn() + Copy + Send + 'static,
) -> impl IntoView {
    let desk = Desk::here();
    let chose = move |trouble| {
        stop();
        desk.house.ask::<RaiseTrouble>(TroubleAsk { plan, trouble, item: Some(item) }, move |today| {
            desk.show(today);
            desk.open(Page::Advice(trouble));
        });
    };
    view! { <TroubleList chose nothing/> }
}
