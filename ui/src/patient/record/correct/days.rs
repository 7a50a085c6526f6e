//! Correcting days off: other days, or another reason.

use chrono::NaiveDate;
use exercises::correct::{Correctable, EntryContent};
use exercises::log::DayOffReason;
use leptos::prelude::*;
use words::Key;
use words::review::upper;

use super::context::CorrectionContext;
use crate::patient::context::PatientContext;
use crate::patient::day_field::DayField;

/// First and last day, the reason, and the button that saves them.
#[component]
pub fn Days(line: Correctable, from: NaiveDate, until: NaiveDate, why: DayOffReason) -> impl IntoView {
    let patient = PatientContext::current();
    let words = patient.app.words();
    let context = CorrectionContext::current();
    let (first, last) = context.page.with_untracked(|page| {
        page.as_ref().map_or((from, until), |page| (page.plan.header.start, page.plan.prescription.review))
    });
    let wanted = RwSignal::new((from, until, why));
    let off = move || patient.app.busy.get() || wanted.with(|(from, until, _)| from > until);
    let keep = move |_| {
        let (from, until, why) = wanted.get_untracked();
        context.say(line, EntryContent::DaysOff { from, until, why });
    };
    let reasons = DayOffReason::ALL.map(|reason| {
        view! { <option value=words.day_off_reason(reason) selected=reason == why>{upper(words.day_off_reason(reason))}</option> }
    });
    let choose = move |event| {
        let chosen = event_target_value(&event);
        if let Some(reason) = DayOffReason::ALL.into_iter().find(|reason| words.day_off_reason(*reason) == chosen) {
            wanted.update(|wanted| wanted.2 = reason);
        }
    };
    view! {
        <div class="row">
            <DayField label=Key::From first last chosen=from set=move |day| wanted.update(|wanted| wanted.0 = day)/>
            <DayField label=Key::To first last chosen=until set=move |day| wanted.update(|wanted| wanted.1 = day)/>
        </div>
        <label>{words.text(Key::DaysOffWhy)}<select on:change=choose>{reasons}</select></label>
        <button type="button" disabled=off on:click=keep>{words.text(Key::CorrectDays)}</button>
    }
}
