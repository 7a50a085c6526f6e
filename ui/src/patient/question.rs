//! One question with its buttons.

use exercises::alarm::Trouble;
use exercises::id::{ItemId, PlanId};
use exercises::questions::Question;
use exercises::today::Today;
use leptos::prelude::*;
use wire::patient::GiveAnswer;
use words::Key;

use super::context::PatientContext;
use super::given::Given;
use super::page::{Page, Raised};
use super::score_buttons::ScoreButtons;

/// One question with its buttons. `then` is called after the shell has stored the answer, unless the answer leads to a page of its
/// own: a rating above the limit.
#[component]
pub fn QuestionForm(question: Question, then: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (least, most) = match question {
        Question::Activity { .. } => (Key::ActivityLeast, Key::ActivityMost),
        Question::Morning { .. } | Question::During { .. } => (Key::PainLeast, Key::PainMost),
    };
    let (least, most) = (words.text(least), words.text(most));
    let (text, last) = match &question {
        Question::Morning { name, last, .. } => (words.ask_morning(name), *last),
        Question::Activity { name, last, .. } => (words.ask_activity(name), *last),
        Question::During { plan, item, last } => (words.ask_during(&name_of(context, *plan, *item)), *last),
    };
    let last = last.map(|score| view! { <p class="soft">{words.last_time(score)}</p> });
    let asked = StoredValue::new(question);
    let give = move |score| {
        let given = Given { question: asked.get_value(), score };
        context.app.request::<GiveAnswer>(given.answer(), move |today| {
            let above = above_the_limit(&today, &given);
            context.show(today);
            match above {
                Some(raised) => context.replace(Page::Advice(Box::new(raised))),
                None => {
                    context.answered.set(Some(given));
                    then();
                }
            }
        });
    };
    view! {
        <section class="asked stack">
            <div class="stack-1"><h2>{text.clone()}</h2>{last}</div>
            <ScoreButtons label=text least most give/>
        </section>
    }
}

/// The name of an item's exercise; empty if it is no longer among today's.
pub(super) fn name_of(context: PatientContext, plan: PlanId, item: ItemId) -> String {
    let words = context.app.words();
    context.today.with_untracked(|today| {
        let items = today.iter().flat_map(|today| &today.items);
        let this = items.into_iter().find(|one| (one.plan, one.item.id) == (plan, item));
        this.map(|one| words.exercise_name(&one.exercise).to_owned()).unwrap_or_default()
    })
}

/// What a rating raised that is above the limit of its item.
fn above_the_limit(today: &Today, given: &Given) -> Option<Raised> {
    let Question::During { plan, item, .. } = given.question else { return None };
    let limit = today.items.iter().find(|one| (one.plan, one.item.id) == (plan, item))?.item.pain_limit;
    (given.score > limit).then(|| Raised {
        item: Some(item),
        above: Some((given.clone(), limit)),
        ..Raised::new(Some(plan), Trouble::PainAboveLimit)
    })
}
