//! Every code that is written: a few of others, in a fixed list, and our own with the system that says what they mean.
//!
//! Codes of SNOMED CT are all in the Global Patient Set, which may be used everywhere; LOINC may be used with its notice.

use super::elements::{CodeSystem, CodeableConcept, Coding, Concept};
use crate::measures::{Choice, Code};
use exercises::catalogue::Purpose;
use exercises::plan::{BodySide, Side};

pub(super) const SNOMED: &str = "http://snomed.info/sct";
pub(super) const LOINC: &str = "http://loinc.org";
pub(super) const UCUM: &str = "http://unitsofmeasure.org";
const OBSERVATION_CATEGORY: &str = "http://terminology.hl7.org/CodeSystem/observation-category";
const PARTICIPANT: &str = "http://terminology.hl7.org/CodeSystem/provenance-participant-type";
const ABSENT: &str = "http://terminology.hl7.org/CodeSystem/data-absent-reason";
const ACHIEVEMENT: &str = "http://terminology.hl7.org/CodeSystem/goal-achievement";

/// The system of our own codes.
pub(super) const OWN: &str = "urn:uuid:0c7df4a2-53f1-4b06-9d0e-7a6c1f2f8b61";
/// The system of the ids of exercises, those of the program and those of clinics.
pub(super) const EXERCISES: &str = "urn:uuid:4ba8fd3e-4d3a-4a57-8d53-16c3a2b1c0f4";
/// The version of our own codes; it rises when one is added.
const OWN_VERSION: &str = "2";

/// The notices under which codes of others are passed on. The page of licences shows the same file.
const NOTICES: &str = include_str!("notices.txt");

/// A code of others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Known {
    pub system: &'static str,
    pub code: &'static str,
    display: &'static str,
}

impl Known {
    const fn snomed(code: &'static str, display: &'static str) -> Known {
        Known { system: SNOMED, code, display }
    }

    pub fn coding(self) -> Coding {
        Coding { system: self.system, code: self.code.to_owned(), display: self.display.to_owned() }
    }

    pub fn concept(self) -> CodeableConcept {
        self.coding().into()
    }
}

// A term that was not read in a release of SNOMED CT is left out: a wrong one is an error, a missing one is none.
const EXERCISE_THERAPY: Known = Known::snomed("229065009", "Exercise therapy");
const BALANCE: Known = Known::snomed("386293009", "");
const STRETCHING: Known = Known::snomed("229070002", "");
const STRENGTH: Known = Known::snomed("266741004", "");
const AEROBIC: Known = Known::snomed("229072005", "");
const LEFT: Known = Known::snomed("7771000", "Left");
const RIGHT: Known = Known::snomed("24028007", "Right");
const BOTH: Known = Known::snomed("51440002", "Right and left");
const LEFT_LEG: Known = Known::snomed("32153003", "");
const RIGHT_LEG: Known = Known::snomed("62175007", "");
pub(super) const PAIN: Known =
    Known { system: LOINC, code: "72514-3", display: "Pain severity - 0-10 verbal numeric rating [Score] - Reported" };
pub(super) const NOT_APPLICABLE: Known = Known { system: ABSENT, code: "not-applicable", display: "Not Applicable" };
pub(super) const AUTHOR: Known = Known { system: PARTICIPANT, code: "author", display: "Author" };
pub(super) const ASSEMBLER: Known = Known { system: PARTICIPANT, code: "assembler", display: "Assembler" };
pub(super) const OF_ACTIVITY: Known = Known { system: OBSERVATION_CATEGORY, code: "activity", display: "Activity" };
pub(super) const OF_SURVEY: Known = Known { system: OBSERVATION_CATEGORY, code: "survey", display: "Survey" };
pub(super) const OF_EXAM: Known = Known { system: OBSERVATION_CATEGORY, code: "exam", display: "Exam" };
pub(super) const IMPROVING: Known = Known { system: ACHIEVEMENT, code: "improving", display: "Improving" };
pub(super) const WORSENING: Known = Known { system: ACHIEVEMENT, code: "worsening", display: "Worsening" };
pub(super) const NO_CHANGE: Known = Known { system: ACHIEVEMENT, code: "no-change", display: "No Change" };

