//! What the clinician ticked for a patient, as the clinic stores it: two lines with the names of the conditions that hold, and of the
//! things that the patient has not got. It never leaves the clinic, where it is stored encrypted.

use crate::names::{self, Named};
use exercises::draft::PatientFacts;
use std::collections::BTreeSet;

/// Writes the facts as two lines, without a line break at the end.
pub fn write(facts: &PatientFacts) -> String {
    format!("{}\n{}", line(&facts.flags), line(&facts.lacks))
}

/// Reads what [`write()`] wrote. A name that is not known, because a later version wrote it, is passed over.
pub fn read(text: &str) -> PatientFacts {
    let mut lines = text.split('\n');
    PatientFacts { flags: values(lines.next()), lacks: values(lines.next()) }
}

fn line<T: Named + PartialEq>(all: &BTreeSet<T>) -> String {
    all.iter().map(names::name).collect::<Vec<_>>().join(" ")
}

fn values<T: Named + Ord>(line: Option<&str>) -> BTreeSet<T> {
    line.unwrap_or_default().split(' ').filter_map(names::find).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::catalogue::{Equipment, PrescriberFlag};

    #[test]
    fn what_was_ticked_is_read_again() {
        let all = PatientFacts { flags: PrescriberFlag::ALL.into(), lacks: Equipment::ALL.into() };
        let few = PatientFacts { flags: BTreeSet::from([PrescriberFlag::Osteoporosis]), lacks: BTreeSet::new() };
        for facts in [all, few, PatientFacts::default()] {
            assert_eq!(read(&write(&facts)), facts);
        }
    }

    #[test]
    fn the_names_are_for_good_and_an_unknown_one_is_passed_over() {
        let facts = read("blood-pressure something-new cannot-get-up\nmat");
        assert_eq!(facts.flags, BTreeSet::from([PrescriberFlag::BloodPressure, PrescriberFlag::CannotGetUp]));
        assert_eq!(facts.lacks, BTreeSet::from([Equipment::Mat]));
        assert_eq!(write(&facts), "blood-pressure cannot-get-up\nmat");
        assert!(read("").is_empty());
    }
}
