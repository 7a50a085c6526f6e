//! What is asked, one question at a time.

use exercises::ask::Question;
use leptos::prelude::*;
use words::Key;

use super::asked::Asked;
use super::desk::Desk;
use super::page::Page;
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
                <h1>{desk.house.text(Key::HowDidItGo)}</h1>
                <Fault/>
                {asked}
                <button type="button" class="quiet" on:click=move |_| next()>{desk.house.text(Key::RatherNotAnswer)}</button>
            </div>
        </main>
    }
}
