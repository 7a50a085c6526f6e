//! The options for an item.

use exercises::draft::ItemOption;
use exercises::suggest::{Proposal, Suggestion};
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;

/// What can be done with an item, to press; shown as pressed while the item is in the state that it leads to. The proposal is marked. What
/// is to be talked about first stays as it is until something is pressed, and that looks like nobody's choice.
#[component]
pub fn Options(suggestion: Suggestion, #[prop(optional)] may_leave_out: bool) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let proposed = suggestion.proposal.clone();
    let item = suggestion.item;
    editor.set_to_talk(item, proposed == Proposal::Talk);
    let out = may_leave_out.then_some(ItemOption::LeftOut(item));
    let all = editor.options(&suggestion).into_iter().chain(out);
    let buttons = all.map(|option| {
        let line = match option.suggestion() {
            Some(one) => untrack(|| editor.named(|names| words.suggestion(one, names, editor.start))).line,
            None => words.text(Key::OptionLeaveOut).to_owned(),
        };
        let marked = option.suggestion().is_some_and(|one| one.proposal == proposed);
        let mark = marked.then(|| view! { <small>{words.text(Key::Proposed)}</small> });
        let is = option.clone();
        let stays = option.suggestion().is_some_and(|one| one.proposal == Proposal::Keep);
        let undecided = move || stays && editor.is_undecided(item);
        let chosen = move || (!undecided() && editor.draft.with(|draft| draft.has_chosen(&is))).to_string();
        let choose = move |_| {
            editor.set_chosen(item);
            editor.choose(&option);
        };
        view! {
            <button type="button" aria-pressed=chosen class:proposed=marked on:click=choose>
                <span><b>{line}</b></span>{mark}
            </button>
        }
    });
    view! { <div class="options" role="group" aria-label=words.text(Key::Proposed)>{buttons.collect_view()}</div> }
}
