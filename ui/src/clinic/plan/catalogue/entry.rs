//! One exercise of the catalogue.

use exercises::catalogue::Exercise;
use leptos::ev::MouseEvent;
use leptos::prelude::*;
use words::Key;
use words::finding::first_level;

use super::super::editor::PlanEditor;
use crate::shared::figure::Figure;

/// Its figure, its name, its usual dose, what it is and needs, and what to think of with this patient; a press adds it to the plan.
/// `with_region` names its region.
#[component]
pub fn Entry(exercise: Exercise, with_region: bool) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let name = words.exercise_name(&exercise).to_owned();
    let level = first_level(&exercise);
    let (drawing, dose) = (level.figure(), words.dose(level.dose()));
    let line = words.exercise_in_short(&exercise, with_region);
    let id = exercise.id.clone();
    let chosen = Memo::new(move |_| editor.plan(|plan| plan.items.iter().any(|item| item.exercise == id)));
    let add = words.catalogue_add(&name);
    let touched = exercise.clone();
    let concerns = move || {
        let concerns = editor.facts.with(|facts| facts.concerns(&touched, None));
        concerns.into_iter().map(|one| view! { <small class="concern">{words.concern(one)}</small> }).collect_view()
    };
    // Shown as a tick that has its room before: the entries below must not move under a hand that adds several.
    let in_plan = move || chosen.get().then(|| words.text(Key::InPlan));
    // A double click adds the exercise once. Somebody who wants it twice presses again later.
    let press = move |event: MouseEvent| {
        if event.detail() < 2 {
            editor.edit(|draft| {
                draft.add(&exercise);
            });
        }
    };
    view! {
        <button type="button" class="entry" aria-label=add aria-description=in_plan class:chosen=chosen on:click=press>
            <Figure drawing pose=Signal::stored(1.0)/>
            <span>
                <b>{name}</b>
                <small>{dose}</small>
                <small>{line}</small>
                {concerns}
            </span>
        </button>
    }
}
