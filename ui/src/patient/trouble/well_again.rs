//! "I am well again".

use exercises::id::PlanId;
use leptos::prelude::*;
use wire::patient::{SayWellAgain, WellAgainRequest};
use words::Key;

use crate::patient::context::PatientContext;

/// "I am well again", which ends what a passing illness pauses.
#[component]
pub fn WellAgain(plan: PlanId) -> impl IntoView {
    let context = PatientContext::current();
    let well = move |_| {
        context.app.request::<SayWellAgain>(WellAgainRequest { plan }, move |today| {
            context.show(today);
            context.close();
        });
    };
    view! { <button type="button" disabled=context.app.busy on:click=well>{context.app.text(Key::WellAgain)}</button> }
}
