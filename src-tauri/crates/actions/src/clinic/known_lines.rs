//! The lines of the clinic's list that were made already, so that the list opens everybody's summaries once and not each time.
//!
//! They are in memory only, and only while the clinic is unlocked. A line is made anew when a sealed row of its patient was written,
//! when the day has come on which it may read differently, and when anything but this program has changed the store.

use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use wire::clinic::PatientLine;

/// A line, and when it holds.
struct KnownLine {
    line: PatientLine,
    /// The day on which it was made.
    on: NaiveDate,
    /// Whether a later day changes nothing in it: no device's clock was ahead of the clinic's.
    lasts: bool,
}

/// The lines by the patient's row.
#[derive(Default)]
pub(crate) struct KnownLines {
    /// The store's state by others for which they hold.
    state: Option<u32>,
    lines: BTreeMap<i64, KnownLine>,
}

impl KnownLines {
    /// Forgets everything if anybody else has changed the store since.
    pub(super) fn hold_for(&mut self, state: u32) {
        if self.state.replace(state) != Some(state) {
            self.lines.clear();
        }
    }

    /// The line of this patient for the day, if it is known.
    pub(super) fn get(&self, patient: i64, today: NaiveDate) -> Option<&PatientLine> {
        let holds = |known: &&KnownLine| known.on == today || known.lasts && known.on < today;
        self.lines.get(&patient).filter(holds).map(|known| &known.line)
    }

    /// Keeps the line of a patient, made on this day. `lasts` says that later days change nothing in it.
    pub(super) fn keep(&mut self, patient: i64, line: PatientLine, on: NaiveDate, lasts: bool) {
        self.lines.insert(patient, KnownLine { line, on, lasts });
    }

    /// Forgets the lines of these patients, whose rows were written.
    pub(super) fn forget(&mut self, patients: &BTreeSet<i64>) {
        patients.iter().for_each(|patient| drop(self.lines.remove(patient)));
    }
}
