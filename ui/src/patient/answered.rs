//! The answer that was given last, and the way to take it back.

use exercises::questions::Question;
use leptos::prelude::*;
use words::Key;

use super::context::{PatientContext, UNDO_FOR};
use super::given::Given;
use super::question::name_of;

/// The last answer with a way to take it back, for some seconds. Empty without an answer.
#[component]
pub fn Answered() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let line = move || {
        let given = context.answered.get()?;
        hide_later(context, given.clone());
        let item = match given.question {
            Question::During { plan, item, .. } => name_of(context, plan, item),
            Question::Morning { .. } | Question::Activity { .. } => String::new(),
        };
        let said = words.answered(&given.question, &item, given.score);
        let take_back = move |_| context.take_back(given.clone());
        Some(view! {
            <p class="answered" role="status">
                <span>{said}</span>
                <button type="button" class="quiet" on:click=take_back>{words.text(Key::UndoAnswer)}</button>
            </p>
        })
    };
    view! { {line} }
}

fn hide_later(context: PatientContext, given: Given) {
    let hide = move || {
        if context.answered.try_get_untracked().flatten().as_ref() == Some(&given) {
            context.answered.set(None);
        }
    };
    set_timeout(hide, UNDO_FOR);
}
