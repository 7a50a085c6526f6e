//! The questions after a run, one at a time.

use exercises::questions::Question;
use leptos::prelude::*;
use words::Key;

use super::answered::Answered;
use super::context::PatientContext;
use super::page::Page;
use super::question::QuestionForm;
use crate::shared::Fault;

/// The questions after a run; the last answer leads back to Now.
#[component]
pub fn After(questions: Vec<Question>) -> impl IntoView {
    let context = PatientContext::current();
    let next = move || {
        let rest: Vec<Question> = context.page.with_untracked(|page| match page {
            Some(Page::After(questions)) => questions.iter().skip(1).cloned().collect(),
            _ => Vec::new(),
        });
        if rest.is_empty() { context.close() } else { context.replace(Page::After(rest)) }
    };
    let asked = questions.into_iter().next().map(|question| view! { <QuestionForm question then=next/> });
    view! {
        <main class="screen after">
            <div class="column stack-5">
                <h1>{context.app.text(Key::HowDidItGo)}</h1>
                <Fault/>
                <Answered/>
                {asked}
                <button type="button" class="quiet" on:click=move |_| next()>{context.app.text(Key::RatherNotAnswer)}</button>
            </div>
        </main>
    }
}
