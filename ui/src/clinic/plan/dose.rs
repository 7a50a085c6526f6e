//! The dose of an item, as a sentence.

use exercises::draft::stepped;
use exercises::id::ItemId;
use leptos::prelude::*;
use words::Key;
use words::kind::DosePart;

use super::editor::PlanEditor;
use crate::clinic::fields::PressNumber;

/// A sentence whose numbers can be pressed and changed. It contains the values that are often changed; with `seldom` the others,
/// which are shown with the limits.
#[component]
pub fn Dose(id: ItemId, #[prop(optional)] seldom: bool) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let Some(dose) = editor.draft.with_untracked(|draft| draft.prescription.item(id).map(|item| item.dose)) else {
        return ().into_any();
    };
    let parts = Memo::new(move |_| editor.item(id, Vec::new(), |item| words.dose_sentence(item.dose, seldom)));
    let shown = move |at: usize| {
        Signal::derive(move || {
            parts.with(|parts| match parts.get(at) {
                Some(DosePart::Text(text) | DosePart::Number(_, text)) => text.clone(),
                None => String::new(),
            })
        })
    };
    let open = RwSignal::new(None);
    // The words between the numbers change with the numbers, but neither their count nor their order does.
    let part = move |(at, part): (usize, DosePart)| match part {
        DosePart::Text(_) => view! { <span>{shown(at)}</span> }.into_any(),
        DosePart::Number(quantity, _) => {
            let step = move |up| editor.edit_item(id, |item| item.dose = stepped(item.dose, quantity, up));
            view! { <PressNumber label=words.quantity(quantity, dose.kind()) shown=shown(at) step open/> }.into_any()
        }
    };
    let sentence = parts.get_untracked().into_iter().enumerate().map(part).collect_view();
    view! { <p class="sentence" role="group" aria-label=words.text(Key::DoseLabel)>{sentence}</p> }.into_any()
}
