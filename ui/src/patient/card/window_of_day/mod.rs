//! The times of the day, which the person can move to suit their own day.

mod times;
mod window;

use exercises::plan::{Pattern, Schedule};
use leptos::prelude::*;

use crate::patient::context::PatientContext;
use times::Times;
use window::Window;

/// Beginning and end, or each time of the day, as lists to choose from; and the resulting number of times.
#[component]
pub fn WindowOfDay(name: String, schedule: RwSignal<Schedule>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let fields = match schedule.with_untracked(|schedule| schedule.pattern.clone()) {
        Pattern::Every { from, to, .. } => view! { <Window from to schedule/> }.into_any(),
        Pattern::At { times } => view! { <Times times schedule/> }.into_any(),
        Pattern::AsNeeded => return ().into_any(),
    };
    let count = move || words.times_a_day(schedule.with(|schedule| schedule.pattern.minutes().len()));
    view! {
        <fieldset class="window-of-day">
            <legend class="small soft">{words.fit_your_day(&name)}</legend>
            {fields}
            <p class="small soft" role="status">{count}</p>
        </fieldset>
    }
    .into_any()
}