/// All codes of SNOMED CT and LOINC that are ever written.
#[cfg(test)]
pub(super) const CLINICAL: [Known; 11] =
    [EXERCISE_THERAPY, BALANCE, STRETCHING, STRENGTH, AEROBIC, LEFT, RIGHT, BOTH, LEFT_LEG, RIGHT_LEG, PAIN];

impl Code {
    pub(super) fn coding(self) -> Coding {
        Coding { system: OWN, code: self.name().to_owned(), display: self.display().to_owned() }
    }
}

impl Choice {
    pub(super) fn coding(self) -> Coding {
        Coding { system: OWN, code: self.code(), display: self.display() }
    }
}

/// What is done in an exercise, by the first of its purposes that has a code. What only eases pain or calms is no exercise therapy.
pub(super) fn therapy(purposes: &[Purpose]) -> Option<Known> {
    let known = |purpose: &Purpose| match purpose {
        Purpose::Balance => Some(BALANCE),
        Purpose::Stretching => Some(STRETCHING),
        Purpose::Strength | Purpose::Endurance => Some(STRENGTH),
        Purpose::Activity => Some(AEROBIC),
        Purpose::Mobility | Purpose::Control | Purpose::Function => Some(EXERCISE_THERAPY),
        Purpose::EasingPain | Purpose::Calm => None,
    };
    purposes.iter().find_map(known)
}

/// The leg, as a body site that has its side in it.
pub(super) fn leg(side: BodySide) -> Known {
    match side {
        BodySide::Left => LEFT_LEG,
        BodySide::Right => RIGHT_LEG,
    }
}

/// The side of the body by itself; `None` if there are no sides.
pub(super) fn side(side: Side) -> Option<Known> {
    match side {
        Side::Left => Some(LEFT),
        Side::Right => Some(RIGHT),
        Side::Both | Side::Alternating => Some(BOTH),
        Side::Neither => None,
    }
}

/// Our own codes, for readers who want to know what they mean.
pub(super) fn own() -> CodeSystem {
    let measured = Code::ALL.iter().map(|(_, code, display)| ((*code).to_owned(), (*display).to_owned()));
    let chosen = Choice::all().into_iter().map(|choice| (choice.code(), choice.display()));
    let concept = measured.chain(chosen).map(|(code, display)| Concept { code, display });
    CodeSystem {
        url: OWN,
        version: OWN_VERSION,
        name: "HomeExerciseCodes",
        title: "Codes for home exercise",
        status: "active",
        case_sensitive: Some(true),
        content: "complete",
        copyright: NOTICES.trim_end().to_owned(),
        concept: concept.collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn codes_of_others_are_few_and_each_is_there_once() {
        let all: BTreeSet<(&str, &str)> = CLINICAL.iter().map(|known| (known.system, known.code)).collect();
        assert!(all.len() == CLINICAL.len() && all.len() <= 20);
        for purpose in Purpose::ALL {
            assert!(therapy(&[purpose]).is_none_or(|known| CLINICAL.contains(&known)), "{purpose:?}");
        }
    }

    #[test]
    fn what_only_eases_is_no_exercise_therapy() {
        assert_eq!(therapy(&[Purpose::EasingPain, Purpose::Calm]), None);
        assert_eq!(therapy(&[Purpose::EasingPain, Purpose::Balance]), Some(BALANCE));
        assert_eq!(therapy(&[]), None);
    }

    #[test]
    fn the_meaning_of_our_own_codes_is_complete() {
        let told: Vec<String> = own().concept.into_iter().map(|concept| concept.code).collect();
        assert!(Code::ALL.iter().all(|(code, ..)| told.contains(&code.coding().code)));
        assert!(Choice::all().into_iter().all(|choice| told.contains(&choice.coding().code)));
    }
}
