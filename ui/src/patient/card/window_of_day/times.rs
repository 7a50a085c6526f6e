//! Fixed times of the day.

use exercises::plan::{Pattern, Schedule};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::time_field::TimeField;

/// A field for each time. Two equal times are not accepted.
#[component]
pub fn Times(times: Vec<u16>, schedule: RwSignal<Schedule>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let chosen = RwSignal::new(times.clone());
    let differ = Memo::new(move |_| chosen.with(|chosen| Pattern::at(chosen)));
    Effect::new(move || {
        if let Some(pattern) = differ.get() {
            schedule.update(|schedule| schedule.pattern = pattern);
        }
    });
    let fields = times.into_iter().enumerate().map(|(place, time)| {
        let label = words.time_number(place + 1);
        let set = move |minute| chosen.update(|chosen| chosen[place] = minute);
        view! { <TimeField label chosen=time set/> }
    });
    let same = move || {
        differ.get().is_none().then(|| view! { <p class="alarm-text" role="alert">{words.text(Key::TimesDiffer)}</p> })
    };
    view! { <div class="row">{fields.collect_view()}</div>{same} }
}
