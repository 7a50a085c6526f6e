//! Seconds on one leg, taken at this visit.

use exercises::draft::{StanceField, tenths_of};
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::{Text, Tick};

/// A field for each leg, eyes open on the firm floor.
#[component]
pub fn StanceTimes() -> impl IntoView {
    let words = PlanEditor::current().words();
    let legs = StanceField::FIRM_OPEN.map(|field| view! { <OneLeg field/> });
    view! {
        <fieldset class="stances"><legend>{words.text(Key::StanceToday)}</legend>{legs.into_iter().collect_view()}</fieldset>
    }
}

/// One leg's seconds, and whether the clinician ended the try.
#[component]
fn OneLeg(field: StanceField) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let seconds = move |tenths: u16| words.number(f64::from(tenths) / 10.0);
    let now = editor.draft.with_untracked(|draft| draft.stance_today(field));
    let typed = RwSignal::new(now.map(|now| words.shown(seconds(now.tenths))).unwrap_or_default());
    let capped = RwSignal::new(now.is_some_and(|now| now.capped));
    let put = move || {
        let tenths = typed.with_untracked(|typed| tenths_of(typed));
        editor.edit(|draft| draft.set_stance(field, tenths, capped.get_untracked()));
    };
    let earlier = editor.draft.with_untracked(|draft| draft.stance_earlier(field));
    let hint = earlier.map(|earlier| words.stance_earlier(seconds(earlier.tenths))).unwrap_or_default();
    view! {
        <div>
            <Text label=words.leg(field.leg) value=typed hint=Signal::stored(hint) decimal=true
                put=move |text| { typed.set(text); put(); }/>
            <Tick label=words.text(Key::StanceStoppedByClinician) value=capped put=move |on| { capped.set(on); put(); }/>
        </div>
    }
}
