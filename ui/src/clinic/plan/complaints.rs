//! The patient's complaints.

use exercises::id::ComplaintId;
use exercises::plan::{MAX_NAME, MAX_NAMED, Side};
use leptos::prelude::*;
use words::Key;
use words::clinic::PlanSection;

use super::editor::PlanEditor;
use crate::clinic::fields::{Choice, Fold, Text};

/// The complaints, in a folded section; pain is asked about for each complaint.
#[component]
pub fn Complaints() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let ids = move || editor.plan(|plan| plan.complaints.iter().map(|complaint| complaint.id).collect::<Vec<_>>());
    let inside = Signal::derive(move || {
        let names: Vec<String> = ids().into_iter().map(|id| editor.named(|names| names.complaint(id))).collect();
        if names.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.semicolons(&names) }
    });
    let full = Memo::new(move |_| editor.plan(|plan| plan.complaints.len() >= MAX_NAMED));
    let add = move |_| {
        editor.edit(|draft| {
            draft.add_complaint();
        })
    };
    let problems = move || {
        editor.problems_at(PlanSection::Named).into_iter().map(|line| view! { <p class="warning">{line}</p> }).collect_view()
    };
    view! {
        <Fold title=words.text(Key::Complaints) inside>
            <ul class="stack"><For each=ids key=|id| *id children=move |id| view! { <Complaint id/> }/></ul>
            <div role="status">{problems}</div>
            <Show when=move || !full.get()><button type="button" on:click=add>{words.text(Key::ComplaintAdd)}</button></Show>
            <p class="small soft" role="status">{move || full.get().then(|| words.named_full(MAX_NAMED))}</p>
        </Fold>
    }
}

/// One complaint: its name, its side, and its pain today.
#[component]
fn Complaint(id: ComplaintId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let of = move |of: fn(&exercises::plan::Complaint) -> String| {
        Signal::derive(move || {
            editor.plan(|plan| plan.complaints.iter().find(|complaint| complaint.id == id).map(of).unwrap_or_default())
        })
    };
    let edit = move |change: &dyn Fn(&mut exercises::plan::Complaint)| {
        editor.edit(|draft| draft.edit_complaint(id, |complaint| change(complaint)))
    };
    let sides = [Side::Neither, Side::Left, Side::Right, Side::Both];
    let side_name = move |side: Side| if side == Side::Neither { words.text(Key::SideNone) } else { words.side(side) };
    let options = sides.map(|side| (format!("{side:?}"), side_name(side).to_owned())).to_vec();
    let put_side = move |chosen: String| {
        let side = sides.into_iter().find(|side| format!("{side:?}") == chosen).unwrap_or(Side::Neither);
        edit(&|complaint| complaint.side = side);
    };
    view! {
        <li class="named">
            <Text label=words.text(Key::ComplaintName) value=of(|one| one.name.clone()) most=MAX_NAME
                put=move |text| edit(&|complaint| complaint.name.clone_from(&text))/>
            <Choice label=words.text(Key::SideLabel) options value=of(|one| format!("{:?}", one.side)) choose=put_side/>
            <Choice label=words.text(Key::PainToday) options=super::activities::scores(words)
                value=of(|one| one.pain.map(|pain| pain.to_string()).unwrap_or_default())
                choose=move |chosen| edit(&|complaint| complaint.pain = chosen.parse().ok())/>
            <button type="button" class="quiet" on:click=move |_| editor.edit(|draft| draft.remove_complaint(id))>{words.text(Key::Remove)}</button>
        </li>
    }
}
