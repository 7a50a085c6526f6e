//! What an item is done against, how hard, and whether with somebody.

use exercises::id::ItemId;
use exercises::plan::{Band, Item, Kilograms, Load};
use exercises::score::Score;
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::{Choice, Tick};

/// Load and effort where the kind of exercise has them, and the helper.
#[component]
pub fn Demands(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let dose = editor.draft.with_untracked(|draft| draft.prescription.item(id).map(|item| item.dose));
    let loads = dose.is_some_and(|dose| Item::may_have_load(dose.kind()));
    let efforts = dose.is_some_and(Item::may_have_effort);
    let helper = Signal::derive(move || editor.item(id, false, |item| item.with_helper));
    let put = move |on| editor.edit_item(id, |item| item.with_helper = on);
    view! {
        <div class="when">{loads.then(|| view! { <LoadOf id/> })}{efforts.then(|| view! { <EffortOf id/> })}</div>
        <Tick label=words.text(Key::HelperTick).to_owned() value=helper put/>
    }
}

/// A load, as the list of choices names it.
fn code(load: Option<Load>) -> &'static str {
    match load {
        None => "",
        Some(Load::Weight(_)) => "weight",
        Some(Load::Band(Band::Light)) => "light",
        Some(Load::Band(Band::Medium)) => "medium",
        Some(Load::Band(Band::Strong)) => "strong",
        Some(Load::Band(Band::ExtraStrong)) => "extra-strong",
    }
}

/// Nothing, a weight, or one of the bands.
#[component]
fn LoadOf(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let load = Memo::new(move |_| editor.item(id, None, |item| item.load));
    let weight = Load::Weight(Kilograms::ONE);
    let all = move || std::iter::once(weight).chain(Band::ALL.map(Load::Band));
    let said = move |load: Load| match load {
        Load::Weight(_) => words.text(Key::LoadKilograms).to_owned(),
        band => words.load(band),
    };
    let none = (String::new(), words.text(Key::LoadNone).to_owned());
    let options = std::iter::once(none).chain(all().map(|load| (code(Some(load)).to_owned(), said(load)))).collect();
    let choose = move |chosen: String| {
        let load = all().find(|load| code(Some(*load)) == chosen);
        editor.edit_item(id, |item| item.load = load);
    };
    let value = Signal::derive(move || code(load.get()).to_owned());
    let more = move || match load.get() {
        Some(Load::Weight(_)) => view! { <Weight id/> }.into_any(),
        Some(Load::Band(_)) => view! { <small class="soft">{words.text(Key::LoadHint)}</small> }.into_any(),
        None => ().into_any(),
    };
    let kind = Memo::new(move |_| std::mem::discriminant(&load.get()));
    view! { <Choice label=words.text(Key::LoadLabel) options value choose/>{move || { kind.track(); more() }} }
}

/// The kilograms, in quarters. What is no such weight is not taken, and the field shows the last one.
#[component]
fn Weight(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let shown = move || {
        editor.item(id, String::new(), |item| match item.load {
            Some(Load::Weight(weight)) => weight.kilograms().to_string(),
            _ => String::new(),
        })
    };
    let take = move |field: web_sys::HtmlInputElement| {
        if let Some(weight) = Kilograms::of(field.value_as_number()) {
            editor.edit_item(id, |item| item.load = Some(Load::Weight(weight)));
        }
        field.set_value(&untrack(shown));
    };
    view! {
        <label class="text">
            <span>{words.text(Key::KilogramsLabel)}</span>
            <input type="number" min="0.25" max="100" step="0.25" value=untrack(shown) on:change:target=move |event| take(event.target())/>
        </label>
    }
}

/// The effort aimed at.
#[component]
fn EffortOf(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let none = (String::new(), words.text(Key::EffortNone).to_owned());
    let options = std::iter::once(none).chain(Score::all().map(|n| (n.to_string(), n.to_string()))).collect();
    let value = Signal::derive(move || {
        editor.item(id, String::new(), |item| item.effort.map(|effort| effort.points().to_string()).unwrap_or_default())
    });
    let choose = move |chosen: String| {
        let effort = chosen.parse().ok().and_then(Score::new);
        editor.edit_item(id, |item| item.effort = effort);
    };
    view! { <Choice label=words.text(Key::EffortLabel) options value choose/> }
}
