//! The versions of the schema, in order. A step is never changed once a database may have been made with it; new steps are added at
//! the end.

use crate::StoreError;
use crate::table;
use rusqlite::{Connection, Transaction};

/// The SQL of one version, executed in this order: a table comes before those that refer to it.
type Step = &'static [&'static str];

const STEPS: &[Step] = &[
    &[
        table::setting::SQL,
        table::log::SQL,
        table::card::SQL,
        table::entry::SQL,
        table::keys::SQL,
        table::patient::SQL,
        table::issued::SQL,
        table::received::SQL,
    ],
    &[table::norms::SQL],
    &[table::draft::SQL],
    &[table::origin::SQL, table::former_log::SQL],
    &[table::manifest::SQL, table::device::SQL],
    &[table::own_exercise::SQL, table::plan_set::SQL],
    &[table::visit::SQL],
    &[table::digest::SQL, table::patient_case::SQL, table::clinician::SQL],
];

/// The schema version that this program writes.
pub const LATEST: u32 = STEPS.len() as u32;

/// Upgrades a database to [`LATEST`]: all missing steps or, on an error, none.
pub(crate) fn migrate(connection: &mut Connection) -> Result<(), StoreError> {
    apply(connection, STEPS)
}

/// Empties the database: drops and creates every table in one transaction. The triggers that keep the log append-only do not prevent
/// this, because dropping a table fires none.
pub(crate) fn drop_all_tables(connection: &mut Connection) -> Result<(), StoreError> {
    let tx = Transaction::new(connection, rusqlite::TransactionBehavior::Immediate)?;
    for name in tables(&tx)? {
        tx.execute_batch(&format!("DROP TABLE \"{name}\""))?;
    }
    run(&tx, STEPS)?;
    tx.commit()?;
    Ok(())
}

/// The names of all tables, the newest first, so that no table is dropped before those that refer to it.
pub(crate) fn tables(connection: &Connection) -> Result<Vec<String>, StoreError> {
    let mut query = connection.prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY rowid DESC",
    )?;
    let names = query.query_map([], |row| row.get(0))?.collect::<Result<_, _>>()?;
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

#[cfg(test)]
mod tests {
    use super::*;

    const ONE: Step = &["CREATE TABLE one (x INTEGER) STRICT;"];
    const TWO: Step = &["CREATE TABLE two (x INTEGER) STRICT;", "INSERT INTO one (x) VALUES (2);"];
    const BROKEN: Step = &["CREATE TABLE three (x INTEGER) STRICT;", "INSERT INTO nowhere VALUES (1);"];

    fn version(connection: &Connection) -> usize {
        let version = connection.pragma_query_value(None, "user_version", |row| row.get::<_, i64>(0));
        usize::try_from(version.expect("a number")).expect("not negative")
    }

    fn memory() -> Connection {
        Connection::open_in_memory().expect("memory")
    }

    #[test]
    fn steps_run_once_each_and_in_order() {
        let mut connection = memory();
        apply(&mut connection, &[ONE]).expect("the first step");
        assert_eq!((version(&connection), tables(&connection)), (1, Ok(vec!["one".into()])));
        for _ in 0..2 {
            apply(&mut connection, &[ONE, TWO]).expect("the second step, then nothing");
            assert_eq!(version(&connection), 2);
            assert_eq!(tables(&connection), Ok(vec!["two".into(), "one".into()]));
        }
        let rows: i64 = connection.query_row("SELECT count(*) FROM one", [], |row| row.get(0)).expect("there");
        assert_eq!(rows, 1, "the second step ran once");
    }

    #[test]
    fn all_missing_steps_or_none() {
        let mut connection = memory();
        apply(&mut connection, &[ONE]).expect("the first step");
        apply(&mut connection, &[ONE, TWO, BROKEN]).expect_err("the third step is broken");
        assert_eq!((version(&connection), tables(&connection)), (1, Ok(vec!["one".into()])));
        let rows: i64 = connection.query_row("SELECT count(*) FROM one", [], |row| row.get(0)).expect("there");
        assert_eq!(rows, 0, "nor is there a row of the second step");
    }

    #[test]
    fn emptying_works_with_rows_that_refer_to_each_other() {
        let mut connection = memory();
        connection.pragma_update(None, "foreign_keys", true).expect("known");
        migrate(&mut connection).expect("our steps");
        connection
            .execute_batch(
                "INSERT INTO patient (id, sealed) VALUES (1, x'01');
                 INSERT INTO issued (patient, revision, sealed) VALUES (1, 1, x'01');
                 INSERT INTO entry VALUES (1, x'01', 0, 0, x'01');",
            )
            .expect("allowed");
        drop_all_tables(&mut connection).expect("everything is removed");
        for table in tables(&connection).expect("there") {
            let rows: i64 =
                connection.query_row(&format!("SELECT count(*) FROM {table}"), [], |row| row.get(0)).expect("there");
            assert_eq!(rows, 0, "{table}");
        }
        assert_eq!(version(&connection), LATEST as usize);
    }
}
