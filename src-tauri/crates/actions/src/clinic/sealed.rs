//! Writes the clinic's sealed rows, and with each write, in the same transaction, the manifest of what rows there are.

use super::lock;
use crate::{ActionResult, DataFolder, refuse};
use exercises::id::LogId;
use std::collections::BTreeSet;
use store::table::issued::Issued;
use store::table::received::Received;
use store::{StoreError, Tx, View, table};
use vault::Keys;
use vault::manifest::{Manifest, RowSums};
use vault::rows::{self, RowPlace};
use wire::Failure;

/// In the manifest, what belongs to no patient.
pub(super) const NOBODY: i64 = 0;

/// The place of a patient's row.
pub(super) fn patient_place(id: i64) -> RowPlace {
    RowPlace::new("patient", &[&id.to_be_bytes()])
}

/// The place of an issued card's row.
pub(super) fn issued_place(id: i64, patient: i64, revision: u32) -> RowPlace {
    RowPlace::new("issued", &[&id.to_be_bytes(), &patient.to_be_bytes(), &revision.to_be_bytes()])
}

/// The place of a received summary's row.
pub(super) fn received_place(id: i64, patient: i64, log: &[u8], counter: u32) -> RowPlace {
    RowPlace::new("received", &[&id.to_be_bytes(), &patient.to_be_bytes(), log, &counter.to_be_bytes()])
}

/// The place of a patient's draft.
pub(super) fn draft_place(patient: i64) -> RowPlace {
    RowPlace::new("draft", &[&patient.to_be_bytes()])
}

/// The place of the list of a patient's devices.
pub(super) fn device_place(patient: i64) -> RowPlace {
    RowPlace::new("device", &[&patient.to_be_bytes()])
}

/// The place of the clinic's table of norms.
pub(super) fn norms_place() -> RowPlace {
    RowPlace::new("norms", &[&table::norms::ID.to_be_bytes()])
}

/// The place of an own exercise's row.
pub(super) fn own_place(id: i64) -> RowPlace {
    RowPlace::new("own_exercise", &[&id.to_be_bytes()])
}

/// The place of a set's row.
pub(super) fn set_place(id: i64) -> RowPlace {
    RowPlace::new("plan_set", &[&id.to_be_bytes()])
}

/// The place of an entry of a patient's visits.
pub(super) fn visit_place(id: i64, patient: i64) -> RowPlace {
    RowPlace::new("visit", &[&id.to_be_bytes(), &patient.to_be_bytes()])
}

/// The place of what the list says of a patient.
pub(super) fn digest_place(patient: i64) -> RowPlace {
    RowPlace::new("digest", &[&patient.to_be_bytes()])
}

/// The place of when a patient's case was closed and reopened.
pub(super) fn case_place(patient: i64) -> RowPlace {
    RowPlace::new("patient_case", &[&patient.to_be_bytes()])
}

fn manifest_place() -> RowPlace {
    RowPlace::new("manifest", &[&table::manifest::ID.to_be_bytes()])
}

/// A sealed row as it is in the store.
pub(super) struct SealedRow {
    /// The patient's row that it belongs to, or [`NOBODY`].
    pub(super) patient: i64,
    /// Its place.
    pub(super) place: RowPlace,
    /// Its bytes.
    pub(super) sealed: Vec<u8>,
}

/// Shows `look` all sealed rows that the manifest covers, one after the other.
pub(super) fn each_row(view: &View<'_>, mut look: impl FnMut(SealedRow)) -> Result<(), StoreError> {
    let mut row = |patient, place, sealed| look(SealedRow { patient, place, sealed });
    table::patient::all(view)?.into_iter().for_each(|one| row(one.id, patient_place(one.id), one.sealed));
    for Issued { id, patient, revision, sealed } in table::issued::all(view)? {
        row(patient, issued_place(id, patient, revision), sealed);
    }
    table::received::each(view, |Received { id, patient, log, counter, sealed }| {
        row(patient, received_place(id, patient, &log, counter), sealed);
    })?;
    table::draft::all(view)?.into_iter().for_each(|(patient, sealed)| row(patient, draft_place(patient), sealed));
    table::device::all(view)?.into_iter().for_each(|(patient, sealed)| row(patient, device_place(patient), sealed));
    table::norms::get(view)?.into_iter().for_each(|sealed| row(NOBODY, norms_place(), sealed));
    table::own_exercise::all(view)?.into_iter().for_each(|one| row(NOBODY, own_place(one.id), one.sealed));
    table::plan_set::all(view)?.into_iter().for_each(|one| row(NOBODY, set_place(one.id), one.sealed));
    for table::visit::Row { id, patient, sealed } in table::visit::all(view)? {
        row(patient, visit_place(id, patient), sealed);
    }
    table::patient_case::all(view)?.into_iter().for_each(|(patient, sealed)| row(patient, case_place(patient), sealed));
    Ok(())
}

