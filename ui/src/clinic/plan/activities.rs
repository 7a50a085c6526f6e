//! Activities that the patient finds hard.

use exercises::id::ActivityId;
use exercises::plan::{MAX_NAME, MAX_NAMED};
use exercises::score::Score;
use leptos::prelude::*;
use words::{Key, Words};

use super::editor::PlanEditor;
use crate::clinic::fields::{Choice, Fold, Text};

/// "not asked", and 0 to 10.
pub fn scores(words: Words) -> Vec<(String, String)> {
    let none = (String::new(), words.text(Key::NotAsked).to_owned());
    std::iter::once(none).chain(Score::all().map(|score| (score.to_string(), score.to_string()))).collect()
}

/// The activities, in a folded section.
#[component]
pub fn Activities() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let ids = move || editor.plan(|plan| plan.activities.iter().map(|activity| activity.id).collect::<Vec<_>>());
    let inside = Signal::derive(move || {
        let names: Vec<String> = editor.plan(|plan| plan.activities.iter().map(|activity| activity.name.clone()).collect());
        if names.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.semicolons(&names) }
    });
    let full = Memo::new(move |_| editor.plan(|plan| plan.activities.len() >= MAX_NAMED));
    let add = move |_| {
        editor.edit(|draft| {
            draft.add_activity();
        })
    };
    view! {
        <Fold title=words.text(Key::Activities) inside>
            <ul class="stack"><For each=ids key=|id| *id children=move |id| view! { <Activity id/> }/></ul>
            <Show when=move || !full.get()><button type="button" on:click=add>{words.text(Key::ActivityAdd)}</button></Show>
            <p class="small soft" role="status">{move || full.get().then(|| words.named_full(MAX_NAMED))}</p>
        </Fold>
    }
}

/// One activity in the patient's words, with today's rating.
#[component]
fn Activity(id: ActivityId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let of = move |of: fn(&exercises::plan::Activity) -> String| {
        Signal::derive(move || {
            editor.plan(|plan| plan.activities.iter().find(|activity| activity.id == id).map(of).unwrap_or_default())
        })
    };
    view! {
        <li class="named">
            <Text label=words.text(Key::ActivityName) value=of(|one| one.name.clone()) most=MAX_NAME
                put=move |text| editor.edit(|draft| draft.edit_activity(id, |activity| activity.name = text))/>
            <Choice label=words.text(Key::RatingToday) options=scores(words)
                value=of(|one| one.rating.map(|rating| rating.to_string()).unwrap_or_default())
                choose=move |chosen| editor.edit(|draft| draft.edit_activity(id, |activity| activity.rating = chosen.parse().ok()))/>
            <button type="button" class="quiet" on:click=move |_| editor.edit(|draft| draft.remove_activity(id))>{words.text(Key::Remove)}</button>
        </li>
    }
}
