//! Seconds on one leg, measured at this visit.

use exercises::draft::{TypedField, tenths_of};
use exercises::plan::StanceField;
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::{Tick, Typed};

/// A field for each leg, for eyes open on a firm floor.
#[component]
pub fn StanceTimes() -> impl IntoView {
    let words = PlanEditor::current().words();
    let legs = StanceField::FIRM_OPEN.map(|field| view! { <OneLeg field/> });
    view! {
        <fieldset class="stances"><legend>{words.text(Key::StanceToday)}</legend>{legs.into_iter().collect_view()}</fieldset>
    }
}

/// One leg's seconds, and whether the clinician ended the attempt. The input is shown back as it will be on the card.
#[component]
fn OneLeg(field: StanceField) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let typed_field = TypedField::Stance(field.leg);
    let seconds = move |tenths: u16| words.number(f64::from(tenths) / 10.0);
    let now = Memo::new(move |_| editor.draft.with(|draft| draft.stance_today(field)));
    let capped = RwSignal::new(now.get_untracked().is_some_and(|now| now.capped));
    let value = Signal::derive(move || {
        let typed = editor.unread.with(|all| all.get(typed_field).map(str::to_owned));
        typed.unwrap_or_else(|| now.get().map(|now| words.shown(seconds(now.tenths))).unwrap_or_default())
    });
    let commit = move |text: String| {
        // An empty field means that there is no time, which is allowed; anything else must be a number.
        let read = if text.trim().is_empty() { Some(None) } else { tenths_of(&text).map(Some) };
        editor.type_in(typed_field, &text, read, |draft, tenths| draft.set_stance(field, tenths, capped.get_untracked()));
    };
    let cap = move |on| {
        capped.set(on);
        if let Some(now) = now.get_untracked() {
            editor.edit(|draft| draft.set_stance(field, Some(now.tenths), on));
        }
    };
    let fault = Signal::derive(move || editor.unread_at(typed_field));
    let earlier = editor.draft.with_untracked(|draft| draft.stance_earlier(field));
    let hint = earlier.map(|earlier| words.stance_earlier(seconds(earlier.tenths))).unwrap_or_default();
    view! {
        <div>
            <Typed label=words.leg(field.leg) value commit fault hint=Signal::stored(hint) decimal=true/>
            <Tick label=words.text(Key::StanceStoppedByClinician) value=capped put=cap/>
        </div>
    }
}
