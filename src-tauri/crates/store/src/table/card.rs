//! The plan cards that the patient took, all revisions, with the clinic that the plan came from: a person may have two clinics.

use crate::{StoreError, Tx, View};
use rusqlite::{OptionalExtension, Row};

pub(crate) const SQL: &str = "\
CREATE TABLE card (
    plan BLOB NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 0),
    clinic BLOB NOT NULL,
    taken_ms INTEGER NOT NULL,
    taken_offset_s INTEGER NOT NULL,
    bytes BLOB NOT NULL,
    PRIMARY KEY (plan, revision)
) STRICT;
CREATE TRIGGER card_keeps_its_clinic BEFORE INSERT ON card
WHEN EXISTS (SELECT 1 FROM card WHERE plan = NEW.plan AND clinic <> NEW.clinic)
BEGIN SELECT RAISE(ABORT, 'the plan belongs to another clinic'); END;
CREATE TRIGGER card_stays_as_signed BEFORE UPDATE ON card
BEGIN SELECT RAISE(ABORT, 'a card is not changed'); END;";

/// A card as it was taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    /// The plan's id.
    pub plan: Vec<u8>,
    /// The plan's revision.
    pub revision: u32,
    /// The clinic's public key that verifies the signature of the plan's first card.
    pub clinic: Vec<u8>,
    /// When it was taken, in milliseconds since 1970-01-01T00:00:00Z.
    pub taken_ms: i64,
    /// Offset of the wall clock from UTC at that time, in seconds.
    pub taken_offset_s: i32,
    /// The signed bytes, as received.
    pub bytes: Vec<u8>,
}

const COLUMNS: &str = "plan, revision, clinic, taken_ms, taken_offset_s, bytes";

/// Stores a card. The same plan and revision twice, or a plan that came from another clinic before, is a [`StoreError::Conflict`].
pub fn insert(tx: &Tx<'_>, card: &Card) -> Result<(), StoreError> {
    let Card { plan, revision, clinic, taken_ms, taken_offset_s, bytes } = card;
    tx.sql().prepare_cached(&format!("INSERT INTO card ({COLUMNS}) VALUES (?1, ?2, ?3, ?4, ?5, ?6)"))?.execute((
        plan,
        revision,
        clinic,
        taken_ms,
        taken_offset_s,
        bytes,
    ))?;
    Ok(())
}

/// One card, if it was taken.
pub fn get(view: &View<'_>, plan: &[u8], revision: u32) -> Result<Option<Card>, StoreError> {
    let mut query = view.sql().prepare_cached(&format!("SELECT {COLUMNS} FROM card WHERE plan = ?1 AND revision = ?2"))?;
    Ok(query.query_row((plan, revision), read)).and_then(|found| Ok(found.optional()?))
}

/// The highest revision of each plan, ordered by plan.
pub fn newest(view: &View<'_>) -> Result<Vec<Card>, StoreError> {
    let sql = format!(
        "SELECT {COLUMNS} FROM card AS mine
         WHERE revision = (SELECT max(revision) FROM card WHERE plan = mine.plan) ORDER BY plan"
    );
    Ok(view.sql().prepare_cached(&sql)?.query_map([], read)?.collect::<Result<_, _>>()?)
}

/// All cards, ordered by plan and revision.
pub fn all(view: &View<'_>) -> Result<Vec<Card>, StoreError> {
    let sql = format!("SELECT {COLUMNS} FROM card ORDER BY plan, revision");
    Ok(view.sql().prepare_cached(&sql)?.query_map([], read)?.collect::<Result<_, _>>()?)
}

fn read(row: &Row<'_>) -> rusqlite::Result<Card> {
    Ok(Card {
        plan: row.get(0)?,
        revision: row.get(1)?,
        clinic: row.get(2)?,
        taken_ms: row.get(3)?,
        taken_offset_s: row.get(4)?,
        bytes: row.get(5)?,
    })
}
