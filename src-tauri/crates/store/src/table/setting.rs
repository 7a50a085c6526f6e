//! Settings by name: the folder's role, the language, and the like.

use crate::{StoreError, Tx, View};
use rusqlite::OptionalExtension;
use std::collections::BTreeMap;

pub(crate) const SQL: &str = "\
CREATE TABLE setting (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;";

/// The setting's value, if it is set.
pub fn get(view: &View<'_>, name: &str) -> Result<Option<String>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT value FROM setting WHERE name = ?1")?;
    Ok(query.query_row([name], |row| row.get(0)).optional()?)
}

/// All settings.
pub fn all(view: &View<'_>) -> Result<BTreeMap<String, String>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT name, value FROM setting")?;
    Ok(query.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<_, _>>()?)
}

/// Sets a value, replacing the previous one.
pub fn put(tx: &Tx<'_>, name: &str, value: &str) -> Result<(), StoreError> {
    let mut put = tx.sql().prepare_cached(
        "INSERT INTO setting (name, value) VALUES (?1, ?2) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
    )?;
    put.execute([name, value])?;
    Ok(())
}

/// Deletes a setting, if it is set.
pub fn remove(tx: &Tx<'_>, name: &str) -> Result<(), StoreError> {
    tx.sql().prepare_cached("DELETE FROM setting WHERE name = ?1")?.execute([name])?;
    Ok(())
}
