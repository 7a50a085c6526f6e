//! The note about a resumed draft, and a way to discard it.

use chrono::NaiveDate;
use leptos::prelude::*;
use wire::clinic::{DiscardDraft, PatientCode};
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::context::{ClinicContext, Page};

/// "Draft of 24 November resumed.", and "Discard draft", which asks once.
#[component]
pub fn Left(code: String, day: NaiveDate) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let another_day =
        editor.draft.with_untracked(|draft| draft.today != day && editor.exercises.with_value(|all| draft.balances(all)));
    let date = words.date(day);
    let line = if another_day { words.draft_resumed_anew(&date) } else { words.draft_resumed(&date) };
    let asked = RwSignal::new(false);
    let code = StoredValue::new(code);
    let shown = move || {
        if asked.get() {
            return view! { <Sure code=code.get_value() keep=move || asked.set(false)/> }.into_any();
        }
        view! { <button type="button" on:click=move |_| asked.set(true)>{words.text(Key::DraftDiscard)}</button> }.into_any()
    };
    view! {
        <div class="left-draft">
            <p role="status">{line}</p>
            {shown}
        </div>
    }
}

/// The question; keeping the draft comes first and has the focus.
#[component]
fn Sure(code: String, keep: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let first = NodeRef::<leptos::html::Button>::new();
    Effect::new(move || {
        if let Some(button) = first.get() {
            // If the page was left meanwhile, it cannot take the focus.
            let _ = button.focus();
        }
    });
    let discard = move |_| {
        let whose = code.clone();
        context.keeper.forget();
        context.app.request::<DiscardDraft>(PatientCode { code: code.clone() }, move |draft| {
            context.show(Page::Plan(whose, Box::new(draft)));
        });
    };
    view! {
        <div class="sure" role="group" aria-labelledby="discard-ask">
            <p id="discard-ask"><strong>{words.text(Key::DraftDiscardAsk)}</strong></p>
            <div class="presses">
                <button type="button" node_ref=first on:click=move |_| keep()>{words.text(Key::DraftDiscardNo)}</button>
                <button type="button" class="alarm" disabled=context.app.busy on:click=discard>{words.text(Key::DraftDiscardYes)}</button>
            </div>
        </div>
    }
}
