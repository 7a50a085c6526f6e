//! The items of the plan.

use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use super::item::ItemCard;

/// The items in their order, and a button that accepts all proposals.
#[component]
pub fn Items() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let ids = move || editor.plan(|plan| plan.items.iter().map(|item| item.id).collect::<Vec<_>>());
    let none = Memo::new(move |_| editor.plan(|plan| plan.items.is_empty()));
    let open = Memo::new(move |_| editor.draft.with(|draft| editor.suggestions.with_value(|all| !draft.follows_all(all))));
    let take_all = move |_| editor.edit(|draft| editor.suggestions.with_value(|all| draft.apply_all(all)));
    view! {
        <section class="items" aria-label=words.text(Key::InPlan)>
            <Show when=move || open.get()>
                <div class="proposals">
                    <p class="small soft">{words.proposals_only()}</p>
                    <button type="button" on:click=take_all>{words.text(Key::ProposalsAccept)}</button>
                </div>
            </Show>
            <Show when=move || none.get()><p class="empty">{words.text(Key::PlanEmpty)}</p></Show>
            <ol><For each=ids key=|id| *id children=move |id| view! { <ItemCard id/> }/></ol>
        </section>
    }
}
