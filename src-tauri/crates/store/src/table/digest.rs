//! What the clinic's list says of a patient, encrypted: one row for each patient of whom it was made. It can be made again from the other
//! rows, and says itself for which state of them it holds; so the manifest does not cover it.

use crate::{StoreError, Tx, View};

pub(crate) const SQL: &str = "\
CREATE TABLE digest (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// The encrypted digests of all patients, with the patient's row, ordered by it.
pub fn all(view: &View<'_>) -> Result<Vec<(i64, Vec<u8>)>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT patient, sealed FROM digest ORDER BY patient")?;
    Ok(query.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<_, _>>()?)
}

/// Stores a patient's digest in place of the previous one. A patient who does not exist is a [`StoreError::Conflict`].
pub fn put(tx: &Tx<'_>, patient: i64, sealed: &[u8]) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO digest (patient, sealed) VALUES (?1, ?2) ON CONFLICT (patient) DO UPDATE SET sealed = excluded.sealed",
    )?;
    put.execute((patient, sealed))?;
    Ok(())
}
