//! What is done with the store when it is unlocked: rows of the older sealing are sealed anew, once, and it is checked whether
//! rows were changed from outside.

use super::lock;
use super::sealed::{self, Unreadable};
use crate::{ActionResult, DataFolder, refuse};
use std::collections::BTreeMap;
use store::{StoreError, Tx, View, table};
use vault::Keys;
use vault::manifest::Manifest;
use vault::rows::{self, RowPlace};
use wire::Failure;

/// What was found to be changed from outside.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct ChangedOutside {
    /// The least number of rows that must have changed, by the patient's row; 0 for what belongs to no patient.
    pub(crate) rows: BTreeMap<i64, u32>,
    /// Whether the manifest itself was removed or changed, so that rows may be missing without being noticed.
    pub(crate) manifest: bool,
}

/// Brings the rows of an unlocked store up to date, and notes what was changed from outside.
///
/// # Errors
/// Any failure to read or write the store. What was changed from outside is none.
pub(super) fn after_unlocking(folder: &mut DataFolder) -> ActionResult<()> {
    lock::unlocked_keys(folder)?;
    let dir = folder.dir();
    let DataFolder { home, keys, .. } = folder;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let store = home.store_mut();
    if store.read(is_of_version_1).map_err(refuse::store(&dir))? {
        store.transaction(|tx| seal_anew(tx, keys)).map_err(refuse::store(&dir))?;
        store.settle().map_err(refuse::store(&dir))?;
    }
    let state = store.state_by_others().map_err(refuse::store(&dir))?;
    let (changed, found) = store.read(|view| check(view, keys)).map_err(refuse::store(&dir))?;
    folder.changed_outside = changed;
    folder.known_lines.borrow_mut().begin(state, found);
    Ok(())
}

/// Whether the rows are still of version 1: there is no manifest, and no row of a later version, which only comes with a manifest.
fn is_of_version_1(view: &View<'_>) -> Result<bool, StoreError> {
    if table::manifest::get(view)?.is_some() {
        return Ok(false);
    }
    let mut later = false;
    sealed::each_row(view, |row| later |= rows::version(&row.sealed) == Some(rows::VERSION))?;
    Ok(!later)
}

/// Seals every row anew that opens as one of version 1, and makes the first manifest. A row that does not open stays as it is.
fn seal_anew(tx: &Tx<'_>, keys: &Keys) -> Result<(), StoreError> {
    let anew = |table: &str, id: i64, place: &RowPlace, sealed: &[u8]| {
        let plain = rows::open_version_1(keys, table, &id.to_be_bytes(), sealed).ok()?;
        Some(rows::seal(keys, place, &plain))
    };
    for row in table::patient::all(tx)? {
        let new = anew("patient", row.id, &sealed::patient_place(row.id), &row.sealed);
        new.map_or(Ok(()), |new| table::patient::update(tx, row.id, &new))?;
    }
    for row in table::issued::all(tx)? {
        let new = anew("issued", row.id, &sealed::issued_place(row.id, row.patient, row.revision), &row.sealed);
        new.map_or(Ok(()), |new| table::issued::update(tx, row.id, &new))?;
    }
    for row in table::received::all(tx)? {
        let place = sealed::received_place(row.id, row.patient, &row.log, row.counter);
        let new = anew("received", row.id, &place, &row.sealed);
        new.map_or(Ok(()), |new| table::received::update(tx, row.id, &new))?;
    }
    for (patient, old) in table::draft::all(tx)? {
        let new = anew("draft", patient, &sealed::draft_place(patient), &old);
        new.map_or(Ok(()), |new| table::draft::put(tx, patient, &new))?;
    }
    if let Some(old) = table::norms::get(tx)? {
        let new = anew("norms", table::norms::ID, &sealed::norms_place(), &old);
        new.map_or(Ok(()), |new| table::norms::put(tx, &new))?;
    }
    sealed::put_manifest(tx, keys, &sealed::manifest_of_all(keys, tx)?)
}

/// Compares the rows with the manifest; the second result is what rows were found.
fn check(view: &View<'_>, keys: &Keys) -> Result<(ChangedOutside, Manifest), StoreError> {
    let found = sealed::manifest_of_all(keys, view)?;
    let manifest = match sealed::stored_manifest(keys, view)? {
        Ok(Some(manifest)) => manifest,
        Ok(None) | Err(Unreadable) => return Ok((ChangedOutside { rows: BTreeMap::new(), manifest: true }, found)),
    };
    let mut changed = manifest.differences(&found);
    if !changed.is_empty() {
        let mut closed: BTreeMap<i64, u32> = BTreeMap::new();
        sealed::each_row(view, |row| {
            if changed.contains_key(&row.patient) && rows::open(keys, &row.place, &row.sealed).is_err() {
                *closed.entry(row.patient).or_default() += 1;
            }
        })?;
        changed.iter_mut().for_each(|(patient, number)| *number = closed.get(patient).copied().unwrap_or(0).max(*number));
    }
    Ok((ChangedOutside { rows: changed, manifest: manifest.is_made_anew() }, found))
}
