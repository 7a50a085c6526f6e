//! Times, limits and note of an item, in a folded section.

use exercises::id::{ComplaintId, ItemId};
use exercises::plan::MAX_NOTE;
use leptos::prelude::*;
use words::Key;

use super::dose::Dose;
use super::editor::PlanEditor;
use super::load::Demands;
use super::phase::PhaseOf;
use super::schedule::When;
use crate::clinic::fields::{Choice, Fold, PressNumber, Text, Tick};

/// The folded section; its heading shows when the item is due.
#[component]
pub fn Limits(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let inside = Signal::derive(move || editor.item(id, String::new(), |item| words.due(item)));
    let dose = editor.draft.with_untracked(|draft| draft.prescription.item(id).map(|item| item.dose));
    let seldom = dose.is_some_and(|dose| dose.fields().iter().any(|field| field.group.is_some()));
    view! {
        <Fold title=words.text(Key::MoreOfItem) inside>
            <When id/>
            <PhaseOf id/>
            <Demands id/>
            {seldom.then(|| view! { <Dose id seldom/> })}
            <div class="when"><PainLimit id/><Serves id/></div>
            <MayStep id/>
            <Note id/>
        </Fold>
    }
}

/// The pain above which the patient stops.
#[component]
fn PainLimit(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let shown = Signal::derive(move || editor.item(id, String::new(), |item| item.pain_limit.to_string()));
    let step = move |up| {
        editor.edit_item(id, |item| item.pain_limit = if up { item.pain_limit.up() } else { item.pain_limit.down() });
    };
    let words = editor.words();
    let label = words.text(Key::PainLimit);
    view! {
        <div>
            <p class="sentence"><span>{label}" "</span><PressNumber label shown step open=RwSignal::new(None)/></p>
            <small class="soft">{words.text(Key::PainLimitHint)}</small>
        </div>
    }
}

/// The complaint for which the item is meant; shown if there are complaints.
#[component]
fn Serves(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let options = move || {
        let none = (String::new(), words.text(Key::ForNoComplaint).to_owned());
        let ids: Vec<ComplaintId> = editor.plan(|plan| plan.complaints.iter().map(|complaint| complaint.id).collect());
        let named = ids.into_iter().map(|id| (id.to_string(), editor.named(|names| names.complaint(id))));
        std::iter::once(none).chain(named).collect::<Vec<_>>()
    };
    let value = Signal::derive(move || {
        editor.item(id, String::new(), |item| item.serves.map(|served| served.to_string()).unwrap_or_default())
    });
    let choose = move |chosen: String| editor.edit_item(id, |item| item.serves = chosen.parse().ok().map(ComplaintId));
    move || {
        let options = options();
        (options.len() > 1).then(|| view! { <Choice label=words.text(Key::ForComplaintLabel) options value choose/> })
    }
}

/// Whether the patient's copy may offer a change of level or dose.
#[component]
fn MayStep(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let value = Signal::derive(move || editor.item(id, false, |item| item.may_step));
    let put = move |on| editor.edit_item(id, |item| item.may_step = on);
    view! { <Tick label=words.text(Key::MayStep) hint=words.text(Key::MayStepHint) value put/> }
}

/// A note of up to forty characters, with a counter.
#[component]
fn Note(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let value = Signal::derive(move || editor.item(id, String::new(), |item| item.note.clone()));
    let hint = Signal::derive(move || words.note_count(value.with(|note| note.chars().count()), MAX_NOTE));
    let put = move |text| editor.edit_item(id, |item| item.note = text);
    view! { <Text label=words.text(Key::NoteLabel) value put hint most=MAX_NOTE/> }
}
