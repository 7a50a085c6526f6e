//! Taking days off.

use chrono::NaiveDate;
use exercises::id::PlanId;
use exercises::log::DayOffReason;
use leptos::prelude::*;
use wire::patient::{DaysOffRequest, TakeDaysOff as Command};
use words::Key;
use words::review::upper;

use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// Largest number of days that can be taken off at once.
const MAX_DAYS: usize = 28;

/// The last day off, and the reason.
#[component]
pub fn TakeDaysOff(plan: PlanId) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let busy = context.app.busy;
    let today = context.today.with_untracked(|today| today.as_ref().map(|today| today.now.date())).unwrap_or_default();
    let until = RwSignal::new(today);
    let excuse = move |why| {
        context.app.request::<Command>(
            DaysOffRequest { plan, from: today, until: until.get_untracked(), why },
            move |today| {
                context.show(today);
                context.close();
            },
        );
    };
    let days = today.iter_days().take(MAX_DAYS).enumerate().map(|(ahead, day)| {
        let said = if ahead == 0 { words.text(Key::OnlyToday).to_owned() } else { words.weekday_date(day) };
        view! { <option value=day.to_string()>{said}</option> }
    });
    let choose = move |event| {
        if let Ok(day) = event_target_value(&event).parse::<NaiveDate>() {
            until.set(day);
        }
    };
    let reasons = DayOffReason::ALL.map(|why| {
        view! { <button type="button" disabled=busy on:click=move |_| excuse(why)>{upper(words.day_off_reason(why))}</button> }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><h1>{words.text(Key::TakeDaysOff)}</h1><p>{words.text(Key::TakeDaysOffWhat)}</p></div>
                <Fault/>
                <label>{words.text(Key::DaysOffUntil)}<select on:change=choose>{days.collect_view()}</select></label>
                <h2>{words.text(Key::DaysOffWhySaves)}</h2>
                <div class="choices">{reasons}</div>
                <button type="button" class="quiet" on:click=move |_| context.close()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
