//! The clinic's sets: one is added to the plan, or the plan's exercises are saved as one.

use exercises::catalogue::ExerciseId;
use exercises::plan::MAX_NAME;
use leptos::prelude::*;
use wire::prescribing::{SaveSet, SaveSetRequest, SetLine, ShowSets, UseSet, UseSetRequest};
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::context::ClinicContext;
use crate::clinic::fields::{Fold, Text};

/// The folded section.
#[component]
pub fn Sets(code: String) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let sets = RwSignal::new(Vec::<SetLine>::new());
    editor.app.query::<ShowSets>((), move |all| drop(sets.try_set(all)));
    let said = RwSignal::new(None::<String>);
    let inside = Signal::derive(move || {
        let names: Vec<String> = sets.with(|sets| sets.iter().map(|set| set.name.clone()).collect());
        if names.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.list(&names) }
    });
    let any = Memo::new(move |_| sets.with(|sets| !sets.is_empty()));
    let code = StoredValue::new(code);
    let some = Memo::new(move |_| editor.plan(|plan| !plan.items.is_empty()));
    view! {
        <Fold title=words.text(Key::SetStart) inside>
            <Show when=move || any.get()>
                <p class="small soft">{words.text(Key::SetStartWhat)}</p>
                <div class="options">
                    <For each=move || sets.get() key=|set| format!("{set:?}") children=move |set| view! { <Add set code said/> }/>
                </div>
            </Show>
            <Show when=move || some.get()><SaveAs sets said/></Show>
            <p class="small" role="status">{said}</p>
        </Fold>
    }
}

/// Adds one set to the plan. What was written so far is kept first, since the shell puts the set into the draft that it has.
#[component]
fn Add(set: SetLine, code: StoredValue<String>, said: RwSignal<Option<String>>) -> impl IntoView {
    let (context, editor) = (ClinicContext::current(), PlanEditor::current());
    let app = context.app;
    let words = app.words();
    let label = words.set_add(&set.name);
    let name = StoredValue::new(set.name);
    let add = move |_| {
        context.keeper.when_kept(move || {
            let request = UseSetRequest { code: code.get_value(), set: name.get_value() };
            app.request::<UseSet>(request, move |used| {
                let called = |id: &ExerciseId| {
                    editor.exercise(id).map_or_else(|| id.to_string(), |one| words.exercise_name(&one).to_owned())
                };
                let left_out: Vec<String> = used.left_out.iter().map(called).collect();
                said.set((!left_out.is_empty()).then(|| words.set_left_out(&words.list(&left_out))));
                editor.draft.set(used.draft.draft);
            });
        });
    };
    view! { <button type="button" aria-label=label disabled=app.busy on:click=add>{name.get_value()}</button> }
}

/// Saves the plan's exercises as a set.
#[component]
fn SaveAs(sets: RwSignal<Vec<SetLine>>, said: RwSignal<Option<String>>) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let name = RwSignal::new(String::new());
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let called = name.with_untracked(|name| name.trim().to_owned());
        let prescription = editor.draft.with_untracked(|draft| draft.prescription.clone());
        let request = SaveSetRequest { name: called.clone(), prescription };
        editor.app.request::<SaveSet>(request, move |all| {
            sets.set(all);
            name.set(String::new());
            said.set(Some(editor.words().set_kept(&called)));
        });
    };
    let empty = move || name.with(|name| name.trim().is_empty());
    view! {
        <form class="fields" on:submit=save>
            <Text label=words.text(Key::SetSaveName) value=name put=move |text| name.set(text)
                hint=words.text(Key::SetSaveWhat).to_owned() most=MAX_NAME/>
            <button type="submit" disabled=move || empty() || editor.app.busy.get()>{words.text(Key::SetSave)}</button>
        </form>
    }
}
