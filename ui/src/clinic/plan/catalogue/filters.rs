//! The filters, in a folded section.

use exercises::catalogue::{Equipment, Exercise, Kind, Posture, PrescriberFlag, Purpose, Region};
use exercises::find::Filter;
use leptos::prelude::*;
use words::{Key, upper};

use super::super::editor::PlanEditor;
use super::finder::Finder;
use crate::clinic::fields::{Choice, Fold, Tick};

/// A choice of each sort, of what occurs among the exercises, and whether what touches the patient's facts is left out.
#[component]
pub fn Filters() -> impl IntoView {
    let (editor, finder) = (PlanEditor::current(), Finder::current());
    let words = editor.words();
    let inside = Signal::derive(move || {
        let set = finder.filters_set();
        if set == 0 { String::new() } else { words.filters_set(set) }
    });
    let occurs = |has: &dyn Fn(&Exercise) -> bool| editor.exercises.with_value(|all| all.iter().any(has));
    let regions: Vec<Region> = Region::ALL.into_iter().filter(|one| occurs(&|it| it.region == *one)).collect();
    let purposes: Vec<Purpose> = Purpose::ALL.into_iter().filter(|one| occurs(&|it| it.purposes.contains(one))).collect();
    let kinds: Vec<Kind> = Kind::ALL.iter().copied().filter(|one| occurs(&|it| it.kind == *one)).collect();
    let posture = |one: Posture| Filter { posture: Some(one), ..Filter::default() };
    let postures: Vec<Posture> = Posture::ALL.into_iter().filter(|one| occurs(&|it| posture(*one).fits(it))).collect();
    let flags: Vec<PrescriberFlag> =
        PrescriberFlag::ALL.into_iter().filter(|one| occurs(&|it| it.flags.contains(one))).collect();
    let only = |thing: Option<Equipment>| Filter { at_most: Some(thing.into_iter().collect()), ..Filter::default() };
    let things = Equipment::ALL.into_iter().map(Some);
    let things: Vec<Option<Equipment>> =
        [None].into_iter().chain(things).filter(|one| occurs(&|it| only(*one).fits(it))).collect();
    let thing = move |one: Option<Equipment>| one.map_or(words.text(Key::FilterNothing), |one| words.equipment(one));
    view! {
        <Fold title=words.text(Key::Filters) inside>
            <div class="filters">
                <One label=Key::FilterRegion all=regions say=move |one| words.region(one)
                    get=|it| it.region put=|it, one| it.region = one/>
                <One label=Key::FilterPurpose all=purposes say=move |one| words.purpose(one)
                    get=|it| it.purpose put=|it, one| it.purpose = one/>
                <One label=Key::FilterKind all=kinds say=move |one| words.kind(one)
                    get=|it| it.kind put=|it, one| it.kind = one/>
                <One label=Key::FilterPosture all=postures say=move |one| words.posture(one)
                    get=|it| it.posture put=|it, one| it.posture = one/>
                <One label=Key::FilterEquipment all=things say=thing
                    get=|it| it.at_most.as_ref().map(|most| most.first().copied())
                    put=|it, one| it.at_most = one.map(|thing| thing.into_iter().collect())/>
                <One label=Key::FilterFlag all=flags say=move |one| words.flag(one)
                    get=|it| it.unflagged.first().copied()
                    put=|it, one| it.unflagged = one.into_iter().collect()/>
            </div>
            <Suiting/>
        </Fold>
    }
}

/// One choice. `get` and `put` read and write the filter's part.
#[component]
fn One<T: Copy + PartialEq + Send + Sync + 'static>(
    label: Key,
    all: Vec<T>,
    say: impl Fn(T) -> &'static str,
    get: fn(&Filter) -> Option<T>,
    put: fn(&mut Filter, Option<T>),
) -> impl IntoView {
    let (editor, finder) = (PlanEditor::current(), Finder::current());
    let words = editor.words();
    let any = (String::new(), upper(words.text(Key::FilterAny)));
    let named = all.iter().enumerate().map(|(place, one)| (place.to_string(), upper(say(*one))));
    let options: Vec<(String, String)> = [any].into_iter().chain(named).collect();
    let all = StoredValue::new(all);
    let value = Signal::derive(move || {
        let chosen = finder.filter.with(get);
        let place = chosen.and_then(|chosen| all.with_value(|all| all.iter().position(|one| *one == chosen)));
        place.map(|place| place.to_string()).unwrap_or_default()
    });
    let choose = move |place: String| {
        let chosen = place.parse().ok().and_then(|place: usize| all.with_value(|all| all.get(place).copied()));
        finder.filter.update(|filter| put(filter, chosen));
    };
    (options.len() > 2).then(|| view! { <Choice label=words.text(label) options value choose/> })
}

/// The tick that leaves out what touches the patient's facts; there once something was ticked for the patient.
#[component]
fn Suiting() -> impl IntoView {
    let (editor, finder) = (PlanEditor::current(), Finder::current());
    let words = editor.words();
    let any = Memo::new(move |_| editor.facts.with(|facts| !facts.is_empty()));
    view! {
        <Show when=move || any.get()>
            <Tick label=words.text(Key::FilterSuiting) value=finder.suiting put=move |on| finder.suiting.set(on)/>
        </Show>
    }
}
