//! The rules' proposal for an item, and the other choices.

use exercises::id::ItemId;
use exercises::suggest::Proposal as Proposed;
use leptos::prelude::*;

use super::editor::PlanEditor;
use super::options::Options;

/// Ease, keep or progress, each with its result, and what else is proposed; the proposal is marked and has its reason below.
/// Empty for an item without a proposal.
#[component]
pub fn Proposal(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let suggestion = editor.suggestions.with_value(|all| all.iter().find(|one| one.item == id).cloned());
    let Some(suggestion) = suggestion else { return ().into_any() };
    let words = editor.words();
    let said = editor.named(|names| words.suggestion(&suggestion, names, editor.start));
    let talk = (suggestion.proposal == Proposed::Talk).then(|| said.line.clone());
    view! {
        <div class="proposal">
            {talk.map(|line| view! { <p><b>{line}</b></p> })}
            <Options suggestion/>
            <p class="small soft">{said.reason()}</p>
        </div>
    }
    .into_any()
}
