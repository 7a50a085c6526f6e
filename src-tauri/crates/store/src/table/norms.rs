//! The clinic's own table of norms: one row, which the caller encrypts.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE norms (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// The row's id, which the encryption is bound to.
pub const ID: i64 = 1;

/// The encrypted table, if there is one.
pub fn get(view: &View<'_>) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM norms")?;
    Ok(query.query_row([], |row| row.get(0)).optional()?)
}

/// Stores a table in place of the previous one.
pub fn put(tx: &Tx<'_>, sealed: &[u8]) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO norms (one, sealed) VALUES (1, ?1) ON CONFLICT (one) DO UPDATE SET sealed = excluded.sealed",
    )?;
    put.execute([sealed])?;
    Ok(())
}

/// Deletes the table, if there is one. Call [`crate::Store::settle`] afterwards, so that it is removed from the write-ahead log too.
pub fn remove(tx: &Tx<'_>) -> Result<(), StoreError> {
    tx.sql().prepare_cached("DELETE FROM norms")?.execute([])?;
    Ok(())
}
