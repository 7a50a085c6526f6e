//! What still stands against it, and the button that issues the card.

use leptos::prelude::*;
use wire::clinic::{self, IssueRequest};
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::context::{ClinicContext, Page};

/// The list of what is missing, a full day's load, and "Issue plan card".
#[component]
pub fn Issue(code: String) -> impl IntoView {
    let context = ClinicContext::current();
    let editor = PlanEditor::current();
    let words = editor.words();
    let problems = move || {
        let problems = editor.problems.get().unwrap_or_default();
        let say = |problem: &_| words.problem_named(problem, |item| editor.named(|names| names.item(item)));
        problems.iter().map(say).collect::<Vec<_>>()
    };
    let ready = Memo::new(move |_| editor.problems.with(|problems| problems.as_ref().is_some_and(Vec::is_empty)));
    let list = move || problems().into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    let load = move || editor.plan(|plan| editor.exercises.with_value(|exercises| words.full_day(plan, exercises)));
    let issue = move |_| {
        let (whose, plan) = (code.clone(), editor.draft.with_untracked(|draft| draft.plan.clone()));
        context.app.request::<clinic::Issue>(IssueRequest { code: code.clone(), plan }, move |card| {
            context.show(Page::Issued(whose, Box::new(card)));
        });
    };
    let busy = context.app.busy;
    view! {
        <footer class="issue">
            <div role="status">
                <p class="small soft load">{load}</p>
                <Show when=move || editor.problems.with(|problems| problems.as_ref().is_some_and(|all| !all.is_empty()))>
                    <p class="small"><b>{words.text(Key::IssueMissing)}</b></p>
                    <ul class="small missing" tabindex="0" aria-label=words.text(Key::IssueMissing)>{list}</ul>
                </Show>
                <Show when=move || ready.get()><p class="small">{words.text(Key::IssueReady)}</p></Show>
            </div>
            <button type="button" class="main" disabled=move || !ready.get() || busy.get() on:click=issue>{words.text(Key::IssueCard)}</button>
        </footer>
    }
}
