//! The steps of an exercise.

use exercises::catalogue::Texts;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// The starting position, and the steps in order.
#[component]
pub fn Steps(texts: Texts, change: Option<String>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let steps = texts.steps.into_iter().map(|step| view! { <li>{step}</li> }).collect_view();
    view! {
        <section class="stack-2">
            <h2>{words.text(Key::HowToDoIt)}</h2>
            <p>{texts.set_up}</p>
            {change.map(|change| view! { <p><strong>{change}</strong></p> })}
            <ol class="steps">{steps}</ol>
        </section>
    }
}
