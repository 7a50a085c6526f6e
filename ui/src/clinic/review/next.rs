//! What next?

use exercises::suggest::Suggestion;
use leptos::prelude::*;
use words::Key;
use words::review::ReviewQuestion;

use super::context::ReviewContext;
use crate::clinic::context::ClinicContext;

/// A proposal for each item with its reason, and the button for the next plan.
#[component]
pub fn Next() -> impl IntoView {
    let context = ReviewContext::current();
    let clinic = ClinicContext::current();
    let all = context.read(|review, _| review.items.clone()).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{context.words.unanswered(ReviewQuestion::Next)}</p> });
    let code = context.page(|page| page.code.clone());
    view! {
        <section class="next">
            <h2>{context.question(ReviewQuestion::Next)}</h2>
            {none}
            <dl>{all.into_iter().map(|one| view! { <One suggestion=one/> }).collect_view()}</dl>
            <p class="small soft">{context.words.proposals_only()}</p>
            <button type="button" on:click=move |_| clinic.plan(code.clone())>{context.words.text(Key::PlanNext)}</button>
        </section>
    }
}

/// One proposal.
#[component]
fn One(suggestion: Suggestion) -> impl IntoView {
    let context = ReviewContext::current();
    let said = context
        .read(|review, names| (names.item(suggestion.item), context.words.suggestion(&suggestion, names, review.start)));
    said.map(|(name, said)| {
        view! {
            <div>
                <dt>{name}</dt>
                <dd><b>{said.advice}</b>" "{said.step}<small class="soft">{said.reason}</small></dd>
            </div>
        }
    })
}
