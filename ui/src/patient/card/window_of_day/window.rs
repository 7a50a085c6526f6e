//! A window of the day.

use exercises::plan::Schedule;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::time_field::TimeField;

/// Beginning and end.
#[component]
pub fn Window(from: u16, to: u16, schedule: RwSignal<Schedule>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let begin = move |minute| schedule.update(|schedule| schedule.pattern = schedule.pattern.beginning(minute));
    let end = move |minute| schedule.update(|schedule| schedule.pattern = schedule.pattern.ending(minute));
    view! {
        <div class="row">
            <TimeField label=words.text(Key::From).to_owned() chosen=from set=begin/>
            <TimeField label=words.text(Key::To).to_owned() chosen=to set=end/>
        </div>
    }
}