/// The manifest of the rows that are there.
pub(super) fn manifest_of_all(keys: &Keys, view: &View<'_>) -> Result<Manifest, StoreError> {
    let (sums, mut manifest) = (RowSums::of(keys), Manifest::default());
    each_row(view, |row| manifest.add(row.patient, sums.row(&row.place, &row.sealed)))?;
    Ok(manifest)
}

/// The stored manifest: `Ok(None)` if there is none, `Err` if there is one that does not open.
pub(super) fn stored_manifest(keys: &Keys, view: &View<'_>) -> Result<Result<Option<Manifest>, Unreadable>, StoreError> {
    let Some(sealed) = table::manifest::get(view)? else { return Ok(Ok(None)) };
    let plain = rows::open(keys, &manifest_place(), &sealed).ok();
    Ok(plain.and_then(|plain| Manifest::from_bytes(&plain)).map(Some).ok_or(Unreadable))
}

/// The manifest was changed from outside.
pub(super) struct Unreadable;

/// Stores a manifest.
pub(super) fn put_manifest(tx: &Tx<'_>, keys: &Keys, manifest: &Manifest) -> Result<(), StoreError> {
    table::manifest::put(tx, &rows::seal(keys, &manifest_place(), &manifest.to_bytes()))
}

/// Seals rows during one transaction, and keeps account of them.
pub(super) struct Sealer<'k> {
    keys: &'k Keys,
    sums: RowSums,
    manifest: Manifest,
    /// Whose rows were written or removed.
    touched: BTreeSet<i64>,
}

impl Sealer<'_> {
    /// Seals a new row of this patient.
    pub(super) fn seal(&mut self, patient: i64, place: &RowPlace, plain: &[u8]) -> Vec<u8> {
        let sealed = rows::seal(self.keys, place, plain);
        self.manifest.add(patient, self.sums.row(place, &sealed));
        self.touched.insert(patient);
        sealed
    }

    /// Seals a row of this patient in place of the one with the bytes `before`, if there was one.
    pub(super) fn replace(&mut self, patient: i64, place: &RowPlace, before: Option<&[u8]>, plain: &[u8]) -> Vec<u8> {
        self.removed(patient, place, before);
        self.seal(patient, place, plain)
    }

    /// Notes that the row with these bytes is removed, if there was one.
    pub(super) fn removed(&mut self, patient: i64, place: &RowPlace, before: Option<&[u8]>) {
        if let Some(sealed) = before {
            self.manifest.remove(patient, self.sums.row(place, sealed));
            self.touched.insert(patient);
        }
    }

    /// Notes that all rows of a patient are removed.
    pub(super) fn forget(&mut self, patient: i64) {
        self.manifest.forget(patient);
        self.touched.insert(patient);
    }
}

/// Does `work`, which changes sealed rows, and stores the manifest with it, both or neither. If the manifest was removed or changed
/// from outside, the new one says that it was made anew.
pub(super) fn change<T>(
    folder: &mut DataFolder,
    work: impl FnOnce(&Tx<'_>, &mut Sealer<'_>) -> Result<T, StoreError>,
) -> ActionResult<T> {
    lock::unlocked_keys(folder)?;
    let dir = folder.dir();
    let DataFolder { home, keys, .. } = folder;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let done = home.store_mut().transaction(|tx| {
        let manifest = match stored_manifest(keys, tx)? {
            Ok(Some(manifest)) => manifest,
            Ok(None) | Err(Unreadable) => manifest_of_all(keys, tx)?.made_anew(),
        };
        let mut sealer = Sealer { keys, sums: RowSums::of(keys), manifest: manifest.clone(), touched: BTreeSet::new() };
        let done = work(tx, &mut sealer)?;
        put_manifest(tx, keys, &sealer.manifest)?;
        Ok::<_, StoreError>((done, sealer.touched, manifest, sealer.manifest))
    });
    let (done, touched, was, is) = done.map_err(refuse::store(&dir))?;
    folder.known_lines.borrow_mut().forget(&touched, &was, &is);
    Ok(done)
}

/// The log of a received row; `None` if it is no log's id.
pub(super) fn log_of(row: &Received) -> Option<LogId> {
    Some(LogId(row.log.as_slice().try_into().ok()?))
}
