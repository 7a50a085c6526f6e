//! The cards that the clinic issued, encrypted.

use crate::{StoreError, Tx, View};
use rusqlite::Row;

pub(crate) const SQL: &str = "\
CREATE TABLE issued (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    patient INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    revision INTEGER NOT NULL CHECK (revision >= 0),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0),
    UNIQUE (patient, revision)
) STRICT;";

/// An issued card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Issued {
    /// The row's id, which the encryption is bound to. Never used twice.
    pub id: i64,
    /// The patient's row.
    pub patient: i64,
    /// The plan's revision.
    pub revision: u32,
    /// The encrypted card, which `vault` decrypts.
    pub sealed: Vec<u8>,
}

/// Stores a card: `seal` gets the id that the row will have. A revision that was issued to the patient before, or a patient who does
/// not exist, is a [`StoreError::Conflict`].
pub fn insert<E: From<StoreError>>(
    tx: &Tx<'_>,
    patient: i64,
    revision: u32,
    seal: impl FnOnce(i64) -> Result<Vec<u8>, E>,
) -> Result<i64, E> {
    let id = tx.next_id("issued")?;
    let sealed = seal(id)?;
    keep(tx, &Issued { id, patient, revision, sealed })?;
    Ok(id)
}

fn keep(tx: &Tx<'_>, row: &Issued) -> Result<(), StoreError> {
    let Issued { id, patient, revision, sealed } = row;
    tx.sql()
        .prepare_cached("INSERT INTO issued (id, patient, revision, sealed) VALUES (?1, ?2, ?3, ?4)")?
        .execute((id, patient, revision, sealed))?;
    Ok(())
}

/// The cards issued to a patient, ordered by revision.
pub fn of_patient(view: &View<'_>, patient: i64) -> Result<Vec<Issued>, StoreError> {
    let mut query = view
        .sql()
        .prepare_cached("SELECT id, patient, revision, sealed FROM issued WHERE patient = ?1 ORDER BY revision")?;
    Ok(query.query_map([patient], read)?.collect::<Result<_, _>>()?)
}

/// All cards, ordered by id.
pub fn all(view: &View<'_>) -> Result<Vec<Issued>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, patient, revision, sealed FROM issued ORDER BY id")?;
    Ok(query.query_map([], read)?.collect::<Result<_, _>>()?)
}

/// Replaces the encrypted bytes of a card.
pub fn update(tx: &Tx<'_>, id: i64, sealed: &[u8]) -> Result<(), StoreError> {
    match tx.sql().prepare_cached("UPDATE issued SET sealed = ?2 WHERE id = ?1")?.execute((id, sealed))? {
        0 => Err(StoreError::NoRow { table: "issued", id }),
        _ => Ok(()),
    }
}

/// The first card of every patient whose first card is above this row, ordered by row.
pub fn oldest_of_each_above(view: &View<'_>, row: i64) -> Result<Vec<Issued>, StoreError> {
    let mut query = view.sql().prepare_cached(
        "SELECT id, patient, revision, sealed FROM issued AS mine
         WHERE id > ?1 AND revision = (SELECT min(revision) FROM issued WHERE patient = mine.patient) ORDER BY id",
    )?;
    Ok(query.query_map([row], read)?.collect::<Result<_, _>>()?)
}

fn read(row: &Row<'_>) -> rusqlite::Result<Issued> {
    Ok(Issued { id: row.get(0)?, patient: row.get(1)?, revision: row.get(2)?, sealed: row.get(3)? })
}
