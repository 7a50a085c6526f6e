//! Looking around in a sample plan.

mod line;
mod offer;

pub use line::SampleLine;
pub use offer::OfferSample;

use leptos::prelude::*;
use wire::app::{AppState, SampleRequest, ShowSample};

use super::context::PatientContext;
use super::page::Place;

fn around(context: PatientContext, begin: bool) {
    context.app.request::<ShowSample>(SampleRequest { begin }, move |state: AppState| {
        context.app.state.set(Some(state));
        context.go(Place::Now);
    });
}
