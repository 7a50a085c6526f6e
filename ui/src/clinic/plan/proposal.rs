//! The rules' proposal for an item, and the other choices.

use exercises::id::ItemId;
use exercises::suggest::{Proposal as Proposed, Suggestion};
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;

/// Ease, keep or progress, each with its result, and what else is proposed; the proposal is marked and has its reason below.
/// Empty for an item without a proposal.
#[component]
pub fn Proposal(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let suggestion = editor.suggestions.with_value(|all| all.iter().find(|one| one.item == id).cloned());
    let Some(suggestion) = suggestion else { return ().into_any() };
    let words = editor.words();
    let start = editor.start;
    let reason = editor.named(|names| words.suggestion(&suggestion, names, start)).reason();
    let proposed = suggestion.proposal.clone();
    let choices = editor.draft.with_untracked(|draft| {
        let item = draft.prescription.item(id)?;
        draft.choices(&suggestion, editor.exercise(&item.exercise).as_ref())
    });
    let own = matches!(proposed, Proposed::Talk | Proposed::Reduce(_)).then(|| suggestion.clone());
    let all =
        choices.map(|choices| [own, choices.back, Some(choices.keep), choices.advance]).into_iter().flatten().flatten();
    let buttons = all.map(|choice| {
        let marked = choice.proposal == proposed;
        view! { <ChoiceButton choice marked/> }
    });
    view! {
        <div class="proposal">
            <div class="options" role="group" aria-label=words.text(Key::Proposed)>{buttons.collect_view()}</div>
            <p class="small soft">{reason}</p>
        </div>
    }
    .into_any()
}

/// One of the choices; shown as pressed while the item is in the state that it leads to.
#[component]
fn ChoiceButton(choice: Suggestion, marked: bool) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let line = untrack(|| editor.named(|names| words.suggestion(&choice, names, editor.start))).line;
    let mark = marked.then(|| view! { <small>{words.text(Key::Proposed)}</small> });
    let is = choice.clone();
    let follows = move || editor.draft.with(|draft| draft.follows(&is)).to_string();
    view! {
        <button type="button" aria-pressed=follows class:proposed=marked on:click=move |_| editor.edit(|draft| draft.apply(&choice))>
            <span><b>{line}</b></span>{mark}
        </button>
    }
}
