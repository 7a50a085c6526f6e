//! The single row about this installation's log: its permanent id, and how often it was exported.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;

pub(crate) const SQL: &str = "\
CREATE TABLE log (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    id BLOB NOT NULL CHECK (length(id) > 0),
    exports INTEGER NOT NULL DEFAULT 0 CHECK (exports >= 0)
) STRICT;
CREATE TRIGGER log_keeps_its_id BEFORE UPDATE ON log WHEN NEW.id <> OLD.id OR NEW.exports <= OLD.exports
BEGIN SELECT RAISE(ABORT, 'a log keeps its id and counts its exports upwards'); END;
CREATE TRIGGER log_stays BEFORE DELETE ON log
BEGIN SELECT RAISE(ABORT, 'a log is not removed'); END;";

/// Begins the log with `id`, random bytes from the caller. A second log is a [`StoreError::Conflict`].
pub fn begin(tx: &Tx<'_>, id: &[u8]) -> Result<(), StoreError> {
    tx.sql().prepare_cached("INSERT INTO log (one, id) VALUES (1, ?1)")?.execute([id])?;
    Ok(())
}

/// The log's id, if one was begun.
pub fn id(view: &View<'_>) -> Result<Option<Vec<u8>>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id FROM log")?;
    Ok(query.query_row([], |row| row.get(0)).optional()?)
}

/// Counts an export and returns its number, from 1. It is higher than all before, so that the receiver knows which export is newer.
/// Without a log it is a [`StoreError::NoRow`].
pub fn next_export(tx: &Tx<'_>) -> Result<u32, StoreError> {
    let mut count = tx.sql().prepare_cached("UPDATE log SET exports = exports + 1 RETURNING exports")?;
    count.query_row([], |row| row.get(0)).optional()?.ok_or(StoreError::NoRow { table: "log", id: 1 })
}
