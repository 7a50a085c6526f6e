//! One question with its buttons.

use exercises::questions::Question;
use leptos::prelude::*;
use wire::patient::{GiveAnswer, QuestionAnswer};
use words::Key;

use super::context::PatientContext;
use super::score_buttons::ScoreButtons;

/// One question with its buttons. `then` is called after the shell has stored the answer.
#[component]
pub fn QuestionForm(question: Question, then: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let give = move |answer: QuestionAnswer| {
        context.app.request::<GiveAnswer>(answer, move |today| {
            context.show(today);
            then();
        });
    };
    let (text, buttons) = match question {
        Question::Pain { plan, complaint, name, after } => {
            let text = words.ask_pain(&name);
            let give = move |score| give(QuestionAnswer::Pain { plan, complaint, score, after });
            let (least, most) = (words.text(Key::PainLeast), words.text(Key::PainMost));
            (text.clone(), view! { <ScoreButtons label=text least most give/> }.into_any())
        }
        Question::Activity { plan, activity, name } => {
            let text = words.ask_activity(&name);
            let give = move |score| give(QuestionAnswer::Activity { plan, activity, score });
            let (least, most) = (words.text(Key::ActivityLeast), words.text(Key::ActivityMost));
            (text.clone(), view! { <ScoreButtons label=text least most give/> }.into_any())
        }
        Question::Settled { plan, complaint, name } => {
            let give = move |settled| give(QuestionAnswer::Settled { plan, complaint, settled });
            let buttons = view! {
                <div class="row">
                    <button type="button" on:click=move |_| give(true)>{words.text(Key::Yes)}</button>
                    <button type="button" on:click=move |_| give(false)>{words.text(Key::No)}</button>
                </div>
            };
            (words.ask_settled(&name), buttons.into_any())
        }
    };
    view! { <section class="asked stack"><h2>{text}</h2>{buttons}</section> }
}
