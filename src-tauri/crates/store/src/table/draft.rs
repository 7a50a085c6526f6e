//! Encrypted drafts of plans that the clinic is still editing: at most one for each patient.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE draft (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// A patient's encrypted draft, if there is one. The encryption is bound to the patient's row.
pub fn get(view: &View<'_>, patient: i64) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM draft WHERE patient = ?1")?;
    Ok(query.query_row([patient], |row| row.get(0)).optional()?)
}

/// All encrypted drafts, with the patient's row, ordered by it.
pub fn all(view: &View<'_>) -> Result<Vec<(i64, Vec<u8>)>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT patient, sealed FROM draft ORDER BY patient")?;
    Ok(query.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<_, _>>()?)
}

/// Stores a draft in place of the previous one. A patient who does not exist is a [`StoreError::Conflict`].
pub fn put(tx: &Tx<'_>, patient: i64, sealed: &[u8]) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO draft (patient, sealed) VALUES (?1, ?2) ON CONFLICT (patient) DO UPDATE SET sealed = excluded.sealed",
    )?;
    put.execute((patient, sealed))?;
    Ok(())
}

/// Deletes a draft, if there is one. Call [`crate::Store::settle`] afterwards, so that it is removed from the write-ahead log too.
pub fn remove(tx: &Tx<'_>, patient: i64) -> Result<(), StoreError> {
    tx.sql().prepare_cached("DELETE FROM draft WHERE patient = ?1")?.execute([patient])?;
    Ok(())
}
