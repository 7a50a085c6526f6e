//! The clinic's keys: one row, which the caller encrypts under the clinic's passphrase.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE keys (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// The encrypted keys, if there are any.
pub fn get(view: &View<'_>) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM keys")?;
    Ok(query.query_row([], |row| row.get(0)).optional()?)
}

/// Stores the first keys. If there are keys already, it is a [`StoreError::Conflict`]: losing them would lose every row that is
/// encrypted with them.
pub fn insert(tx: &Tx<'_>, sealed: &[u8]) -> Result<(), StoreError> {
    tx.sql().prepare_cached("INSERT INTO keys (one, sealed) VALUES (1, ?1)")?.execute([sealed])?;
    Ok(())
}

/// Replaces the keys, for example after the passphrase was changed. Call [`crate::Store::settle`] afterwards, so that the old form
/// is removed from all files.
pub fn replace(tx: &Tx<'_>, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE keys SET sealed = ?1")?.execute([sealed])? {
        0 => Err(StoreError::NoRow { table: "keys", id: 1 }),
        _ => Ok(()),
    }
}
