//! The exercises at the side, or all figures in place of the plan; a press adds one to the plan.

use exercises::find::{Shelf, Shelved};
use exercises::plan::MAX_ITEMS;
use leptos::ev::KeyboardEvent;
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use words::Key;

use super::super::editor::PlanEditor;
use super::entry::Entry;
use super::filters::Filters;
use super::finder::Finder;
use super::keys;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::width::{TWO_COLUMNS, window_width};

/// A field to type into, filters, and what they find.
#[component]
pub fn Catalogue() -> impl IntoView {
    let (editor, finder, context) = (PlanEditor::current(), Finder::current(), ClinicContext::current());
    let words = editor.words();
    let field = NodeRef::<html::Input>::new();
    // Beside the plan the catalogue is open; above it, on a narrow page, it is open while the plan is empty.
    let width = window_width();
    let is_wide = Memo::new(move |_| width.get() >= TWO_COLUMNS);
    let starts_open = editor.draft.with_untracked(|draft| draft.prescription.items.is_empty());
    let full = Memo::new(move |_| editor.plan(|plan| plan.items.len() >= MAX_ITEMS));
    let figures =
        move || words.text(if finder.figures.get() { Key::ExercisesCloseFigures } else { Key::ExercisesAllFigures });
    let along = move |event: KeyboardEvent| {
        keys::along_list(&event, field.get_untracked().map(|field| field.unchecked_into()));
    };
    view! {
        <details class="catalogue" open=move || is_wide.get() || starts_open>
            <summary tabindex=move || is_wide.get().then_some("-1")><h2>{words.text(Key::Catalogue)}</h2></summary>
            <div class="seek">
                <Typed field begin=starts_open && is_wide.get_untracked()/>
                <button type="button" class="quiet" on:click=move |_| finder.figures.update(|shown| *shown = !*shown)>{figures}</button>
            </div>
            <Filters/>
            <div role="status">{move || full.get().then(|| view! { <p class="warning">{words.plan_full(MAX_ITEMS)}</p> })}</div>
            <Count/>
            <div class="shelves" on:keydown=along>
                <Shelves/>
                <Nothing field/>
                <Show when=move || finder.has_more()>
                    <button type="button" class="more" on:click=move |_| finder.show_more()>{words.text(Key::ExercisesMore)}</button>
                </Show>
                <button type="button" class="quiet more" on:click=move |_| context.keeper.when_kept(move || context.show(Page::Own(None)))>
                    {words.text(Key::OwnWriteOne)}
                </button>
            </div>
        </details>
    }
}

/// The field. Enter adds what stands first to the plan, once for what was typed; what was typed is then marked, so that the next
/// word takes its place. With `begin` one can type at once.
#[component]
fn Typed(field: NodeRef<html::Input>, begin: bool) -> impl IntoView {
    Effect::new(move || {
        if let Some(field) = field.get().filter(|_| begin) {
            // If the page is left meanwhile, it cannot take the focus.
            let _ = field.focus();
        }
    });
    let (editor, finder) = (PlanEditor::current(), Finder::current());
    let words = editor.words();
    let fresh = StoredValue::new(false);
    let added = RwSignal::new(None::<String>);
    let typed = move |text: String| {
        fresh.set_value(true);
        added.set(None);
        finder.typed.set(text);
    };
    let add_first = move || {
        let place = finder.found.with_untracked(|found| found.first().copied());
        let exercise = place.and_then(|place| editor.exercises.with_value(|all| all.get(place).cloned()));
        let Some(exercise) = exercise.filter(|_| finder.seeks() && fresh.get_value()) else { return };
        fresh.set_value(false);
        if editor.draft.try_update(|draft| draft.add(&exercise)).flatten().is_some() {
            added.set(Some(words.exercise_added(words.exercise_name(&exercise))));
        }
        if let Some(field) = field.get_untracked() {
            field.select();
        }
    };
    let key = move |event: KeyboardEvent| {
        keys::into_list(&event);
        if event.key() == "Enter" && !event.repeat() && !event.is_composing() {
            event.prevent_default();
            untrack(add_first);
        }
    };
    view! {
        <input type="search" node_ref=field aria-label=words.text(Key::CatalogueFind) placeholder=words.text(Key::CatalogueFind)
            autocomplete="off" spellcheck="false" prop:value=finder.typed
            on:input:target=move |event| typed(event.target().value()) on:keydown=key/>
        <span class="heard" role="status">{added}</span>
    }
}

/// How many were found, while something is looked for.
#[component]
fn Count() -> impl IntoView {
    let (editor, finder) = (PlanEditor::current(), Finder::current());
    let words = editor.words();
    let said = move || {
        let found = finder.found.with(Vec::len);
        (finder.seeks() && found > 0).then(|| view! { <p class="small soft">{words.exercises_found(found)}</p> })
    };
    view! { <div role="status">{said}</div> }
}

/// What was found, on its shelves.
#[component]
fn Shelves() -> impl IntoView {
    let (editor, finder) = (PlanEditor::current(), Finder::current());
    let words = editor.words();
    let shelves = Memo::new(move |_| editor.exercises.with_value(|all| finder.shelves(all)));
    let titles = move || shelves.with(|all| all.iter().map(|(shelf, _)| *shelf).collect::<Vec<_>>());
    let title = move |shelf: Shelf| match shelf {
        Shelf::Found => None,
        Shelf::MostUsed => Some(words.text(Key::ExercisesMostUsed)),
        Shelf::Of(region) => Some(words.region(region)),
    };
    let shelf = move |shelf: Shelf| {
        let here = move |(other, _): &&Shelved| *other == shelf;
        let places = move || shelves.with(|all| all.iter().find(here).map(|(_, places)| places.clone()).unwrap_or_default());
        let with_region = !matches!(shelf, Shelf::Of(_));
        let entry = move |place: usize| {
            let exercise = editor.exercises.with_value(|all| all.get(place).cloned());
            exercise.map(|exercise| view! { <Entry exercise with_region/> })
        };
        view! {
            <section>
                {title(shelf).map(|title| view! { <h3 class="small">{title}</h3> })}
                <div class="entries"><For each=places key=|place| *place children=entry/></div>
            </section>
        }
    };
    view! { <For each=titles key=|shelf| *shelf children=shelf/> }
}

/// What is said where nothing was found, and the way back.
#[component]
fn Nothing(field: NodeRef<html::Input>) -> impl IntoView {
    let finder = Finder::current();
    let words = PlanEditor::current().words();
    let none = Memo::new(move |_| finder.found.with(Vec::is_empty));
    let clear = move |_| {
        finder.clear();
        if let Some(field) = field.get_untracked() {
            // If the page is left meanwhile, it cannot take the focus.
            let _ = field.focus();
        }
    };
    view! {
        <div role="status">
            <Show when=move || none.get()>
                <p class="soft">{words.text(Key::ExercisesNone)}</p>
            </Show>
        </div>
        <Show when=move || none.get()>
            <button type="button" on:click=clear>{words.text(Key::ExercisesClear)}</button>
        </Show>
    }
}
