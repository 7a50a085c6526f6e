//! The log: events in the order in which they were logged. Append-only; only [`crate::Store::erase`] deletes it.

use crate::{StoreError, Tx, View};
use rusqlite::Row;
use std::ops::Range;

pub(crate) const SQL: &str = "\
CREATE TABLE entry (
    n INTEGER NOT NULL PRIMARY KEY CHECK (n BETWEEN 1 AND 4294967295),
    plan BLOB NOT NULL,
    at_ms INTEGER NOT NULL,
    offset_s INTEGER NOT NULL,
    payload BLOB NOT NULL
) STRICT;
CREATE INDEX entry_by_time ON entry (at_ms);
CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER entry_is_not_removed BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;";

/// An entry to append.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NewEntry<'a> {
    /// The plan that it belongs to.
    pub plan: &'a [u8],
    /// When it was made, in milliseconds since 1970-01-01T00:00:00Z.
    pub at_ms: i64,
    /// Offset of the wall clock from UTC at that time, in seconds.
    pub offset_s: i32,
    /// The event, encoded.
    pub payload: &'a [u8],
}

/// An entry of the log.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// Its number, counted from 1 without a gap.
    pub n: u32,
    /// The plan that it belongs to.
    pub plan: Vec<u8>,
    /// When it was made, in milliseconds since 1970-01-01T00:00:00Z. The order is that of `n`, because clocks may be set back.
    pub at_ms: i64,
    /// Offset of the wall clock from UTC at that time, in seconds.
    pub offset_s: i32,
    /// The event, encoded.
    pub payload: Vec<u8>,
}

const COLUMNS: &str = "n, plan, at_ms, offset_s, payload";

/// Appends an entry and returns its number.
pub fn append(tx: &Tx<'_>, entry: &NewEntry<'_>) -> Result<u32, StoreError> {
    let NewEntry { plan, at_ms, offset_s, payload } = entry;
    let mut append = tx.sql().prepare_cached(
        "INSERT INTO entry (n, plan, at_ms, offset_s, payload)
         VALUES ((SELECT coalesce(max(n), 0) + 1 FROM entry), ?1, ?2, ?3, ?4) RETURNING n",
    )?;
    Ok(append.query_row((plan, at_ms, offset_s, payload), |row| row.get(0))?)
}

/// All entries, in order.
pub fn all(view: &View<'_>) -> Result<Vec<Entry>, StoreError> {
    after(view, 0)
}

/// The entries with a number above `n`, in order.
pub fn after(view: &View<'_>, n: u32) -> Result<Vec<Entry>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM entry WHERE n > ?1 ORDER BY n");
    Ok(view.sql().prepare_cached(&sql)?.query_map([n], read)?.collect::<Result<_, _>>()?)
}

/// The entries made within the range, in milliseconds since 1970-01-01T00:00:00Z, the end excluded; in order.
pub fn within(view: &View<'_>, ms: Range<i64>) -> Result<Vec<Entry>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM entry WHERE at_ms >= ?1 AND at_ms < ?2 ORDER BY n");
    Ok(view.sql().prepare_cached(&sql)?.query_map([ms.start, ms.end], read)?.collect::<Result<_, _>>()?)
}

/// The number of entries, which is also the number of the last one.
pub fn count(view: &View<'_>) -> Result<u32, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT coalesce(max(n), 0) FROM entry")?;
    Ok(query.query_row([], |row| row.get(0))?)
}

fn read(row: &Row<'_>) -> rusqlite::Result<Entry> {
    Ok(Entry { n: row.get(0)?, plan: row.get(1)?, at_ms: row.get(2)?, offset_s: row.get(3)?, payload: row.get(4)? })
}
