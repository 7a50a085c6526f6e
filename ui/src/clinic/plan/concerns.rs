//! What to think of at an item of the plan.

use exercises::catalogue::Exercise;
use exercises::id::ItemId;
use leptos::prelude::*;

use super::editor::PlanEditor;

/// A line for each of the patient's facts that touches the exercise at the item's level. They forbid nothing.
#[component]
pub fn Concerns(id: ItemId, exercise: Exercise) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let lines = move || {
        let rung = editor.item(id, None, |item| item.rung.clone());
        let concerns = editor.facts.with(|facts| facts.concerns(&exercise, rung.as_ref()));
        concerns.into_iter().map(|one| view! { <p class="concern">{words.concern(one)}</p> }).collect_view()
    };
    view! { <div role="status">{lines}</div> }
}
