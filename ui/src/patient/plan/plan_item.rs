//! One exercise of a plan in the list.

use exercises::alarm::Trouble;
use exercises::catalogue::Exercise;
use exercises::plan::{Item, Plan};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::{PatientContext, served};
use crate::patient::page::Page;

/// Its name, which opens its full description, with dose, times and purpose.
#[component]
pub fn PlanItem(plan: Plan, item: Item, exercise: Option<Exercise>, paused: Option<Trouble>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (of, id) = (plan.header.id, item.id);
    let texts = exercise.as_ref().and_then(|exercise| exercise.text(words.lang()));
    let name = texts.map_or_else(|| item.exercise.to_string(), |texts| texts.name.clone());
    let rung = exercise.as_ref().and_then(|exercise| words.rung_of(&item, exercise));
    let serves = served(&plan, &item).map(|name| words.for_complaint(&name));
    let held = paused.map(|trouble| words.exercise_paused_because(words.trouble(trouble)));
    view! {
        <li class="sheet stack-2">
            <h2>{name.clone()}</h2>
            <p>{words.dose_of(&item)}</p>
            {rung.map(|rung| view! { <p class="soft">{rung}</p> })}
            <p class="soft">{words.phrase_schedule(&item.schedule)}</p>
            {serves.map(|serves| view! { <p class="soft">{serves}</p> })}
            {(!item.note.is_empty()).then(|| view! { <p class="note">{item.note.clone()}</p> })}
            {held.map(|held| view! { <p class="alarm-text">{held}</p> })}
            <button type="button" aria-label=words.how_to_of(&name)
                on:click=move |_| context.open(Page::HowTo(of, id))>{words.text(Key::HowToDoIt)}</button>
        </li>
    }
}
