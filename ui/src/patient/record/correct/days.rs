//! Other days of an excused stretch, or another reason for them.

use chrono::NaiveDate;
use exercises::correct::{Correctable, Said};
use exercises::log::Excuse;
use leptos::prelude::*;
use words::Key;
use words::review::upper;

use super::bench::Bench;
use crate::patient::day_field::DayField;
use crate::patient::desk::Desk;

/// From which day to which, why, and the button that keeps them.
#[component]
pub fn Days(line: Correctable, from: NaiveDate, until: NaiveDate, why: Excuse) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let bench = Bench::here();
    let (first, last) = bench.page.with_untracked(|page| {
        page.as_ref().map_or((from, until), |page| (page.plan.header.start, page.plan.prescription.review))
    });
    let wanted = RwSignal::new((from, until, why));
    let off = move || desk.house.busy.get() || wanted.with(|(from, until, _)| from > until);
    let keep = move |_| {
        let (from, until, why) = wanted.get_untracked();
        bench.say(line, Said::Excused { from, until, why });
    };
    let reasons = Excuse::ALL.map(|reason| {
        view! { <option value=words.excuse(reason) selected=reason == why>{upper(words.excuse(reason))}</option> }
    });
    let choose = move |event| {
        let chosen = event_target_value(&event);
        if let Some(reason) = Excuse::ALL.into_iter().find(|reason| words.excuse(*reason) == chosen) {
            wanted.update(|wanted| wanted.2 = reason);
        }
    };
    view! {
        <div class="row">
            <DayField label=Key::From first last chosen=from set=move |day| wanted.update(|wanted| wanted.0 = day)/>
            <DayField label=Key::To first last chosen=until set=move |day| wanted.update(|wanted| wanted.1 = day)/>
        </div>
        <label>{words.text(Key::WhyDays)}<select on:change=choose>{reasons}</select></label>
        <button type="button" disabled=off on:click=keep>{words.text(Key::CorrectDays)}</button>
    }
}
