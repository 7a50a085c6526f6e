//! What is asked, one question at a time.

use exercises::ask::Question;
use leptos::prelude::*;
use wire::patient::{Answer, GiveAnswer};
use words::Key;

use super::desk::Desk;
use super::page::Page;
use super::score::Score;
use crate::shared::Fault;

/// Questions after a run; the last answer leads back to Now.
#[component]
pub fn After(questions: Vec<Question>) -> impl IntoView {
    let desk = Desk::here();
    let next = move || {
        let rest: Vec<Question> = desk.page.with_untracked(|page| match page {
            Some(Page::After(questions)) => questions.iter().skip(1).cloned().collect(),
            _ => Vec::new(),
        });
        if rest.is_empty() { desk.close() } else { desk.open(Page::After(rest)) }
    };
    let asked = questions.into_iter().next().map(|question| view! { <Asked question then=next/> });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <Fault/>
                {asked}
                <button type="button" class="quiet" on:click=move |_| next()>{desk.house.text(Key::RatherNotAnswer)}</button>
            </div>
        </main>
    }
}

/// One question with its buttons. `then` is called when the shell has taken the answer.
#[component]
pub fn Asked(question: Question, then: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let give = move |answer: Answer| {
        desk.house.ask::<GiveAnswer>(answer, move |today| {
            desk.show(today);
            then();
        });
    };
    let (text, buttons) = match question {
        Question::Pain { plan, complaint, name, after } => {
            let text = words.fill(Key::AskPain, &[("name", &name)]);
            let give = move |score| give(Answer::Pain { plan, complaint, score, after });
            let (least, most) = (words.text(Key::PainLeast), words.text(Key::PainMost));
            (text.clone(), view! { <Score label=text least most give/> }.into_any())
        }
        Question::Activity { plan, activity, name } => {
            let text = words.fill(Key::AskActivity, &[("name", &name)]);
            let give = move |score| give(Answer::Activity { plan, activity, score });
            let (least, most) = (words.text(Key::ActivityLeast), words.text(Key::ActivityMost));
            (text.clone(), view! { <Score label=text least most give/> }.into_any())
        }
        Question::Settled { plan, complaint, name } => {
            let give = move |settled| give(Answer::Settled { plan, complaint, settled });
            let buttons = view! {
                <div class="row">
                    <button type="button" on:click=move |_| give(true)>{words.text(Key::Yes)}</button>
                    <button type="button" on:click=move |_| give(false)>{words.text(Key::No)}</button>
                </div>
            };
            (words.fill(Key::AskSettled, &[("name", &name)]), buttons.into_any())
        }
    };
    view! { <section class="asked stack"><h2>{text}</h2>{buttons}</section> }
}
