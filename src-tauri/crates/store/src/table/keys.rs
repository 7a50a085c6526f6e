//! The clinic's keys: one row, sealed under its passphrase by the caller.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE keys (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// The sealed keys, if there are any yet.
pub fn get(view: &View<'_>) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM keys")?;
    Ok(query.query_row([], |row| row.get(0)).optional()?)
}

/// Keeps the first keys. If there are some already, it is a [`StoreError::Conflict`]: losing them loses every row that
/// they open.
pub fn insert(tx: &Tx<'_>, sealed: &[u8]) -> Result<(), StoreError> {
    tx.sql().prepare_cached("INSERT INTO keys (one, sealed) VALUES (1, ?1)")?.execute([sealed])?;
    Ok(())
}

/// Replaces the keys, say after a change of the passphrase. Call [`crate::Store::settle`] afterwards, so that the old
/// form is nowhere in the files.
pub fn replace(tx: &Tx<'_>, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE keys SET sealed = ?1")?.execute([sealed])? {
        0 => Err(StoreError::NoRow { table: "keys", id: 1 }),
        _ => Ok(()),
    }
}
