//! Encrypted sets of the clinic: what it prescribes often, each in a row of its own. What a row is about is
//! in its encrypted bytes alone.

use crate::{StoreError, Tx, View};

pub(crate) const SQL: &str = "\
CREATE TABLE plan_set (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;";

/// A row, with the id that its encryption is bound to. Never used twice.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// The row's id.
    pub id: i64,
    /// The encrypted set.
    pub sealed: Vec<u8>,
}

/// Stores a set: `seal` gets the id that the row will have.
pub fn insert<E: From<StoreError>>(tx: &Tx<'_>, seal: impl FnOnce(i64) -> Result<Vec<u8>, E>) -> Result<i64, E> {
    let id = tx.next_id("plan_set")?;
    let sealed = seal(id)?;
    keep(tx, id, &sealed)?;
    Ok(id)
}

fn keep(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    tx.sql().prepare_cached("INSERT INTO plan_set (id, sealed) VALUES (?1, ?2)")?.execute((id, sealed))?;
    Ok(())
}

/// All rows, ordered by id.
pub fn all(view: &View<'_>) -> Result<Vec<Row>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, sealed FROM plan_set ORDER BY id")?;
    Ok(query.query_map([], |row| Ok(Row { id: row.get(0)?, sealed: row.get(1)? }))?.collect::<Result<_, _>>()?)
}

/// Replaces the encrypted bytes of a row.
pub fn update(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE plan_set SET sealed = ?2 WHERE id = ?1")?.execute((id, sealed))? {
        0 => Err(StoreError::NoRow { table: "plan_set", id }),
        _ => Ok(()),
    }
}

/// Deletes a row, if there is one. Call [`crate::Store::settle`] afterwards, so that it is removed from the write-ahead log too.
pub fn remove(tx: &Tx<'_>, id: i64) -> Result<(), StoreError> {
    tx.sql().prepare_cached("DELETE FROM plan_set WHERE id = ?1")?.execute([id])?;
    Ok(())
}
