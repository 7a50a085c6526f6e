//! What still stands against it, and the button that issues the card.

use leptos::prelude::*;
use wire::clinic::{self, AskIssue};
use words::Key;

use super::sheet::Sheet;
use crate::clinic::room::{Page, Room};

/// The list of what is missing, a full day's load, and "Issue plan card".
#[component]
pub fn Issue(code: String) -> impl IntoView {
    let room = Room::here();
    let sheet = Sheet::here();
    let words = sheet.words();
    let problems = move || {
        let problems = sheet.problems.get().unwrap_or_default();
        let say = |problem: &_| words.problem_named(problem, |item| sheet.named(|names| names.item(item)));
        problems.iter().map(say).collect::<Vec<_>>()
    };
    let ready = Memo::new(move |_| sheet.problems.with(|problems| problems.as_ref().is_some_and(Vec::is_empty)));
    let list = move || problems().into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    let load = move || sheet.plan(|plan| sheet.exercises.with_value(|exercises| words.full_day(plan, exercises)));
    let issue = move |_| {
        let (whose, prescription) = (code.clone(), sheet.draft.with_untracked(|draft| draft.prescription.clone()));
        room.house.ask::<clinic::Issue>(AskIssue { code: code.clone(), prescription }, move |card| {
            room.show(Page::Issued(whose, Box::new(card)));
        });
    };
    let busy = room.house.busy;
    view! {
        <footer class="issue">
            <div role="status">
                <p class="small soft load">{load}</p>
                <Show when=move || sheet.problems.with(|problems| problems.as_ref().is_some_and(|all| !all.is_empty()))>
                    <p class="small"><b>{words.text(Key::IssueNotYet)}</b></p>
                    <ul class="small missing" tabindex="0" aria-label=words.text(Key::IssueNotYet)>{list}</ul>
                </Show>
                <Show when=move || ready.get()><p class="small">{words.text(Key::IssueReady)}</p></Show>
            </div>
            <button type="button" class="main" disabled=move || !ready.get() || busy.get() on:click=issue>{words.text(Key::IssueCard)}</button>
        </footer>
    }
}
