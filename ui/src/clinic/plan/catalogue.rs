//! The exercises at the side, by region; a press adds one to the plan.

use exercises::catalogue::{Exercise, Region};
use exercises::plan::MAX_ITEMS;
use leptos::ev::MouseEvent;
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::width::{TWO_COLUMNS, window_width};
use crate::shared::figure::Figure;

/// All regions, from the head downward.
const REGIONS: [Region; 7] =
    [Region::NeckUpperBack, Region::Shoulder, Region::WristHand, Region::LowBack, Region::Hip, Region::Knee, Region::Ankle];

/// The catalogue with a field that filters it.
#[component]
pub fn Catalogue() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let find = RwSignal::new(String::new());
    let fits = move |exercise: &Exercise| {
        let text = exercise.text(words.lang());
        let said = text.map(|text| format!("{} {}", text.name, text.purpose)).unwrap_or_default().to_lowercase();
        find.get().to_lowercase().split_whitespace().all(|word| said.contains(word))
    };
    let of_region = move |region: Region| {
        editor.exercises.with_value(|all| {
            all.iter().filter(|exercise| exercise.region == region && fits(exercise)).cloned().collect::<Vec<_>>()
        })
    };
    // Beside the plan the catalogue is open; above it, on a narrow page, it is open while the plan is empty.
    let width = window_width();
    let is_wide = Memo::new(move |_| width.get() >= TWO_COLUMNS);
    let starts_open = editor.draft.with_untracked(|draft| draft.prescription.items.is_empty());
    let full = Memo::new(move |_| editor.plan(|plan| plan.items.len() >= MAX_ITEMS));
    let none = move || REGIONS.iter().all(|region| of_region(*region).is_empty());
    let group = move |region: Region| {
        view! {
            <section class:none=move || of_region(region).is_empty()>
                <h3 class="small">{words.region(region)}</h3>
                <For each=move || of_region(region) key=|exercise| exercise.id.clone()
                    children=move |exercise| view! { <Entry exercise/> }/>
            </section>
        }
    };
    view! {
        <details class="catalogue" open=move || is_wide.get() || starts_open>
            <summary tabindex=move || is_wide.get().then_some("-1")><h2>{words.text(Key::Catalogue)}</h2></summary>
            <input type="search" aria-label=words.text(Key::CatalogueFind) placeholder=words.text(Key::CatalogueFind)
                prop:value=find on:input:target=move |event| find.set(event.target().value())/>
            <div role="status">{move || full.get().then(|| view! { <p class="warning">{words.plan_full(MAX_ITEMS)}</p> })}</div>
            <div class="shelves">
                {REGIONS.map(group).into_iter().collect_view()}
                <Show when=none><p class="soft">{words.text(Key::CatalogueNone)}</p></Show>
            </div>
        </details>
    }
}

/// One exercise: its figure, its name and its usual dose.
#[component]
fn Entry(exercise: Exercise) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let name = exercise.text(words.lang()).map(|text| text.name.clone()).unwrap_or_else(|| exercise.id.to_string());
    let level = exercise.level(exercise.first_rung().map(|rung| &rung.id));
    let (drawing, below) = (level.figure(), words.dose(level.dose()));
    let id = exercise.id.clone();
    let chosen = Memo::new(move |_| editor.plan(|plan| plan.items.iter().any(|item| item.exercise == id)));
    let add = words.catalogue_add(&name);
    // A double click adds the exercise once. Somebody who wants it twice presses again later.
    let press = move |event: MouseEvent| {
        if event.detail() < 2 {
            editor.edit(|draft| {
                draft.add(&exercise);
            });
        }
    };
    view! {
        <button type="button" class="entry" aria-label=add class:chosen=chosen on:click=press>
            <Figure drawing pose=Signal::stored(1.0)/>
            <span><b>{name}</b><small>{below}{move || chosen.get().then(|| format!("; {}", words.text(Key::InPlan)))}</small></span>
        </button>
    }
}
