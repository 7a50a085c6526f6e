//! What was found at visits. None of it shares a code with what was recorded at home, so that no series mixes both.

use super::{About, Amount, Choice, Code, Measure, Part, PartCode, State, Unit, Value};
use exercises::id::ItemId;
use exercises::plan::{Item, Plan};
use exercises::visit::{Complained, Finding, Found, Measured, Overridden, Screening, TakenBack, Visit};

/// What was found at all visits, the newest first, and then what was taken back: a record that has it already must learn that it was a
/// mistake. `plans` has the newest first.
pub(crate) fn at_visits(visits: &[Visit], taken_back: &[TakenBack], plans: &[&Plan]) -> Vec<Measure> {
    let said = visits.iter().flat_map(|visit| visit.found.iter().map(move |found| (visit.day, found)));
    let said = said.map(|(day, found)| {
        let Found { first, finding, corrected, .. } = found;
        let state = if *corrected { State::Corrected } else { State::Final };
        Measure { state, which: which(day, *first), ..one(finding, plans) }.on(day)
    });
    let gone = taken_back.iter().map(|gone| {
        // What was a mistake is not told once more.
        let measure = one(&gone.finding, plans);
        let about = if matches!(measure.about, About::Exercise) { About::Exercise } else { About::Plan };
        let (value, parts, side, method) = (Value::Parts, Vec::new(), None, None);
        let (state, which) = (State::TakenBack, which(gone.day, gone.first));
        Measure { state, which, about, value, parts, side, method, ..measure }.on(gone.day)
    });
    said.chain(gone).collect()
}

/// A correction has the name of what it corrects, also where it says something of another kind.
fn which(day: chrono::NaiveDate, first: u32) -> String {
    format!("{day}/{first}")
}

fn one(finding: &Finding, plans: &[&Plan]) -> Measure {
    let measure = match finding {
        Finding::Complaint(one) => complaint(one),
        Finding::Change(change) => {
            let score = Value::Amount(Amount::Tenths(i32::from(change.score) * 10), Unit::Score);
            Measure { parts: said(&change.words), ..Measure::new(Code::VisitChange, About::Plan, score) }
        }
        Finding::Measure(measure) => measured(measure),
        Finding::Screening(one) => screening(one),
        Finding::Note(note) => Measure::new(Code::VisitNote, About::Plan, Value::Text(note.clone())),
        Finding::Overridden(one) => overridden(one, plans),
    };
    Measure { at_visit: true, ..measure }
}

fn complaint(one: &Complained) -> Measure {
    let score = Value::whole(one.score.points(), Unit::Score);
    Measure { parts: said(&one.line), ..Measure::new(Code::VisitPain, About::Place(one.region, one.side), score) }
}

fn measured(measure: &exercises::visit::Measure) -> Measure {
    let (code, about, unit) = match &measure.what {
        Measured::Pain { movement } => (Code::VisitMovementPain, About::Called(movement.clone()), Unit::Score),
        Measured::Motion { movement } => (Code::VisitMotion, About::Called(movement.clone()), Unit::Degrees),
        Measured::Grip => (Code::VisitGrip, About::Plan, Unit::Kilograms),
        Measured::ChairRise => (Code::VisitChairRise, About::Plan, Unit::One),
        Measured::Stance { .. } => (Code::VisitStance, About::Plan, Unit::Seconds),
        Measured::Other { name, unit } => (Code::VisitOther, About::Called(name.clone()), Unit::Other(unit.clone())),
    };
    let amount = |tenths: i32| Value::Amount(Amount::Tenths(tenths), unit.clone());
    let result = match (measure.is_capped(), amount(measure.result())) {
        (true, Value::Amount(amount, unit)) => Value::AtLeast(amount, unit),
        (_, value) => value,
    };
    let mut parts = vec![Part::new(Code::VisitMoment, Value::One(measure.moment.into()))];
    let mut method = None;
    if let Measured::Stance { surface, eyes } = &measure.what {
        parts.push(Part::new(Code::SurfaceStoodOn, Value::One((*surface).into())));
        method = Some(Choice::from(*eyes));
    }
    if measure.tenths.len() > 1 {
        parts.extend(measure.tenths.iter().map(|tenths| Part::new(Code::VisitTrial, amount(*tenths))));
    }
    Measure { side: measure.side, parts, method, ..Measure::new(code, about, result) }
}

/// Each condition that holds. Of those that a later version of the program will know, nobody asked.
fn screening(one: &Screening) -> Measure {
    let holds = |flag| Part { code: PartCode::Chosen(Choice::from(flag)), value: Value::Yes(true) };
    let fell = Part::new(Code::VisitFell, Value::Yes(one.fell));
    let parts = [fell].into_iter().chain(one.flags.iter().copied().map(holds)).collect();
    Measure { parts, ..Measure::new(Code::VisitScreening, About::Plan, Value::Parts) }
}

fn overridden(one: &Overridden, plans: &[&Plan]) -> Measure {
    let item = item(one.item, plans);
    Measure {
        item: Some(one.item),
        exercise: item.map(|item| item.exercise.clone()),
        level: item.and_then(|item| item.rung.clone()),
        parts: said(&one.reason),
        ..Measure::new(Code::VisitOverridden, About::Exercise, Value::One(one.proposed.into()))
    }
}

fn item<'a>(id: ItemId, plans: &[&'a Plan]) -> Option<&'a Item> {
    plans.iter().find_map(|plan| plan.item(id))
}

fn said(words: &str) -> Vec<Part> {
    let part = || Part::new(Code::VisitWords, Value::Text(words.to_owned()));
    if words.is_empty() { Vec::new() } else { vec![part()] }
}
