//! What was found at visits, encrypted: one row for each entry, never changed. What an entry says is in its encrypted bytes alone.

use crate::{StoreError, Tx, View};

pub(crate) const SQL: &str = "\
CREATE TABLE visit (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    patient INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;
CREATE INDEX visit_of_patient ON visit (patient);
CREATE TRIGGER visit_is_not_changed BEFORE UPDATE ON visit
BEGIN SELECT RAISE(ABORT, 'visits are append-only'); END;";

/// An entry's row, with the id that its encryption is bound to. Never used twice.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// The row's id, which is the entry's number.
    pub id: i64,
    /// The patient's row.
    pub patient: i64,
    /// The encrypted entry.
    pub sealed: Vec<u8>,
}

/// Stores an entry: `seal` gets the id that the row will have. A patient who does not exist is a [`StoreError::Conflict`].
pub fn insert<E: From<StoreError>>(
    tx: &Tx<'_>,
    patient: i64,
    seal: impl FnOnce(i64) -> Result<Vec<u8>, E>,
) -> Result<i64, E> {
    let id = tx.next_id("visit")?;
    let sealed = seal(id)?;
    keep(tx, &Row { id, patient, sealed })?;
    Ok(id)
}

fn keep(tx: &Tx<'_>, Row { id, patient, sealed }: &Row) -> Result<(), StoreError> {
    let mut keep = tx.sql().prepare_cached("INSERT INTO visit (id, patient, sealed) VALUES (?1, ?2, ?3)")?;
    keep.execute((id, patient, sealed))?;
    Ok(())
}

/// A patient's entries, ordered by id.
pub fn of_patient(view: &View<'_>, patient: i64) -> Result<Vec<Row>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, patient, sealed FROM visit WHERE patient = ?1 ORDER BY id")?;
    Ok(query.query_map([patient], read)?.collect::<Result<_, _>>()?)
}

/// All entries, ordered by id.
pub fn all(view: &View<'_>) -> Result<Vec<Row>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, patient, sealed FROM visit ORDER BY id")?;
    Ok(query.query_map([], read)?.collect::<Result<_, _>>()?)
}

fn read(row: &rusqlite::Row<'_>) -> rusqlite::Result<Row> {
    Ok(Row { id: row.get(0)?, patient: row.get(1)?, sealed: row.get(2)? })
}
