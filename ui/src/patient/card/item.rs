//! One exercise of a card in plain words.

use exercises::catalogue::Exercise;
use exercises::id::ItemId;
use exercises::plan::{Item, Plan, Schedule};
use leptos::prelude::*;
use std::collections::BTreeMap;

use super::window_of_day::WindowOfDay;
use crate::patient::context::{PatientContext, served};

/// Name, dose, side, purpose, note, and times; the times can be moved to suit the person's day.
#[component]
pub fn CardItem(
    plan: Plan,
    item: Item,
    exercise: Option<Exercise>,
    agreed: RwSignal<BTreeMap<u8, (ItemId, Schedule)>>,
) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let id = item.id;
    let texts = exercise.as_ref().and_then(|exercise| exercise.text(words.lang())).cloned();
    let name = texts.as_ref().map_or_else(|| item.exercise.to_string(), |texts| texts.name.clone());
    let rung = exercise.as_ref().and_then(|exercise| words.rung_of(&item, exercise));
    let phase = words.phase(item.phase).map(|phase| view! { <p class="brass">{words.at_line_start(&phase)}</p> });
    let serves = served(&plan, &item).map(|name| words.for_complaint(&name));
    let schedule = RwSignal::new(item.schedule.clone());
    let planned = item.schedule.clone();
    Effect::new(move || {
        let now = schedule.get();
        agreed.update(|agreed| {
            if now == planned {
                agreed.remove(&id.0)
            } else {
                agreed.insert(id.0, (id, now))
            };
        });
    });
    view! {
        <section class="sheet stack-2">
            <h2>{name.clone()}</h2>
            <p>{words.dose_of(&item)}</p>
            {rung.map(|rung| view! { <p class="soft">{rung}</p> })}
            {serves.map(|serves| view! { <p class="soft">{serves}</p> })}
            {texts.map(|texts| view! { <p class="soft">{texts.purpose}</p> })}
            {(!item.note.is_empty()).then(|| view! { <p class="note">{item.note.clone()}</p> })}
            <p>{move || words.phrase_schedule(&schedule.get())}</p>
            {phase}
            <WindowOfDay name schedule/>
        </section>
    }
}
