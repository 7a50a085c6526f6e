//! A field for choosing a time of the day.

use exercises::time::DAY_MINUTES;
use leptos::prelude::*;

use super::context::PatientContext;

/// Distance between the times offered, in minutes.
const STEP_MINUTES: u16 = 30;

/// A list of times; `set` is called with the chosen minute of the day.
#[component]
pub fn TimeField(label: String, chosen: u16, set: impl Fn(u16) + 'static) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let mut minutes: Vec<u16> = (0..DAY_MINUTES).step_by(STEP_MINUTES.into()).collect();
    if !minutes.contains(&chosen) {
        minutes.push(chosen);
        minutes.sort_unstable();
    }
    let options = minutes.into_iter().map(|minute| {
        view! { <option value=minute.to_string() selected=minute == chosen>{words.minute(minute)}</option> }
    });
    let choose = move |event| {
        if let Ok(minute) = event_target_value(&event).parse() {
            set(minute);
        }
    };
    view! { <label>{label}<select on:change=choose>{options.collect_view()}</select></label> }
}
