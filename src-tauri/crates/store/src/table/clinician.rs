//! Further clinicians of a clinic, each with the clinic's keys encrypted under a passphrase of their own. The first clinician's are in
//! [`super::keys`].

use crate::{StoreError, Tx, View};
use rusqlite::Row;

pub(crate) const SQL: &str = "\
CREATE TABLE clinician (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL UNIQUE CHECK (length(name) > 0),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// A clinician's row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Clinician {
    /// The row's id. Never used twice.
    pub id: i64,
    /// The name that is typed to unlock; whoever has the database can read it.
    pub name: String,
    /// The encrypted keys.
    pub sealed: Vec<u8>,
}

/// Adds a clinician. A name that is there already is a [`StoreError::Conflict`].
pub fn insert(tx: &Tx<'_>, name: &str, sealed: &[u8]) -> Result<i64, StoreError> {
    let id = tx.next_id("clinician")?;
    tx.sql().prepare_cached("INSERT INTO clinician (id, name, sealed) VALUES (?1, ?2, ?3)")?.execute((id, name, sealed))?;
    Ok(id)
}

/// All of them, the oldest first.
pub fn all(view: &View<'_>) -> Result<Vec<Clinician>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, name, sealed FROM clinician ORDER BY id")?;
    Ok(query.query_map([], read)?.collect::<Result<_, _>>()?)
}

/// Replaces a clinician's encrypted keys. Call [`crate::Store::settle`] afterwards, so that the old form is removed from all files.
pub fn replace(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE clinician SET sealed = ?2 WHERE id = ?1")?.execute((id, sealed))? {
        0 => Err(StoreError::NoRow { table: "clinician", id }),
        _ => Ok(()),
    }
}

/// Removes a clinician. Call [`crate::Store::settle`] afterwards.
pub fn remove(tx: &Tx<'_>, id: i64) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("DELETE FROM clinician WHERE id = ?1")?.execute([id])? {
        0 => Err(StoreError::NoRow { table: "clinician", id }),
        _ => Ok(()),
    }
}

fn read(row: &Row<'_>) -> rusqlite::Result<Clinician> {
    Ok(Clinician { id: row.get(0)?, name: row.get(1)?, sealed: row.get(2)? })
}
