//! The dose of the exercise, or of one level, as a sentence whose numbers can be changed.

use exercises::authoring::Touch;
use exercises::catalogue::{Dose as DoseOf, Exercise, Quantity, RungId};
use exercises::draft::stepped;
use leptos::prelude::*;
use words::Key;
use words::kind::DosePart;

use super::writer::Writer;
use crate::clinic::fields::PressNumber;

/// The dose of a level, or of the exercise if there is no `level`; drawn anew when the kind changes.
#[component]
pub fn Dose(level: Option<RungId>) -> impl IntoView {
    let writer = Writer::current();
    let kind = Memo::new(move |_| writer.exercise.with(|exercise| exercise.kind));
    let level = StoredValue::new(level);
    let sentences = move || {
        kind.track();
        let level = level.get_value();
        view! { <Sentence level=level.clone() seldom=false/><Sentence level seldom=true/> }
    };
    view! { {sentences} }
}

fn dose_of(exercise: &Exercise, level: Option<&RungId>) -> DoseOf {
    exercise.level(level).dose()
}

fn put(exercise: &mut Exercise, level: Option<&RungId>, dose: DoseOf) {
    let mut rungs = exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs);
    match rungs.find(|rung| Some(&rung.id) == level) {
        Some(rung) => rung.dose = Some(dose),
        None => exercise.dose = dose,
    }
}

/// One sentence of the dose: what is often changed, or what seldom is.
#[component]
fn Sentence(level: Option<RungId>, seldom: bool) -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let level = StoredValue::new(level);
    let dose = move || writer.exercise.with(|exercise| level.with_value(|level| dose_of(exercise, level.as_ref())));
    let parts = Memo::new(move |_| words.dose_sentence(dose(), seldom));
    let kind = untrack(dose).kind();
    let shown = move |at: usize| {
        Signal::derive(move || {
            parts.with(|parts| match parts.get(at) {
                Some(DosePart::Text(text) | DosePart::Number(_, text)) => text.clone(),
                None => String::new(),
            })
        })
    };
    let open = RwSignal::new(None);
    let step = move |quantity: Quantity, up: bool| {
        let level = level.get_value();
        writer.change(Touch::Dose(level.clone(), quantity), |exercise| {
            let dose = stepped(dose_of(exercise, level.as_ref()), quantity, up);
            put(exercise, level.as_ref(), dose);
        });
    };
    let part = move |(at, part): (usize, DosePart)| {
        match part {
        DosePart::Text(_) => view! { <span>{shown(at)}</span> }.into_any(),
        DosePart::Number(quantity, _) => {
            view! { <PressNumber label=words.quantity(quantity, kind) shown=shown(at) step=move |up| step(quantity, up) open/> }.into_any()
        }
    }
    };
    let all = parts.get_untracked();
    let some = !all.is_empty();
    let sentence = all.into_iter().enumerate().map(part).collect_view();
    some.then(|| view! { <p class="sentence" role="group" aria-label=words.text(Key::DoseLabel)>{sentence}</p> })
}
