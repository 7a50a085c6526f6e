//! The single row by which an opened database is told from a copy of it: a random id and a count of what was written.

use crate::{StoreError, Tx, View};
use rusqlite::{Connection, OptionalExtension};

pub(crate) const SQL: &str = "\
CREATE TABLE origin (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    id BLOB NOT NULL CHECK (length(id) = 16),
    generation INTEGER NOT NULL CHECK (generation >= 0)
) STRICT;";

/// Which database this is, and how often it was written to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Origin {
    /// A random id. A copy that is used by itself gets another one.
    pub id: [u8; 16],
    /// The number of transactions since the first id was given, 0 or more.
    pub generation: i64,
}

/// The row, if an id was ever given.
pub fn get(view: &View<'_>) -> Result<Option<Origin>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, generation FROM origin")?;
    Ok(query.query_row([], |row| Ok(Origin { id: row.get(0)?, generation: row.get(1)? })).optional()?)
}

/// Gives the database another id; the count goes on.
pub(crate) fn rename(tx: &Tx<'_>, id: &[u8; 16]) -> Result<(), StoreError> {
    tx.sql()
        .prepare_cached(
            "INSERT INTO origin (one, id, generation) VALUES (1, ?1, 0) ON CONFLICT (one) DO UPDATE SET id = excluded.id",
        )?
        .execute([id])?;
    Ok(())
}

/// Counts a transaction that is about to be committed; returns the new count, or `None` without an id.
pub(crate) fn count(connection: &Connection) -> Result<Option<i64>, StoreError> {
    let mut count = connection.prepare_cached("UPDATE origin SET generation = generation + 1 RETURNING generation")?;
    Ok(count.query_row([], |row| row.get(0)).optional()?)
}
