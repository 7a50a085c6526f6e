//! The devices that a patient's summaries came from, encrypted: one row for each patient of whom any summary was received.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE device (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// A patient's encrypted devices, if any are known. The encryption is bound to the patient's row.
pub fn get(view: &View<'_>, patient: i64) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM device WHERE patient = ?1")?;
    Ok(query.query_row([patient], |row| row.get(0)).optional()?)
}

/// The encrypted devices of all patients, with the patient's row, ordered by it.
pub fn all(view: &View<'_>) -> Result<Vec<(i64, Vec<u8>)>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT patient, sealed FROM device ORDER BY patient")?;
    Ok(query.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<_, _>>()?)
}

/// Stores a patient's devices in place of the previous ones. A patient who does not exist is a [`StoreError::Conflict`].
pub fn put(tx: &Tx<'_>, patient: i64, sealed: &[u8]) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO device (patient, sealed) VALUES (?1, ?2) ON CONFLICT (patient) DO UPDATE SET sealed = excluded.sealed",
    )?;
    put.execute((patient, sealed))?;
    Ok(())
}
