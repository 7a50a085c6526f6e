//! The number of the next revision of a patient's plan.

use super::rows::{self, Patient};
use crate::{ActionResult, DataFolder};
use exercises::summary::Summary;
use wire::Failure;

/// By how many revisions a summary may be newer than the newest card in this store. A store that was restored from an old backup lacks the
/// cards that were issued after that backup.
pub(super) const AHEAD: u16 = 16;

/// One above the highest revision of the patient's cards and of those that summaries report as taken, as far as the summaries open: a
/// store that was put back to an older copy does not know the cards that it issued since.
///
/// # Errors
/// [`Failure::OutOfRange`] if there is no higher number.
pub(super) fn next_revision(folder: &DataFolder, patient: &Patient) -> ActionResult<u16> {
    let (summaries, _) = rows::readable_summaries(folder, patient)?;
    next_after(patient, &summaries)
}

/// The same, of these summaries.
///
/// # Errors
/// The same.
pub(super) fn next_after(patient: &Patient, summaries: &[Summary]) -> ActionResult<u16> {
    let highest = patient.newest_revision().max(unknown(patient, summaries).unwrap_or(0));
    highest.checked_add(1).ok_or(Failure::OutOfRange { least: 1, most: u16::MAX.into() })
}

/// The highest revision that a summary reports as taken, if this store does not have it or a higher one.
pub(super) fn unknown(patient: &Patient, summaries: &[Summary]) -> Option<u16> {
    let newest = patient.newest_revision();
    let taken = summaries.iter().flat_map(|summary| summary.taken.iter().map(|taken| taken.revision));
    // What a summary of an earlier program claims beyond that, no card of this clinic can have said.
    taken.filter(|revision| (newest.saturating_add(1)..=newest.saturating_add(AHEAD)).contains(revision)).max()
}
