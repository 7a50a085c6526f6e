//! What is new in the plan today.

use exercises::today::Today;
use leptos::prelude::*;

use crate::patient::context::PatientContext;

/// One sentence with the exercises that begin today, until each was done once.
#[component]
pub fn NewToday(today: Today) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let new = today.items.iter().filter(|item| item.is_new);
    let names: Vec<String> = new.map(|item| words.exercise_name(&item.exercise).to_owned()).collect();
    let said = (!names.is_empty()).then(|| words.new_today(&words.list(&names)));
    said.map(|said| view! { <p class="brass">{said}</p> })
}
