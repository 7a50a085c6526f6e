//! The remaining problems, and the button that issues the card.

use exercises::plan::Item;
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use wire::clinic::{self, Handover, IssueRequest};
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::context::{ClinicContext, Page};

/// The list of problems, the duration of a full day, and "Issue plan card".
#[component]
pub fn Issue(code: String) -> impl IntoView {
    let context = ClinicContext::current();
    let editor = PlanEditor::current();
    let words = editor.words();
    let problems = Memo::new(move |_| {
        let problems = editor.problems.get().unwrap_or_default();
        let say = |problem: &_| words.problem_named(problem, |item| editor.named(|names| names.item(item)));
        editor.unread_lines().into_iter().chain(problems.iter().map(say)).collect::<Vec<_>>()
    });
    let missing = Memo::new(move |_| problems.with(|problems| !problems.is_empty()));
    let ready = Memo::new(move |_| !missing.get() && editor.problems.with(Option::is_some));
    let list = move || problems.get().into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    let notices = move || {
        let said = editor.draft.with(|draft| {
            let of = |item: &Item| {
                let said = words.through_the_night(&item.schedule.pattern)?;
                Some(words.unread_here(&editor.named(|names| names.item(item.id)), &said))
            };
            let open = editor.alarms.with_value(|alarms| {
                alarms.iter().filter(|alarm| !draft.prescription.cleared.contains(&alarm.clearing())).count()
            });
            let open = (open > 0).then(|| words.alarms_stay(open));
            let undecided = draft.prescription.items.iter().filter(|item| editor.is_undecided(item.id));
            let nothing_chosen = undecided.map(|item| words.nothing_chosen(&editor.named(|names| names.item(item.id))));
            let nights = draft.prescription.items.iter().filter_map(of);
            open.into_iter().chain(nothing_chosen).chain(nights).collect::<Vec<_>>()
        });
        said.into_iter().map(|line| view! { <p class="small warning">{line}</p> }).collect_view()
    };
    let handover = move || {
        let said = match editor.handover.get()? {
            Handover::Code { .. } => return None,
            Handover::Codes { n } => words.issue_as_codes(n),
            Handover::File => words.text(Key::IssueAsFile).to_owned(),
            Handover::TooLarge => words.text(Key::IssueTooLarge).to_owned(),
        };
        Some(view! { <p class="small warning">{said}</p> })
    };
    let load = move || editor.plan(|plan| editor.exercises.with_value(|exercises| words.full_day(plan, exercises)));
    let issue = move || {
        // A screen reader, or the keyboard's shortcut, presses the button without leaving the field first, so its input is read now and may be unreadable.
        leave_field();
        if !ready.get_untracked() {
            return;
        }
        let (whose, prescription) = (code.clone(), editor.draft.with_untracked(|draft| draft.prescription.clone()));
        let request = IssueRequest { code: code.clone(), prescription };
        // What was ticked for the patient last is kept first: after the card there is no draft to keep it with.
        context.keeper.when_kept(move || {
            context.app.request::<clinic::Issue>(request, move |card| {
                context.keeper.forget();
                context.show(Page::Issued(whose, Box::new(card)));
            });
        });
    };
    let busy = context.app.busy;
    let pressed = issue.clone();
    let handle = window_event_listener(ev::keydown, move |event| {
        if event.key() == "Enter" && (event.ctrl_key() || event.meta_key()) && !event.repeat() && !busy.get_untracked() {
            event.prevent_default();
            untrack(&pressed);
        }
    });
    on_cleanup(move || handle.remove());
    view! {
        <footer class="issue">
            <div role="status">
                <p class="small soft load">{load}</p>
                {notices}
                <Show when=move || missing.get()>
                    <p class="small"><b>{words.text(Key::IssueMissing)}</b></p>
                    <ul class="small missing" tabindex="0" aria-label=words.text(Key::IssueMissing)>{list}</ul>
                </Show>
                <Show when=move || ready.get()><p class="small">{words.text(Key::IssueReady)}</p>{handover}</Show>
            </div>
            <button type="button" class="main" aria-keyshortcuts="Control+Enter" title=words.text(Key::IssueShortcut) disabled=move || !ready.get() || busy.get() on:click=move |_| issue()>
                {words.text(Key::IssueCard)}
            </button>
        </footer>
    }
}

/// Takes the focus from an input field, so that its input is read.
fn leave_field() {
    let field = document().active_element().and_then(|active| active.dyn_into::<HtmlInputElement>().ok());
    if let Some(field) = field {
        // If the field cannot be left, it has no input to read.
        let _ = field.blur();
    }
}
