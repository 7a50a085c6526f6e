//! What next?

use exercises::log::Barrier;
use exercises::score::Score;
use exercises::suggest::{Ask, Proposal, Reduction, Suggestion};
use leptos::prelude::*;
use words::Key;
use words::review::ReviewQuestion;

use super::context::ReviewContext;
use super::pain_asked::PainAsked;
use super::reason_asked::ReasonAsked;

/// A proposal for each item with its reasons, each with a button that puts it into the next plan.
#[component]
pub fn Next() -> impl IntoView {
    let context = ReviewContext::current();
    let all = context.read(|review, _| review.items.clone()).unwrap_or_default();
    let at_once = context.read(|review, names| context.words.steps_at_once(review, names)).unwrap_or_default();
    let none = all.is_empty().then(|| view! { <p class="soft">{context.words.unanswered(ReviewQuestion::Next)}</p> });
    view! {
        <section class="next">
            <h2>{context.question(ReviewQuestion::Next)}<span class="small soft">" "{context.words.proposals_only()}</span></h2>
            {none}
            {at_once.into_iter().map(|said| view! { <p class="soft">{said}</p> }).collect_view()}
            <ul>{all.into_iter().map(|one| view! { <One suggestion=one/> }).collect_view()}</ul>
        </section>
    }
}

/// One item: as it is now, and what is proposed. The answer to what is asked first changes the proposal.
#[component]
fn One(suggestion: Suggestion) -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let id = suggestion.item;
    let (pain, reason) = (RwSignal::new(None::<Score>), RwSignal::new(None::<Barrier>));
    let asked = suggestion.ask.clone();
    let proposal = Memo::new(move |_| {
        let known = pain.get().and_then(|score| context.with_pain(&suggestion, score));
        let known = known.unwrap_or_else(|| suggestion.clone());
        reason.get().map_or(known.clone(), |reason| known.with_reason(reason))
    });
    let said = move || {
        let suggestion = proposal.get();
        let said = context.read(|review, names| words.suggestion(&suggestion, names, review.start))?;
        let reason = said.reason();
        Some(view! { <b>{said.line}</b><small class="soft">{reason}</small> })
    };
    let fields = asked.into_iter().map(|ask| match ask {
        Ask::Pain => view! { <PainAsked words given=pain/> }.into_any(),
        Ask::Reason => view! { <ReasonAsked words given=reason/> }.into_any(),
    });
    let name = context.read(|_, names| names.item(id)).unwrap_or_default();
    view! {
        <li>
            <div><h3>{name}</h3><small class="soft">{context.in_force(id)}</small></div>
            <div>{said}{fields.collect_view()}</div>
            <Accept proposal/>
        </li>
    }
}

/// Puts a proposal into the next plan, and takes it out again. Empty where there is nothing to put there: what comes of a talk, and
/// what is shortened or ended, the clinician enters.
#[component]
fn Accept(proposal: Memo<Suggestion>) -> impl IntoView {
    let context = ReviewContext::current();
    let (words, next) = (context.words, context.next);
    let changes = move || match proposal.get().proposal {
        Proposal::Talk | Proposal::Keep | Proposal::Reduce(Reduction::ShortenOrEnd) => false,
        Proposal::Ease(_) | Proposal::Progress(_) | Proposal::Reduce(_) => true,
    };
    let follows = move || next.follows(&proposal.get()).unwrap_or_default();
    let label = move || words.text(if follows() { Key::ReviewInNextPlan } else { Key::ReviewIntoNextPlan });
    view! {
        <Show when=move || changes() && next.follows(&proposal.get()).is_some()>
            <button type="button" aria-pressed=move || follows().to_string() on:click=move |_| next.toggle(&proposal.get_untracked())>
                {label}
            </button>
        </Show>
    }
}
