//! One exercise of a plan in the list.

use chrono::NaiveDate;
use exercises::alarm::Trouble;
use exercises::catalogue::Exercise;
use exercises::plan::{Item, PhaseState, Plan, Schedule};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::{PatientContext, served};
use crate::patient::page::Page;

/// Its name, which opens its full description, with dose, times and purpose. `ahead` are other times, and from which day they apply.
#[component]
pub fn PlanItem(
    plan: Plan,
    item: Item,
    exercise: Option<Exercise>,
    paused: Option<Trouble>,
    ahead: Option<(NaiveDate, Schedule)>,
) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let today = context.today.with_untracked(|today| today.as_ref().map(|today| today.now.date()));
    let item = today.map(|today| item.on(today, plan.header.issued).into_owned()).unwrap_or(item);
    let (of, id) = (plan.header.id, item.id);
    let texts = exercise.as_ref().and_then(|exercise| exercise.text(words.lang()));
    let name = texts.map_or_else(|| item.exercise.to_string(), |texts| texts.name.clone());
    let rung = exercise.as_ref().and_then(|exercise| words.rung_of(&item, exercise));
    let serves = served(&plan, &item).map(|name| words.for_complaint(&name));
    let held = paused.map(|trouble| words.exercise_paused_because(words.trouble(trouble)));
    let ahead = ahead.map(|(from, times)| words.times_from(&words.weekday_date_inline(from), &words.schedule(&times)));
    let phase = today.and_then(|today| words.phase_on(item.phase, today));
    let over = today.is_some_and(|today| matches!(item.phase.on(today), PhaseState::Over(_)));
    let fixed = over || item.schedule.is_as_needed() || item.schedule.pattern.goes_over_midnight();
    let refit = (!context.is_sample() && !fixed).then(|| {
        view! {
            <button type="button" class="quiet" aria-label=words.change_times_of(&name)
                on:click=move |_| context.open(Page::Refit(of, id))>{words.text(Key::ChangeTimes)}</button>
        }
    });
    view! {
        <li class="sheet stack-2">
            <h2>{name.clone()}</h2>
            <p>{words.dose_of(&item)}</p>
            {rung.map(|rung| view! { <p class="soft">{rung}</p> })}
            <p class="soft">{words.phrase_schedule(&item.schedule)}</p>
            {phase.map(|phase| view! { <p class="brass">{phase}</p> })}
            {ahead.map(|ahead| view! { <p class="brass">{ahead}</p> })}
            {serves.map(|serves| view! { <p class="soft">{serves}</p> })}
            {(!item.note.is_empty()).then(|| view! { <p class="note">{item.note.clone()}</p> })}
            {held.map(|held| view! { <p class="alarm-text">{held}</p> })}
            <div class="row">
                <button type="button" aria-label=words.how_to_of(&name)
                    on:click=move |_| context.open(Page::HowTo(of, id))>{words.text(Key::HowToDoIt)}</button>
                {refit}
            </div>
        </li>
    }
}
