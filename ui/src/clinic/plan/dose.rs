//! How much of an item, quantity by quantity.

use exercises::catalogue::Quantity;
use exercises::draft::stepped;
use exercises::id::ItemId;
use leptos::prelude::*;

use super::editor::PlanEditor;
use crate::clinic::fields::Stepper;

/// A stepper for each quantity that is changed often; the tempo of repetitions stands with the limits.
#[component]
pub fn Dose(id: ItemId, #[prop(optional)] tempo: bool) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let Some(dose) = editor.draft.with_untracked(|draft| draft.plan.item(id).map(|item| item.dose)) else {
        return ().into_any();
    };
    let of_tempo = |quantity: Quantity| {
        matches!(quantity, Quantity::TempoUpSeconds | Quantity::TempoHoldSeconds | Quantity::TempoDownSeconds)
    };
    let quantities =
        dose.quantities().into_iter().map(|(quantity, _)| quantity).filter(move |quantity| of_tempo(*quantity) == tempo);
    let steppers = quantities.map(move |quantity| {
        let value = Signal::derive(move || {
            editor.item(id, 0, |item| {
                item.dose.quantities().into_iter().find(|(other, _)| *other == quantity).map_or(0, |(_, value)| value)
            })
        });
        let step = move |up| editor.edit_item(id, |item| item.dose = stepped(item.dose, quantity, up));
        view! { <Stepper label=words.quantity(quantity, dose) value step/> }
    });
    view! { <div class="steppers">{steppers.collect_view()}</div> }.into_any()
}
