//! The summaries that the clinic received, encrypted: each export of each log of a patient once.

use crate::{StoreError, Tx, View};
use rusqlite::{OptionalExtension, Row};

pub(crate) const SQL: &str = "\
CREATE TABLE received (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    patient INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    log BLOB NOT NULL,
    counter INTEGER NOT NULL CHECK (counter >= 0),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0),
    UNIQUE (patient, log, counter)
) STRICT;";

/// A received summary.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Received {
    /// The row's id, which the encryption is bound to. Never used twice.
    pub id: i64,
    /// The patient's row.
    pub patient: i64,
    /// The id of the log that it summarises.
    pub log: Vec<u8>,
    /// The export's number within that log.
    pub counter: u32,
    /// The encrypted summary, which `vault` decrypts.
    pub sealed: Vec<u8>,
}

const COLUMNS: &str = "id, patient, log, counter, sealed";

/// Stores a summary: `seal` gets the id that the row will have. A summary that is stored already (check with [`find`] first), or a
/// patient who does not exist, is a [`StoreError::Conflict`].
pub fn insert<E: From<StoreError>>(
    tx: &Tx<'_>,
    patient: i64,
    log: &[u8],
    counter: u32,
    seal: impl FnOnce(i64) -> Result<Vec<u8>, E>,
) -> Result<i64, E> {
    let id = tx.next_id("received")?;
    let sealed = seal(id)?;
    keep(tx, &Received { id, patient, log: log.into(), counter, sealed })?;
    Ok(id)
}

fn keep(tx: &Tx<'_>, row: &Received) -> Result<(), StoreError> {
    let Received { id, patient, log, counter, sealed } = row;
    tx.sql()
        .prepare_cached(&format!("INSERT INTO received ({COLUMNS}) VALUES (?1, ?2, ?3, ?4, ?5)"))?
        .execute((id, patient, log, counter, sealed))?;
    Ok(())
}

/// The summary of this export, if it was received before.
pub fn find(view: &View<'_>, patient: i64, log: &[u8], counter: u32) -> Result<Option<Received>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM received WHERE patient = ?1 AND log = ?2 AND counter = ?3");
    Ok(view.sql().prepare_cached(&sql)?.query_row((patient, log, counter), read).optional()?)
}

/// The summaries received from a patient, ordered by log and number of the export.
pub fn of_patient(view: &View<'_>, patient: i64) -> Result<Vec<Received>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM received WHERE patient = ?1 ORDER BY log, counter");
    Ok(view.sql().prepare_cached(&sql)?.query_map([patient], read)?.collect::<Result<_, _>>()?)
}

/// All summaries, ordered by id.
pub fn all(view: &View<'_>) -> Result<Vec<Received>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM received ORDER BY id");
    Ok(view.sql().prepare_cached(&sql)?.query_map([], read)?.collect::<Result<_, _>>()?)
}

/// Shows `look` all summaries, ordered by id, one after the other: together they may be larger than the memory that is there.
pub fn each(view: &View<'_>, mut look: impl FnMut(Received)) -> Result<(), StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM received ORDER BY id");
    let mut query = view.sql().prepare_cached(&sql)?;
    for row in query.query_map([], read)? {
        look(row?);
    }
    Ok(())
}

/// Replaces the encrypted bytes of a summary.
pub fn update(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE received SET sealed = ?2 WHERE id = ?1")?.execute((id, sealed))? {
        0 => Err(StoreError::NoRow { table: "received", id }),
        _ => Ok(()),
    }
}

fn read(row: &Row<'_>) -> rusqlite::Result<Received> {
    Ok(Received { id: row.get(0)?, patient: row.get(1)?, log: row.get(2)?, counter: row.get(3)?, sealed: row.get(4)? })
}
