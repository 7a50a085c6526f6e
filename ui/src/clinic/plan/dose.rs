//! How much of an item, quantity by quantity.

use exercises::draft::stepped;
use exercises::id::ItemId;
use leptos::prelude::*;

use super::editor::PlanEditor;
use crate::clinic::fields::Stepper;

/// A stepper for each field of the dose that is changed often; with `seldom` for the others, which stand with the limits.
#[component]
pub fn Dose(id: ItemId, #[prop(optional)] seldom: bool) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let Some(dose) = editor.draft.with_untracked(|draft| draft.prescription.item(id).map(|item| item.dose)) else {
        return ().into_any();
    };
    let fields = dose.fields().iter().filter(move |field| field.group.is_some() == seldom);
    let steppers = fields.map(move |field| {
        let quantity = field.quantity;
        let value = Signal::derive(move || editor.item(id, 0, |item| item.dose.value(quantity).unwrap_or_default()));
        let step = move |up| editor.edit_item(id, |item| item.dose = stepped(item.dose, quantity, up));
        view! { <Stepper label=words.quantity(quantity, dose.kind()) value step/> }
    });
    view! { <div class="steppers">{steppers.collect_view()}</div> }.into_any()
}
