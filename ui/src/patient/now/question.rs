//! One question of the day.

use exercises::questions::Question;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::question::QuestionForm;

/// The first open question. If the person closes it, it is asked again when the window opens next.
#[component]
pub fn OneQuestion(questions: Vec<Question>) -> impl IntoView {
    let context = PatientContext::current();
    let first = questions.into_iter().next();
    let shown = move || {
        let question = first.clone().filter(|_| !context.put_away.get())?;
        Some(view! {
            <div class="sheet stack">
                <QuestionForm question then=|| ()/>
                <button type="button" class="quiet" on:click=move |_| context.put_away.set(true)>{context.app.text(Key::NotNow)}</button>
            </div>
        })
    };
    view! { {shown} }
}
