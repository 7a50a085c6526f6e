//! What rows the clinic's encrypted tables have: one row, which the caller encrypts.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE manifest (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// The row's id, which the encryption is bound to.
pub const ID: i64 = 1;

/// The encrypted manifest, if there is one.
pub fn get(view: &View<'_>) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT sealed FROM manifest")?;
    Ok(query.query_row([], |row| row.get(0)).optional()?)
}

/// Stores a manifest in place of the previous one, in the transaction that changes the rows.
pub fn put(tx: &Tx<'_>, sealed: &[u8]) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO manifest (one, sealed) VALUES (1, ?1) ON CONFLICT (one) DO UPDATE SET sealed = excluded.sealed",
    )?;
    put.execute([sealed])?;
    Ok(())
}
