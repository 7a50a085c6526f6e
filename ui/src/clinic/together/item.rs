//! One exercise with its options.

use exercises::log::Barrier;
use exercises::score::Score;
use exercises::suggest::{Ask, Proposal, Suggestion};
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::clinic::ReviewPage;

use super::reason::Reason;
use crate::clinic::plan::{Options, PlanEditor};
use crate::clinic::review::{PainAsked, ReasonAsked};
use crate::shared::figure::Figure;

/// The figure, the name with how it is done now, what is proposed and why, and what can be pressed. The answer to what is asked first
/// changes the proposal.
#[component]
pub fn ItemOptions(suggestion: Suggestion, page: StoredValue<ReviewPage>) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let (pain, reason) = (RwSignal::new(None::<Score>), RwSignal::new(None::<Barrier>));
    let asked = suggestion.ask.clone();
    let (name, now, drawing) = known(editor, &suggestion);
    let proposal = Memo::new(move |_| {
        let known = pain.get().and_then(|score| with_pain(page, &suggestion, score)).unwrap_or_else(|| suggestion.clone());
        reason.get().map_or(known.clone(), |reason| known.with_reason(reason))
    });
    let said = move || {
        let proposal = proposal.get();
        let said = editor.named(|names| words.suggestion(&proposal, names, editor.start));
        let talk = (proposal.proposal == Proposal::Talk).then_some(said.line.clone());
        view! { {talk.map(|line| view! { <p><b>{line}</b></p> })}<p class="small soft">{said.reason()}</p> }
    };
    let fields = asked.into_iter().map(|ask| match ask {
        Ask::Pain => view! { <PainAsked words given=pain/> }.into_any(),
        Ask::Reason => view! { <ReasonAsked words given=reason/> }.into_any(),
    });
    let heading = name.clone();
    view! {
        <li class="sheet">
            {drawing}
            <div class="stack-2">
                <div><h3>{heading}</h3><small class="soft">{now}</small></div>
                {said}
                {fields.collect_view()}
                <div class="proposal">{move || view! { <Options suggestion=proposal.get() may_leave_out=true/> }}</div>
                <Reason proposal name=name.unwrap_or_default()/>
            </div>
        </li>
    }
}

/// The name of an item, how it is done now, and its figure.
fn known(editor: PlanEditor, suggestion: &Suggestion) -> (Option<String>, Option<String>, Option<impl IntoView + use<>>) {
    let words = editor.words();
    let carried = editor.carried.with_value(|items| items.iter().find(|item| item.id == suggestion.item).cloned());
    let exercise = carried.as_ref().and_then(|item| editor.exercise(&item.exercise));
    let name = exercise.as_ref().and_then(|exercise| exercise.text(words.lang())).map(|text| text.name.clone());
    let now = carried.as_ref().map(|item| words.in_force(item, exercise.as_ref(), Some(suggestion)));
    let rung = carried.and_then(|item| item.rung);
    let drawing = exercise.map(|exercise| {
        let drawing = exercise.level(rung.as_ref()).figure();
        view! { <div class="drawing"><Figure drawing pose=Signal::stored(1.0)/></div> }
    });
    (name, now, drawing)
}

/// What a suggestion becomes once it is known how much the item hurts while it is done.
fn with_pain(page: StoredValue<ReviewPage>, suggestion: &Suggestion, score: Score) -> Option<Suggestion> {
    page.with_value(|page| {
        let plan = page.plan.as_ref()?;
        let item = plan.item(suggestion.item)?;
        let exercise = page.exercises.iter().find(|exercise| exercise.id == item.exercise);
        let today = DayNumber::nearest(page.today, plan.header.start);
        Some(suggestion.with_pain(score, item, exercise, today))
    })
}
