//! The steps of an exercise.

use exercises::catalogue::Texts;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// What is needed, the starting position, and the steps in order.
#[component]
pub fn Steps(texts: Texts, needs: Option<String>, change: Option<String>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let steps = texts.steps.into_iter().map(|step| view! { <li>{step}</li> }).collect_view();
    view! {
        <section class="stack-2">
            <h2>{words.text(Key::HowToDoIt)}</h2>
            {needs.map(|needs| view! { <p class="soft">{needs}</p> })}
            <p>{texts.set_up}</p>
            {change.map(|change| view! { <p><strong>{change}</strong></p> })}
            <ol class="steps">{steps}</ol>
        </section>
    }
}
