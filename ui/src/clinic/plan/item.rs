//! One item of the plan.

use exercises::catalogue::{Exercise, RungId, Sidedness};
use exercises::draft::{Direction, put_on_level};
use exercises::id::ItemId;
use exercises::plan::Side;
use leptos::prelude::*;
use words::Key;
use words::clinic::PlanSection;

use super::concerns::Concerns;
use super::dose::Dose;
use super::editor::PlanEditor;
use super::limits::Limits;
use super::proposal::Proposal;
use crate::clinic::fields::Choice;
use crate::shared::figure::Figure;

/// Figure and name, the proposal, level, side and dose; times, limits and note are folded below.
#[component]
pub fn ItemCard(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let exercise = editor.item(id, None, |item| Some(item.exercise.clone())).and_then(|id| editor.exercise(&id));
    let name = move || editor.named(|names| names.item(id));
    let (drawn, touched) = (exercise.clone(), exercise.clone());
    let basis = exercise.as_ref().map(|exercise| words.dose_basis(exercise.dose_basis));
    let rung = Memo::new(move |_| editor.item(id, None, |item| item.rung.clone()));
    let drawing = move || {
        let drawn = drawn.as_ref()?;
        let drawing = drawn.level(rung.get().as_ref()).figure();
        Some(view! { <Figure drawing pose=Signal::stored(1.0)/> })
    };
    let press = move |key: Key, what: fn(PlanEditor, ItemId)| {
        view! {
            <button type="button" class="quiet" aria-label=move || words.named_text(words.text(key), &name()) on:click=move |_| what(editor, id)>
                {words.text(key)}
            </button>
        }
    };
    view! {
        <li class="sheet item">
            <div class="drawing">{drawing}</div>
            <div class="stack">
                <header>
                    <h2>{name}</h2>
                    <div class="presses">
                        {press(Key::MoveUp, |editor, id| editor.edit(|draft| draft.shift(id, Direction::Earlier)))}
                        {press(Key::MoveDown, |editor, id| editor.edit(|draft| draft.shift(id, Direction::Later)))}
                        {press(Key::Remove, |editor, id| editor.edit(|draft| draft.remove(id)))}
                    </div>
                </header>
                <Proposal id/>
                <Dose id/>
                {basis.map(|basis| view! { <p class="small soft basis">{basis}</p> })}
                {touched.map(|exercise| view! { <Concerns id exercise/> })}
                <div class="dose">{exercise.map(|exercise| view! { <RungAndSide id exercise/> })}</div>
                <Problems id/>
                <Limits id/>
            </div>
        </li>
    }
}

/// The level, and the side if the level is done for each side.
#[component]
fn RungAndSide(id: ItemId, exercise: Exercise) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
    let name = |rung: &exercises::catalogue::Rung| {
        rung.text(words.lang()).map_or_else(|| rung.id.to_string(), |text| text.name.clone())
    };
    let rungs: Vec<(String, String)> = rungs.map(|rung| (rung.id.to_string(), name(rung))).collect();
    let rung = Signal::derive(move || {
        editor.item(id, String::new(), |item| item.rung.as_ref().map(RungId::to_string).unwrap_or_default())
    });
    let of_level = exercise.clone();
    let put_rung = move |chosen: String| {
        if let Ok(rung) = RungId::new(chosen) {
            editor.edit_item(id, |item| put_on_level(item, &of_level, rung));
        }
    };
    let has_sides =
        Memo::new(move |_| editor.item(id, false, |item| exercise.level(item.rung.as_ref()).side() == Sidedness::EachSide));
    let sides = [Side::Both, Side::Left, Side::Right];
    let side = Signal::derive(move || editor.item(id, String::new(), |item| words.side(item.side).to_owned()));
    let put_side = move |chosen: String| {
        if let Some(side) = sides.into_iter().find(|side| words.side(*side) == chosen) {
            editor.edit_item(id, |item| item.side = side);
        }
    };
    let options = sides.map(|side| (words.side(side).to_owned(), words.side(side).to_owned())).to_vec();
    view! {
        {(rungs.len() > 1).then(|| view! { <Choice label=words.text(Key::Level) options=rungs value=rung choose=put_rung/> })}
        {move || {
            let options = options.clone();
            has_sides.get().then(|| view! { <Choice label=words.text(Key::SideLabel) options value=side choose=put_side/> })
        }}
    }
}

/// The problems of this item that prevent the plan from being issued.
#[component]
fn Problems(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let lines = move || {
        editor
            .problems_at(PlanSection::Item(id))
            .into_iter()
            .map(|line| view! { <p class="warning">{line}</p> })
            .collect_view()
    };
    view! { <div role="status">{lines}</div> }
}
