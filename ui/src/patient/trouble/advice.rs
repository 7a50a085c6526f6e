//! What to do when something is wrong.

use exercises::alarm::Trouble;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::page::Page;

/// What to do, in large type; then what is paused, and what ends the pause.
#[component]
pub fn Advice(trouble: Trouble) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let known = !context.has_no_plan();
    let whole = context
        .today
        .with_untracked(|today| today.as_ref().is_some_and(|today| today.items.iter().all(|item| item.paused.is_some())));
    let steps = words.what_to_do(trouble).iter().map(|step| view! { <li>{*step}</li> }).collect_view();
    let held = known.then(|| {
        view! {
            <section class="sheet stack-2">
                <h2>{words.text(Key::PausedTitle)}</h2>
                <p>{words.paused(trouble, whole)}</p>
                <p>{words.text(Key::OnlyNewCardRestarts)}</p>
                <p>{words.text(Key::NotedForVisit)}</p>
            </section>
        }
    });
    view! {
        <main class="screen">
            <div class="column stack-5" role="alert">
                <div class="stack-1"><p class="soft">{words.trouble(trouble)}</p><h1>{words.text(Key::WhatToDo)}</h1></div>
                <ol class="advice">{steps}</ol>
                {held}
                <button type="button" class="main" on:click=move |_| context.close()>{words.text(Key::Close)}</button>
                <button type="button" on:click=move |_| context.open(Page::Card)>{words.text(Key::AddNewCard)}</button>
                <p class="small soft">{words.text(Key::NoDiagnosis)}</p>
            </div>
        </main>
    }
}
