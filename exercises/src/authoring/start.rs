//! What a new exercise starts from.

use super::names::new_id;
use crate::catalogue::{
    Basis, Contact, Dose, Exercise, Eyes, Factor, Figure, Joint, Kind, Ladder, LadderId, Lang, Pose, Posture, Quantity,
    Region, Rung, RungId, RungTexts, Sidedness, Surface, Texts, View,
};
use std::collections::BTreeMap;

/// An exercise of which nothing is written yet: a hold, standing, with one level.
pub fn blank(lang: Lang) -> Exercise {
    let rung = RungId::new("level-1".to_owned()).expect("an id");
    let texts = BTreeMap::from([(lang, RungTexts::default())]);
    let rungs = vec![Rung { texts, ..Rung::new(rung) }];
    let ladder = Ladder { id: LadderId::new("levels".to_owned()).expect("an id"), factor: Factor::Range, rungs };
    Exercise {
        id: new_id(),
        revision: 1,
        region: Region::General,
        purposes: Vec::new(),
        flags: Vec::new(),
        kind: Kind::Hold,
        side: Sidedness::None,
        posture: Some(Posture::Standing),
        equipment: Vec::new(),
        one_leg: false,
        test: false,
        count_error_tenths: None,
        step_rules: Vec::new(),
        dose: usual_dose(Kind::Hold),
        dose_basis: Some(Basis::Convention),
        ladders: vec![ladder],
        poses: standing(),
        texts: BTreeMap::from([(lang, Texts::default())]),
    }
}

/// Somebody who stands, seen from the side, and does nothing yet.
fn standing() -> Figure {
    let arms = [(Joint::ShoulderNear, 4), (Joint::ElbowNear, 10), (Joint::ShoulderFar, 8), (Joint::ElbowFar, 10)];
    Figure {
        view: View::Side,
        furniture: Vec::new(),
        links: Vec::new(),
        plumb: false,
        contacts: vec![Contact::NearSole, Contact::FarSole],
        poses: vec![Pose::from(arms), Pose::from(arms)],
        arrows: Vec::new(),
        eyes: None,
    }
}

/// A new exercise that begins as this one is.
pub fn copy_of(exercise: &Exercise) -> Exercise {
    Exercise { id: new_id(), revision: 1, ..exercise.clone() }
}

/// The dose from which an exercise of this kind starts, by convention of the trade.
pub fn usual_dose(kind: Kind) -> Dose {
    let fields = kind.rules().fields().iter();
    let values: Vec<i64> = fields.map(|field| usual(kind, field.quantity)).collect();
    Dose::from_values(kind, &values).expect("a value for each field, within its range")
}

fn usual(kind: Kind, quantity: Quantity) -> i64 {
    match quantity {
        Quantity::Repetitions if matches!(kind, Kind::Reps | Kind::Move) => 10,
        Quantity::Repetitions if matches!(kind, Kind::Stretch | Kind::Beat) => 3,
        Quantity::Repetitions => 5,
        Quantity::HoldSeconds | Quantity::RestSeconds => 10,
        Quantity::Trials => 3,
        Quantity::TargetSeconds | Quantity::StretchSeconds => 20,
        Quantity::Sets | Quantity::TempoUpSeconds => 2,
        Quantity::TempoHoldSeconds => 1,
        Quantity::TempoDownSeconds | Quantity::Effort => 3,
        Quantity::ActivityMinutes | Quantity::CareMinutes | Quantity::QuotaMinutes => 10,
        Quantity::QuotaStep if kind == Kind::QuotaTimes => 1,
        Quantity::QuotaStep => 2,
        Quantity::QuotaDays => 3,
        Quantity::QuotaGoal if kind == Kind::QuotaTimes => 10,
        Quantity::QuotaGoal => 30,
        Quantity::CountSeconds | Quantity::BeatSeconds => 30,
        Quantity::BeatsPerMinute => 60,
        Quantity::BreathMinutes => 5,
        Quantity::BreathInSeconds => 4,
        Quantity::BreathOutSeconds => 6,
        other => other.bound().min,
    }
}

/// Makes it an exercise of another kind, with that kind's usual dose and rules. What the levels say of the dose is of the former kind,
/// so it goes.
pub fn of_kind(exercise: &mut Exercise, kind: Kind) {
    if exercise.kind == kind {
        return;
    }
    (exercise.kind, exercise.dose, exercise.dose_basis) = (kind, usual_dose(kind), Some(Basis::Convention));
    (exercise.step_rules, exercise.test, exercise.one_leg) = (Vec::new(), kind.rules().is_test(), kind.rules().is_by_leg());
    if !kind.rules().sides().contains(&exercise.side) {
        exercise.side = kind.rules().sides().first().copied().unwrap_or(Sidedness::None);
    }
    for rung in exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs) {
        (rung.dose, rung.side) = (None, None);
        if kind.is_balance() {
            rung.surface.get_or_insert(Surface::Firm);
            rung.eyes.get_or_insert(Eyes::Open);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_has_a_usual_dose_that_it_may_have() {
        for kind in Kind::ALL {
            let dose = usual_dose(*kind);
            assert_eq!((dose.kind(), dose.check()), (*kind, Ok(())), "{kind:?}");
        }
    }

    #[test]
    fn another_kind_takes_away_what_belongs_to_the_former() {
        let mut exercise = blank(Lang::En);
        exercise.ladders[0].rungs[0].dose = Some(Dose::Hold { repetitions: 1, hold_s: 30, rest_s: 0 });
        of_kind(&mut exercise, Kind::Balance);
        let rung = &exercise.ladders[0].rungs[0];
        assert_eq!((rung.dose, rung.surface, rung.eyes), (None, Some(Surface::Firm), Some(Eyes::Open)));
        assert_eq!((exercise.dose.kind(), exercise.one_leg), (Kind::Balance, true));
        of_kind(&mut exercise, Kind::Reps);
        assert_eq!((exercise.dose.kind(), exercise.one_leg), (Kind::Reps, false));
    }

    #[test]
    fn the_same_kind_changes_nothing() {
        let mut exercise = blank(Lang::En);
        exercise.dose = Dose::Hold { repetitions: 9, hold_s: 9, rest_s: 9 };
        let before = exercise.clone();
        of_kind(&mut exercise, Kind::Hold);
        assert_eq!(exercise, before);
    }

    #[test]
    fn a_copy_is_a_new_exercise() {
        let original = Exercise { revision: 7, ..blank(Lang::En) };
        let copy = copy_of(&original);
        assert_eq!((copy.id, copy.revision), (new_id(), 1));
    }
}
