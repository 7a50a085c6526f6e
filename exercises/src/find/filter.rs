//! Which exercises are looked at, by what they are.

use crate::catalogue::{Equipment, Exercise, Kind, Level, Posture, PrescriberFlag, Purpose, Region};
use crate::draft::PatientFacts;
use std::collections::BTreeSet;

/// What an exercise has to be; a part that is empty asks for nothing. Where levels differ, one that fits is enough.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Filter {
    /// It trains this part of the body.
    pub region: Option<Region>,
    /// It is done for this, among others.
    pub purpose: Option<Purpose>,
    /// It is timed in this way.
    pub kind: Option<Kind>,
    /// It is done in this posture.
    pub posture: Option<Posture>,
    /// It needs nothing but these.
    pub at_most: Option<BTreeSet<Equipment>>,
    /// It has none of these flags.
    pub unflagged: BTreeSet<PrescriberFlag>,
    /// It needs none of these.
    pub without: BTreeSet<Equipment>,
}

impl Filter {
    /// Whether it asks for nothing.
    pub fn is_empty(&self) -> bool {
        *self == Filter::default()
    }

    /// Also leaves out what touches one of a patient's facts.
    pub fn suiting(mut self, facts: &PatientFacts) -> Filter {
        self.unflagged.extend(&facts.flags);
        self.without.extend(&facts.lacks);
        self
    }

    /// Whether the exercise is what the filter asks for.
    pub fn fits(&self, exercise: &Exercise) -> bool {
        self.region.is_none_or(|region| exercise.region == region)
            && self.purpose.is_none_or(|purpose| exercise.purposes.contains(&purpose))
            && self.kind.is_none_or(|kind| exercise.kind == kind)
            && !exercise.flags.iter().any(|flag| self.unflagged.contains(flag))
            && self.fits_a_level(exercise)
    }

    /// Whether one level fits in posture and equipment at once.
    fn fits_a_level(&self, exercise: &Exercise) -> bool {
        let fits = |level: Level<'_>| {
            let needs = level.equipment();
            self.posture.is_none_or(|posture| level.posture() == Some(posture))
                && self.at_most.as_ref().is_none_or(|most| needs.iter().all(|thing| most.contains(thing)))
                && !needs.iter().any(|thing| self.without.contains(thing))
        };
        let mut rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).peekable();
        if rungs.peek().is_none() {
            return fits(exercise.level(None));
        }
        rungs.any(|rung| fits(exercise.level(Some(&rung.id))))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::review::samples::catalogue;

    /// An exercise for the knee with two levels: standing at a wall, and sitting on a chair with a weight.
    fn exercise() -> Exercise {
        let mut exercise = catalogue().exercises.swap_remove(0);
        (exercise.region, exercise.purposes) = (Region::Knee, vec![Purpose::Strength, Purpose::Function]);
        exercise.flags = vec![PrescriberFlag::BloodPressure];
        let [first, second] = &mut exercise.ladders[0].rungs[..] else { panic!("two levels") };
        (first.posture, first.equipment) = (Some(Posture::Standing), Some(vec![Equipment::Wall]));
        let sitting = vec![Equipment::Chair, Equipment::LightWeight];
        (second.posture, second.equipment) = (Some(Posture::Sitting), Some(sitting));
        exercise
    }

    #[track_caller]
    fn fits(filter: Filter, so: bool) {
        assert_eq!(filter.fits(&exercise()), so, "{filter:?}");
    }

    #[test]
    fn each_part_of_a_filter_lets_through_what_it_names() {
        let any = Filter::default;
        fits(any(), true);
        for (region, so) in [(Region::Knee, true), (Region::Hip, false)] {
            fits(Filter { region: Some(region), ..any() }, so);
        }
        for (purpose, so) in [(Purpose::Function, true), (Purpose::Calm, false)] {
            fits(Filter { purpose: Some(purpose), ..any() }, so);
        }
        for kind in Kind::ALL {
            fits(Filter { kind: Some(*kind), ..any() }, *kind == exercise().kind);
        }
        for (flag, so) in [(PrescriberFlag::BloodPressure, false), (PrescriberFlag::Abdomen, true)] {
            fits(Filter { unflagged: BTreeSet::from([flag]), ..any() }, so);
        }
    }

    #[test]
    fn posture_and_equipment_have_to_fit_at_one_level() {
        let any = Filter::default;
        let at_most = |things: &[Equipment]| Some(things.iter().copied().collect::<BTreeSet<_>>());
        for (posture, so) in [(Posture::Standing, true), (Posture::Sitting, true), (Posture::Lying, false)] {
            fits(Filter { posture: Some(posture), ..any() }, so);
        }
        fits(Filter { at_most: at_most(&[]), ..any() }, false);
        fits(Filter { at_most: at_most(&[Equipment::Wall, Equipment::Mat]), ..any() }, true);
        fits(Filter { at_most: at_most(&[Equipment::Chair]), ..any() }, false);
        fits(Filter { at_most: at_most(&[Equipment::Wall]), posture: Some(Posture::Sitting), ..any() }, false);
        fits(Filter { without: BTreeSet::from([Equipment::Chair]), ..any() }, true);
        fits(Filter { without: BTreeSet::from([Equipment::Chair, Equipment::Wall]), ..any() }, false);
    }

    #[test]
    fn what_suits_a_patient_has_no_ticked_flag_and_needs_nothing_that_is_missing() {
        let mut facts = PatientFacts::default();
        assert!(Filter::default().suiting(&facts).is_empty());
        facts.put_lack(Equipment::Chair, true);
        fits(Filter::default().suiting(&facts), true);
        facts.put_flag(PrescriberFlag::BloodPressure, true);
        fits(Filter::default().suiting(&facts), false);
    }
}
