//! The lines of the clinic's list, stored, so that the first list after unlocking opens nobody's summaries.
//!
//! A stored line holds only for the very rows that it was made of: it names their number and keyed sum, which are compared with those
//! that were found when the store was unlocked. So nothing that was changed from outside is hidden by it. It also names the rules that it
//! was made by, and holds from the day on which it was made; one that a later day would change is not stored.
//!
//! ```text
//! plain    rules | line break | number and sum of the rows | line break | day | line break | the line as JSON
//! ```

use super::lock;
use super::rows;
use super::sealed;
use crate::{ActionResult, DataFolder, refuse};
use chrono::NaiveDate;
use store::{StoreError, table};
use vault::manifest::Rows;
use wire::clinic::PatientLine;

/// The rules by which a line is made of a patient's rows: a later program asks nothing of an earlier one. The number rises when the line
/// of the same rows becomes another within a version of the program.
const RULES: &str = concat!(env!("CARGO_PKG_VERSION"), "/3");

/// A line as it is stored, and the day from which on it holds.
pub(super) struct Digest {
    pub(super) line: PatientLine,
    pub(super) from: NaiveDate,
}

impl Digest {
    fn write(&self, rows: Rows) -> Option<Vec<u8>> {
        let line = serde_json::to_string(&self.line).ok()?;
        Some(format!("{RULES}\n{rows}\n{}\n{line}", self.from).into_bytes())
    }

    /// `None` if it is of other rows or rules.
    fn read(plain: &[u8], rows: Rows) -> Option<Digest> {
        let mut parts = std::str::from_utf8(plain).ok()?.splitn(4, '\n');
        if parts.next()? != RULES || parts.next()? != rows.to_string() {
            return None;
        }
        Some(Digest { from: parts.next()?.parse().ok()?, line: serde_json::from_str(parts.next()?).ok()? })
    }
}

/// Takes over the stored lines that still hold, once after unlocking.
pub(super) fn take_over(folder: &DataFolder) -> ActionResult<()> {
    let keys = lock::unlocked_keys(folder)?;
    let mut known = folder.known_lines.borrow_mut();
    if !known.may_take_over() {
        return Ok(());
    }
    for (patient, sealed) in rows::read(folder, table::digest::all)? {
        let Some(rows) = known.found(patient) else { continue };
        let plain = vault::rows::open(keys, &sealed::digest_place(patient), &sealed).ok();
        if let Some(digest) = plain.and_then(|plain| Digest::read(&plain, rows)) {
            known.take_over(patient, digest);
        }
    }
    Ok(())
}

/// Stores the lines that were made since the last time.
///
/// # Errors
/// Any failure to write. The lines are then made again after the next unlocking.
pub(super) fn store(folder: &mut DataFolder) -> ActionResult<()> {
    let keys = lock::unlocked_keys(folder)?;
    let mut sealed = Vec::new();
    for (patient, rows, digest) in folder.known_lines.borrow_mut().take_unstored() {
        let plain = digest.write(rows);
        sealed.extend(plain.map(|plain| (patient, vault::rows::seal(keys, &sealed::digest_place(patient), &plain))));
    }
    if sealed.is_empty() || folder.home.store().is_closed_for_writing() {
        return Ok(());
    }
    let dir = folder.dir();
    let put = |tx: &store::Tx<'_>| -> Result<(), StoreError> {
        sealed.iter().try_for_each(|(patient, sealed)| table::digest::put(tx, *patient, sealed))
    };
    folder.home.store_mut().transaction(put).map_err(refuse::store(&dir))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::clinic::patients;
    use crate::{clock, zone};
    use vault::manifest::{Manifest, row_sum};
    use vault::rows::RowPlace;
    use wire::clinic::AddPatientRequest;

    fn digest() -> Digest {
        let day = |day| NaiveDate::from_ymd_opt(2027, 3, day).expect("a day");
        let line = PatientLine {
            code: "K17".into(),
            name: Some("Wilhelmina\u{2028}Underhill".into()),
            plan: Some((3, day(20))),
            issued: Some(day(1)),
            covered_until: None,
            alarms: 2,
            closed: Some((day(2), exercises::closing::CloseReason::Finished)),
            damaged: false,
        };
        Digest { line, from: day(2) }
    }

    #[test]
    fn a_digest_is_read_for_the_rows_that_it_was_made_of_alone() {
        let keys = vault::keys::for_now();
        let mut manifest = Manifest::default();
        manifest.add(1, row_sum(&keys, &RowPlace::new("patient", &[&[1]]), b"row"));
        let rows = manifest.rows_of(1);
        let plain = digest().write(rows).expect("text");
        let read = Digest::read(&plain, rows).expect("of these rows");
        assert_eq!((read.line, read.from), (digest().line, digest().from));
        manifest.add(1, row_sum(&keys, &RowPlace::new("issued", &[&[1]]), b"row"));
        assert!(Digest::read(&plain, manifest.rows_of(1)).is_none(), "of other rows");
        let text = String::from_utf8(plain.clone()).expect("text");
        let of_others = text.replacen(RULES, "0.0.1/3", 1);
        assert!(of_others != text && Digest::read(of_others.as_bytes(), rows).is_none(), "of other rules");
        for cut in 0..plain.len() {
            assert!(Digest::read(&plain[..cut], rows).is_none(), "cut at {cut}");
        }
    }
    #[test]
    fn after_unlocking_the_line_is_there_before_anything_of_the_patient_was_opened() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let dir = dir.path().join("clinic");
        let moment = clock::at(1_795_600_000_000, zone::named("Europe/Vienna").expect("a zone"));
        let passphrase = "nine grey herons wading";
        let mut folder = DataFolder::open(&dir, true).expect("a new folder");
        lock::start(&mut folder, "Linden Lane Practice", None, passphrase.into()).expect("a new clinic");
        patients::add(&mut folder, &moment, &AddPatientRequest { code: "K17".into(), name: None }).expect("a new code");
        patients::show(&mut folder, &moment).expect("unlocked");
        drop(folder);
        let mut folder = DataFolder::open(&dir, false).expect("the folder");
        lock::unlock(&mut folder, passphrase.into()).expect("the passphrase");
        let known =
            |folder: &DataFolder| folder.known_lines.borrow().get(1, moment.now.date()).map(|line| line.code.clone());
        assert_eq!(known(&folder), None);
        take_over(&folder).expect("readable");
        assert_eq!(known(&folder).as_deref(), Some("K17"));
        lock::lock(&mut folder);
        assert_eq!(known(&folder), None);
    }
}
