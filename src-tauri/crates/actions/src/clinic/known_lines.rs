//! The lines of the clinic's list that were made already, so that the list opens everybody's summaries once and not each time.
//!
//! They are in memory only while the clinic is unlocked; what outlives that is in [`super::digests`]. A line is made anew when a sealed
//! row of its patient was written, when the day has come on which it may read differently, and when anything but this program has changed the store.

use super::digests::Digest;
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use vault::manifest::{Manifest, Rows};
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
    /// The rows that are there: as they were found at unlocking, with what this program has written since. `None` once anybody else has
    /// changed the store.
    found: Option<Manifest>,
    /// Whether the stored lines were taken over.
    taken_over: bool,
    /// The patients whose lines were made and are not stored.
    unstored: BTreeSet<i64>,
}

impl KnownLines {
    /// Begins anew with the rows that were found in this state of the store.
    pub(super) fn begin(&mut self, state: u32, found: Manifest) {
        *self = KnownLines { state: Some(state), found: Some(found), ..KnownLines::default() };
    }

    /// Forgets everything if anybody else has changed the store since.
    pub(super) fn hold_for(&mut self, state: u32) {
        if self.state.replace(state) != Some(state) {
            self.lines.clear();
            self.unstored.clear();
            self.found = None;
        }
    }

    /// Whether stored lines may be taken over: the first time after unlocking, as long as it is known what rows are there.
    pub(super) fn may_take_over(&mut self) -> bool {
        self.found.is_some() && !std::mem::replace(&mut self.taken_over, true)
    }

    /// The rows of a patient that are there, if that is known.
    pub(super) fn found(&self, patient: i64) -> Option<Rows> {
        self.found.as_ref().map(|found| found.rows_of(patient))
    }

    /// Takes a stored line over, unless one was made already.
    pub(super) fn take_over(&mut self, patient: i64, digest: Digest) {
        let Digest { line, from: on } = digest;
        self.lines.entry(patient).or_insert(KnownLine { line, on, lasts: true });
    }

    /// The line of this patient for the day, if it is known.
    pub(super) fn get(&self, patient: i64, today: NaiveDate) -> Option<&PatientLine> {
        let holds = |known: &&KnownLine| known.on == today || known.lasts && known.on < today;
        self.lines.get(&patient).filter(holds).map(|known| &known.line)
    }

    /// Keeps the line of a patient, made on this day. `lasts` says that later days change nothing in it.
    pub(super) fn keep(&mut self, patient: i64, line: PatientLine, on: NaiveDate, lasts: bool) {
        self.lines.insert(patient, KnownLine { line, on, lasts });
        self.unstored.insert(patient);
    }

    /// Forgets the lines of these patients, whose rows were written; the manifest was the one and is the other.
    pub(super) fn forget(&mut self, patients: &BTreeSet<i64>, was: &Manifest, is: &Manifest) {
        for patient in patients {
            self.lines.remove(patient);
            self.unstored.remove(patient);
            let Some(found) = &mut self.found else { continue };
            // Of rows that were not as the manifest says, the manifest says nothing after this write either.
            if found.rows_of(*patient) == was.rows_of(*patient) {
                found.set_rows_of(*patient, is.rows_of(*patient));
            } else {
                self.found = None;
            }
        }
    }

    /// The lines that are to be stored, with the rows that they were made of. One that a later day may change is not among them.
    pub(super) fn take_unstored(&mut self) -> Vec<(i64, Rows, Digest)> {
        let unstored = std::mem::take(&mut self.unstored);
        let Some(found) = &self.found else { return Vec::new() };
        let digest = |patient: i64| {
            let KnownLine { line, on, lasts } = self.lines.get(&patient)?;
            lasts.then(|| (patient, found.rows_of(patient), Digest { line: line.clone(), from: *on }))
        };
        unstored.into_iter().filter_map(digest).collect()
    }
}
