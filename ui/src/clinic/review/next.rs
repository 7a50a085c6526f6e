//! What next?

use exercises::suggest::Suggestion;
use leptos::prelude::*;
use words::Key;
use words::review::Question;

use super::desk::Desk;
use crate::clinic::room::Room;

/// A proposal for each item with its reason, and the way to the next plan.
#[component]
pub fn Next() -> impl IntoView {
    let desk = Desk::here();
    let room = Room::here();
    let all = desk.read(|review, _| review.items.clone()).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{desk.words.unanswered(Question::Next)}</p> });
    let code = desk.page(|page| page.code.clone());
    view! {
        <section class="next">
            <h2>{desk.question(Question::Next)}</h2>
            {none}
            <dl>{all.into_iter().map(|one| view! { <One suggestion=one/> }).collect_view()}</dl>
            <p class="small soft">{desk.words.proposals_only()}</p>
            <button type="button" on:click=move |_| room.plan(code.clone())>{desk.words.text(Key::PlanNext)}</button>
        </section>
    }
}

/// One proposal.
#[component]
fn One(suggestion: Suggestion) -> impl IntoView {
    let desk = Desk::here();
    let said =
        desk.read(|review, names| (names.item(suggestion.item), desk.words.suggestion(&suggestion, names, review.start)));
    said.map(|(name, said)| {
        view! {
            <div>
                <dt>{name}</dt>
                <dd><b>{said.advice}</b>" "{said.step}<small class="soft">{said.reason}</small></dd>
            </div>
        }
    })
}
