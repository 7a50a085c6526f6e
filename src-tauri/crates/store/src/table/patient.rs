//! The clinic's patients, encrypted.

use crate::{StoreError, Tx, View};
use rusqlite::{OptionalExtension, Row};

pub(crate) const SQL: &str = "\
CREATE TABLE patient (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// A patient's row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Patient {
    /// The row's id, which the encryption is bound to. Never used twice.
    pub id: i64,
    /// The encrypted patient, which `vault` decrypts.
    pub sealed: Vec<u8>,
}

/// Adds a patient in one step: `seal` gets the id that the row will have, and its result is stored under that id.
pub fn insert<E: From<StoreError>>(tx: &Tx<'_>, seal: impl FnOnce(i64) -> Result<Vec<u8>, E>) -> Result<i64, E> {
    let id = tx.next_id("patient")?;
    let sealed = seal(id)?;
    keep(tx, id, &sealed)?;
    Ok(id)
}

fn keep(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    tx.sql().prepare_cached("INSERT INTO patient (id, sealed) VALUES (?1, ?2)")?.execute((id, sealed))?;
    Ok(())
}

/// Replaces the encrypted bytes of a patient.
pub fn update(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE patient SET sealed = ?2 WHERE id = ?1")?.execute((id, sealed))? {
        0 => Err(StoreError::NoRow { table: "patient", id }),
        _ => Ok(()),
    }
}

/// Removes a patient and everything issued to or received from them. Call [`crate::Store::settle`] afterwards, so that they are
/// removed from the write-ahead log too.
pub fn remove(tx: &Tx<'_>, id: i64) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("DELETE FROM patient WHERE id = ?1")?.execute([id])? {
        0 => Err(StoreError::NoRow { table: "patient", id }),
        _ => Ok(()),
    }
}

/// The patient with this id, if there is one.
pub fn get(view: &View<'_>, id: i64) -> Result<Option<Patient>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, sealed FROM patient WHERE id = ?1")?;
    Ok(query.query_row([id], read).optional()?)
}

/// All patients, the oldest first.
pub fn all(view: &View<'_>) -> Result<Vec<Patient>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, sealed FROM patient ORDER BY id")?;
    Ok(query.query_map([], read)?.collect::<Result<_, _>>()?)
}

fn read(row: &Row<'_>) -> rusqlite::Result<Patient> {
    Ok(Patient { id: row.get(0)?, sealed: row.get(1)? })
}
