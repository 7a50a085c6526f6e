//! When a patient's case was closed and reopened, encrypted: one row for each patient whose case was ever closed.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE patient_case (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// A patient's encrypted row, if the case was ever closed. The encryption is bound to the patient's row.
pub fn get(view: &View<'_>, patient: i64) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM patient_case WHERE patient = ?1")?;
    Ok(query.query_row([patient], |row| row.get(0)).optional()?)
}

/// The encrypted rows of all patients, with the patient's row, ordered by it.
pub fn all(view: &View<'_>) -> Result<Vec<(i64, Vec<u8>)>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT patient, sealed FROM patient_case ORDER BY patient")?;
    Ok(query.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<_, _>>()?)
}

/// Stores a patient's row in place of the previous one. A patient who does not exist is a [`StoreError::Conflict`].
pub fn put(tx: &Tx<'_>, patient: i64, sealed: &[u8]) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO patient_case (patient, sealed) VALUES (?1, ?2)
         ON CONFLICT (patient) DO UPDATE SET sealed = excluded.sealed",
    )?;
    put.execute((patient, sealed))?;
    Ok(())
}
