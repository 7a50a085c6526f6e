//! Instructions for the first two days after the visit.

use exercises::draft::truncated;
use exercises::plan::{Aftercare, MAX_AFTERCARE};
use leptos::prelude::*;
use words::Key;
use words::clinic::PlanSection;

use super::editor::PlanEditor;
use crate::clinic::fields::{Fold, Text, Tick};

/// The instructions that can be ticked.
const LINES: [Aftercare; 5] = [
    Aftercare::SorenessIsUsual,
    Aftercare::KeepMoving,
    Aftercare::GoEasy,
    Aftercare::WarmthIfPleasant,
    Aftercare::ContactIfWorse,
];

/// The instructions to tick, and a line in the clinician's own words.
#[component]
pub fn AftercareLines() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let inside = Signal::derive(move || match editor.plan(|plan| plan.aftercare.len()) {
        0 => words.text(Key::FoldNone).to_owned(),
        n => words.fold_lines(n),
    });
    let line = move |line: Aftercare| {
        let (here, other) = (line.clone(), line.clone());
        let value = Signal::derive(move || editor.plan(|plan| plan.aftercare.contains(&here)));
        let put = move |on| {
            let line = line.clone();
            editor.edit(|draft| {
                draft.prescription.aftercare.retain(|kept| *kept != line);
                if on {
                    draft.prescription.aftercare.push(line);
                    draft.prescription.aftercare.sort();
                }
            });
        };
        view! { <Tick label=words.aftercare(&other) value put/> }
    };
    let problems = move || {
        editor
            .problems_at(PlanSection::Aftercare)
            .into_iter()
            .map(|line| view! { <p class="warning">{line}</p> })
            .collect_view()
    };
    view! {
        <Fold title=words.text(Key::Aftercare) inside>
            <div class="ticks">{LINES.map(line).into_iter().collect_view()}</div>
            <OwnLine/>
            <div role="status">{problems}</div>
        </Fold>
    }
}

/// The clinician's own line.
#[component]
fn OwnLine() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let value = Signal::derive(move || {
        editor.plan(|plan| {
            plan.aftercare
                .iter()
                .find_map(|line| if let Aftercare::Own(text) = line { Some(text.clone()) } else { None })
                .unwrap_or_default()
        })
    });
    let put = move |text: String| {
        let text = truncated(&text, MAX_AFTERCARE);
        editor.edit(|draft| {
            draft.prescription.aftercare.retain(|line| !matches!(line, Aftercare::Own(_)));
            if !text.trim().is_empty() {
                draft.prescription.aftercare.push(Aftercare::Own(text));
            }
        });
    };
    view! { <Text label=words.text(Key::AftercareOwn) value put most=MAX_AFTERCARE/> }
}
