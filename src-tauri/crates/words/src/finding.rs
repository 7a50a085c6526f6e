//! What an exercise is, said to somebody who looks for one, and what to think of before it is prescribed.

use crate::{Key, Words, upper};
use exercises::catalogue::{Basis, Equipment, Exercise, Level, Posture, PrescriberFlag, Purpose};
use exercises::draft::{Concern, PatientFacts};

impl Words {
    /// "strength".
    pub fn purpose(self, purpose: Purpose) -> &'static str {
        self.text(match purpose {
            Purpose::Mobility => Key::PurposeMobility,
            Purpose::Strength => Key::PurposeStrength,
            Purpose::Endurance => Key::PurposeEndurance,
            Purpose::Control => Key::PurposeControl,
            Purpose::Balance => Key::PurposeBalance,
            Purpose::Stretching => Key::PurposeStretching,
            Purpose::EasingPain => Key::PurposeEasingPain,
            Purpose::Calm => Key::PurposeCalm,
            Purpose::Activity => Key::PurposeActivity,
            Purpose::Function => Key::PurposeFunction,
        })
    }

    /// "lying".
    pub fn posture(self, posture: Posture) -> &'static str {
        self.text(match posture {
            Posture::Standing => Key::PostureStanding,
            Posture::Sitting => Key::PostureSitting,
            Posture::Lying => Key::PostureLying,
            Posture::Kneeling => Key::PostureKneeling,
        })
    }

    /// "joint replacement".
    pub fn flag(self, flag: PrescriberFlag) -> &'static str {
        self.text(match flag {
            PrescriberFlag::BloodPressure => Key::FlagBloodPressure,
            PrescriberFlag::Pregnancy => Key::FlagPregnancy,
            PrescriberFlag::BloodThinners => Key::FlagBloodThinners,
            PrescriberFlag::Osteoporosis => Key::FlagOsteoporosis,
            PrescriberFlag::JointReplacement => Key::FlagJointReplacement,
            PrescriberFlag::UnhealedOperation => Key::FlagUnhealedOperation,
            PrescriberFlag::Abdomen => Key::FlagAbdomen,
            PrescriberFlag::HandOperation => Key::FlagHandOperation,
            PrescriberFlag::DislocatedShoulder => Key::FlagDislocatedShoulder,
            PrescriberFlag::CannotGetUp => Key::FlagCannotGetUp,
        })
    }

    /// "Think of: joint replacement".
    pub fn concern(self, concern: Concern) -> String {
        match concern {
            Concern::Flag(flag) => self.concern_flag(self.flag(flag)),
            Concern::Lacks(thing) => self.concern_lacks(self.equipment(thing)),
        }
    }

    /// "Usual dose by convention". A source is named only for what was read in one; everything else is a convention.
    pub fn dose_basis(self, basis: Option<Basis>) -> String {
        match basis.map(Basis::source) {
            Some(Some(source)) => self.dose_basis_source(source),
            Some(None) => self.text(Key::DoseBasisConvention).to_owned(),
            None => self.text(Key::DoseBasisUnknown).to_owned(),
        }
    }

    /// "Knee; holds; needs a free stretch of wall": what an exercise is and needs at its easiest level; the region only if wanted.
    pub fn exercise_in_short(self, exercise: &Exercise, with_region: bool) -> String {
        let needs = self.needs_in_line(first_level(exercise).equipment());
        let short = self.exercise_line(self.kind(exercise.kind), &needs);
        if with_region { self.exercise_line(self.region(exercise.region), &short) } else { upper(&short) }
    }

    /// "osteoporosis and pregnancy; not there at home: a mat"; `None` if nothing was ticked.
    pub fn facts_in_short(self, facts: &PatientFacts) -> Option<String> {
        let flags: Vec<String> = facts.flags.iter().map(|flag| self.flag(*flag).to_owned()).collect();
        let lacks: Vec<String> = facts.lacks.iter().map(|thing| self.equipment(*thing).to_owned()).collect();
        let flags = (!flags.is_empty()).then(|| self.list(&flags));
        let lacks = (!lacks.is_empty()).then(|| self.facts_without(&self.list(&lacks)));
        match (flags, lacks) {
            (Some(flags), Some(lacks)) => Some(self.exercise_line(&flags, &lacks)),
            (flags, lacks) => flags.or(lacks),
        }
    }

    /// "needs a mat and a pillow".
    pub fn needs_in_line(self, equipment: &[Equipment]) -> String {
        let all: Vec<String> = equipment.iter().map(|one| self.equipment(*one).to_owned()).collect();
        match all.is_empty() {
            true => self.text(Key::ExerciseNeedsNothing).to_owned(),
            false => self.exercise_needs(&self.list(&all)),
        }
    }

    /// The words by which an exercise is found besides its own texts: region, purposes, kind, postures and equipment. The flags are not
    /// among them: who types the name of a condition looks for what suits it.
    pub fn finding_labels(self, exercise: &Exercise) -> String {
        let mut all = vec![self.region(exercise.region), self.kind(exercise.kind)];
        all.extend(exercise.purposes.iter().map(|purpose| self.purpose(*purpose)));
        for rung in exercise.ladders.iter().flat_map(|ladder| &ladder.rungs) {
            let level = exercise.level(Some(&rung.id));
            all.extend(level.posture().map(|posture| self.posture(posture)));
            all.extend(level.equipment().iter().map(|thing| self.equipment(*thing)));
        }
        all.join(" ")
    }
}

