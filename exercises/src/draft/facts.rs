//! What is known of a patient that matters when exercises are chosen, and what of it an exercise touches.

use crate::catalogue::{Equipment, Exercise, PrescriberFlag, RungId};
use std::collections::BTreeSet;

/// What the clinician ticked for a patient. It is kept with the patient, not with a plan, and is on no card.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PatientFacts {
    /// The conditions that hold.
    pub flags: BTreeSet<PrescriberFlag>,
    /// What the patient has not got.
    pub lacks: BTreeSet<Equipment>,
}

/// A reason to think again before an exercise is prescribed to a patient.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Concern {
    /// The exercise has this flag, and the condition was ticked.
    Flag(PrescriberFlag),
    /// The level needs this, and the patient has not got it.
    Lacks(Equipment),
}

impl PatientFacts {
    /// Whether nothing was ticked.
    pub fn is_empty(&self) -> bool {
        self.flags.is_empty() && self.lacks.is_empty()
    }

    /// What to think of before `exercise` is prescribed to this patient at one level; without a level, at its easiest one.
    pub fn concerns(&self, exercise: &Exercise, rung: Option<&RungId>) -> Vec<Concern> {
        let level = exercise.level(rung.or(exercise.first_rung().map(|rung| &rung.id)));
        let flags = self.flags.iter().filter(|flag| exercise.flags.contains(flag)).map(|flag| Concern::Flag(*flag));
        let lacks = self.lacks.iter().filter(|thing| level.equipment().contains(thing)).map(|thing| Concern::Lacks(*thing));
        flags.chain(lacks).collect()
    }

    /// Notes whether a condition holds.
    pub fn put_flag(&mut self, flag: PrescriberFlag, holds: bool) {
        if holds {
            self.flags.insert(flag)
        } else {
            self.flags.remove(&flag)
        };
    }

    /// Notes whether the patient lacks a thing.
    pub fn put_lack(&mut self, thing: Equipment, lacks: bool) {
        if lacks {
            self.lacks.insert(thing)
        } else {
            self.lacks.remove(&thing)
        };
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::hold;
    use super::*;

    fn flagged() -> Exercise {
        let mut exercise = hold();
        exercise.flags = vec![PrescriberFlag::Osteoporosis, PrescriberFlag::CannotGetUp];
        exercise.equipment = vec![Equipment::Chair];
        exercise
    }

    #[test]
    fn only_what_was_ticked_and_touches_the_exercise_is_named() {
        let mut facts = PatientFacts::default();
        assert!(facts.is_empty() && facts.concerns(&flagged(), None).is_empty());
        facts.put_flag(PrescriberFlag::Osteoporosis, true);
        facts.put_flag(PrescriberFlag::Pregnancy, true);
        facts.put_lack(Equipment::Chair, true);
        facts.put_lack(Equipment::Mat, true);
        let named = [Concern::Flag(PrescriberFlag::Osteoporosis), Concern::Lacks(Equipment::Chair)];
        assert_eq!(facts.concerns(&flagged(), None), named);
        facts.put_flag(PrescriberFlag::Osteoporosis, false);
        facts.put_lack(Equipment::Chair, false);
        assert_eq!(facts.concerns(&flagged(), None), []);
    }

    #[test]
    fn equipment_is_that_of_the_level() {
        let mut exercise = flagged();
        let rungs = &mut exercise.ladders[0].rungs;
        rungs[0].equipment = Some(vec![Equipment::Mat]);
        let (first, last) = (rungs[0].id.clone(), rungs[rungs.len() - 1].id.clone());
        assert_ne!(first, last, "the sample has two levels");
        let facts = PatientFacts { lacks: BTreeSet::from([Equipment::Chair]), ..PatientFacts::default() };
        assert_eq!(facts.concerns(&exercise, None), [], "the easiest level needs no chair");
        assert_eq!(facts.concerns(&exercise, Some(&first)), []);
        assert_eq!(facts.concerns(&exercise, Some(&last)), [Concern::Lacks(Equipment::Chair)]);
    }
}
