//! What to think of with this patient: ticked here, named at each exercise that it touches.

use exercises::catalogue::{Equipment, PrescriberFlag};
use leptos::prelude::*;
use words::{Key, upper};

use super::editor::PlanEditor;
use crate::clinic::fields::{Fold, Tick};

/// The folded section; its heading says what is ticked.
#[component]
pub fn Facts() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let inside = Signal::derive(move || {
        let said = editor.facts.with(|facts| words.facts_in_short(facts));
        said.unwrap_or_else(|| words.text(Key::FoldNone).to_owned())
    });
    let flag = move |flag: PrescriberFlag| {
        let value = Signal::derive(move || editor.facts.with(|facts| facts.flags.contains(&flag)));
        let put = move |holds| editor.facts.update(|facts| facts.put_flag(flag, holds));
        view! { <Tick label=upper(words.flag(flag)) value put/> }
    };
    let thing = move |thing: Equipment| {
        let value = Signal::derive(move || editor.facts.with(|facts| facts.lacks.contains(&thing)));
        let put = move |lacks| editor.facts.update(|facts| facts.put_lack(thing, lacks));
        view! { <Tick label=upper(words.equipment(thing)) value put/> }
    };
    view! {
        <Fold title=words.text(Key::Facts) inside>
            <p class="small soft">{words.text(Key::FactsWhat)}</p>
            <fieldset class="risks">
                <legend>{words.text(Key::FactsFlags)}</legend>
                {PrescriberFlag::ALL.map(flag).into_iter().collect_view()}
            </fieldset>
            <fieldset class="risks">
                <legend>{words.text(Key::FactsLacks)}</legend>
                {Equipment::ALL.map(thing).into_iter().collect_view()}
            </fieldset>
        </Fold>
    }
}