/// The level at which an exercise is added to a plan.
pub fn first_level(exercise: &Exercise) -> Level<'_> {
    exercise.level(exercise.first_rung().map(|rung| &rung.id))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use crate::review::samples;
    use std::collections::BTreeSet;

    #[test]
    fn every_value_has_a_name_of_its_own() {
        for locale in Locale::ALL {
            let words = Words::new(*locale);
            assert_eq!(BTreeSet::from(Purpose::ALL.map(|one| words.purpose(one))).len(), Purpose::ALL.len());
            assert_eq!(BTreeSet::from(Posture::ALL.map(|one| words.posture(one))).len(), Posture::ALL.len());
            assert_eq!(BTreeSet::from(PrescriberFlag::ALL.map(|one| words.flag(one))).len(), PrescriberFlag::ALL.len());
        }
    }

    #[test]
    fn a_concern_names_what_was_ticked() {
        let said = |locale, concern| Words::new(locale).concern(concern);
        let flag = Concern::Flag(PrescriberFlag::Osteoporosis);
        assert_eq!(said(Locale::En, flag), "Think of: osteoporosis");
        assert_eq!(said(Locale::Es, flag), "A tener en cuenta: osteoporosis");
        assert_eq!(said(Locale::En, Concern::Lacks(Equipment::Mat)), "Not there at home: a mat");
    }

    #[test]
    fn what_was_ticked_is_said_in_short() {
        let words = Words::new(Locale::En);
        let mut facts = PatientFacts::default();
        assert_eq!(words.facts_in_short(&facts), None);
        facts.put_lack(Equipment::Mat, true);
        assert_eq!(words.facts_in_short(&facts).as_deref(), Some("not there at home: a mat"));
        facts.put_flag(PrescriberFlag::Pregnancy, true);
        facts.put_flag(PrescriberFlag::Osteoporosis, true);
        let said = words.facts_in_short(&facts);
        assert_eq!(said.as_deref(), Some("pregnancy and osteoporosis; not there at home: a mat"));
    }

    #[test]
    fn a_dose_has_a_source_only_if_its_figures_were_read_there() {
        let words = Words::new(Locale::En);
        for basis in [Basis::Convention, Basis::WorkingRange, Basis::EightToTwelve, Basis::NeckLowLoad] {
            assert_eq!(words.dose_basis(Some(basis)), "Usual dose by convention");
        }
        assert!(words.dose_basis(Some(Basis::GradedActivity)).contains("BMC Public Health"));
        assert_eq!(words.dose_basis(None), "Basis of the usual dose not stated");
    }

    #[test]
    fn an_exercise_is_said_in_one_line_and_found_by_its_labels() {
        let mut exercise = samples::exercises().swap_remove(0);
        assert_eq!(Words::new(Locale::En).exercise_in_short(&exercise, false), "Holds; needs nothing");
        (exercise.equipment, exercise.purposes) = (vec![Equipment::Mat, Equipment::Pillow], vec![Purpose::Calm]);
        let line = Words::new(Locale::En).exercise_in_short(&exercise, true);
        assert_eq!(line, "Neck and upper back; holds; needs a mat and a pillow");
        let labels = Words::new(Locale::Es).finding_labels(&exercise);
        assert!(["Cuello", "calma", "colchoneta"].iter().all(|word| labels.contains(word)), "{labels}");
    }
}
