//! A field for choosing a day.

use chrono::NaiveDate;
use leptos::prelude::*;
use words::Key;

use super::context::PatientContext;

/// A list of the days from the first to the last; `set` is called with the chosen one.
#[component]
pub fn DayField(
    label: Key,
    first: NaiveDate,
    last: NaiveDate,
    chosen: NaiveDate,
    set: impl Fn(NaiveDate) + 'static,
) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let options = first.iter_days().take_while(|day| *day <= last).map(|day| {
        view! { <option value=day.to_string() selected=day == chosen>{words.date_short(day)}</option> }
    });
    let choose = move |event| {
        if let Ok(day) = event_target_value(&event).parse() {
            set(day);
        }
    };
    view! { <label>{words.text(label)}<select on:change=choose>{options.collect_view()}</select></label> }
}
