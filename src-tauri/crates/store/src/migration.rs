//! The schema's versions, in order. A step is never changed once a file of it may exist; a new one is added below.

use crate::StoreError;
use crate::table;
use rusqlite::{Connection, Transaction};

/// One version's step: the tables' own SQL, in this order, a table before those that refer to it.
type Step = &'static [&'static str];

const STEPS: &[Step] = &[&[
    table::setting::SQL,
    table::log::SQL,
    table::card::SQL,
    table::entry::SQL,
    table::keys::SQL,
    table::patient::SQL,
    table::issued::SQL,
    table::received::SQL,
]];

/// The schema version that this program writes.
pub const LATEST: u32 = STEPS.len() as u32;

/// Brings a database to [`LATEST`]: all missing steps or, on an error, none.
pub(crate) fn migrate(connection: &mut Connection) -> Result<(), StoreError> {
    apply(connection, STEPS)
}

/// Empties the database: every table goes and is made anew, in one transaction. The triggers that keep the log
/// append-only do not stand in the way, because dropping a table fires none.
pub(crate) fn raze(connection: &mut Connection) -> Result<(), StoreError> {
    let tx = Transaction::new(connection, rusqlite::TransactionBehavior::Immediate)?;
    for name in tables(&tx)? {
        tx.execute_batch(&format!("DROP TABLE \"{name}\""))?;
    }
    run(&tx, STEPS)?;
    tx.commit()?;
    Ok(())
}

/// The names of all tables, the youngest first, so that none goes before those that refer to it.
pub(crate) fn tables(connection: &Connection) -> Result<Vec<String>, StoreError> {
    let mut query = connection.prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY rowid DESC",
    )?;
    let names = query
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    Ok(names)
}

fn apply(connection: &mut Connection, steps: &[Step]) -> Result<(), StoreError> {
    let tx = Transaction::new(connection, rusqlite::TransactionBehavior::Immediate)?;
    let done: u32 = tx.pragma_query_value(None, "user_version", |row| row.get(0))?;
    let missing = steps.get(done as usize..).unwrap_or_default();
    if !missing.is_empty() {
        run(&tx, missing)?;
        tx.pragma_update(None, "user_version", steps.len() as u32)?;
        tx.commit()?;
    }
    Ok(())
}

fn run(tx: &Transaction<'_>, steps: &[Step]) -> Result<(), StoreError> {
    for sql in steps.iter().copied().flatten() {
        tx.execute_batch(sql)?;
    }
    Ok(())
}
