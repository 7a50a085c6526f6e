//! The ids that this log had before it was copied, moved or put back: which entries were made under which id.

use crate::{StoreError, Tx, View};

pub(crate) const SQL: &str = "\
CREATE TABLE former_log (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) > 0),
    entries INTEGER NOT NULL CHECK (entries >= 0)
) STRICT;
CREATE TRIGGER former_log_is_not_changed BEFORE UPDATE ON former_log
BEGIN SELECT RAISE(ABORT, 'a former id stays'); END;
CREATE TRIGGER former_log_is_not_removed BEFORE DELETE ON former_log
BEGIN SELECT RAISE(ABORT, 'a former id stays'); END;
DROP TRIGGER log_keeps_its_id;
CREATE TRIGGER log_keeps_its_id BEFORE UPDATE ON log
WHEN NEW.exports < OLD.exports
  OR (NEW.id = OLD.id AND NEW.exports = OLD.exports)
  OR (NEW.id <> OLD.id AND NOT EXISTS (SELECT 1 FROM former_log WHERE id = OLD.id))
  OR EXISTS (SELECT 1 FROM former_log WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a log keeps its id until that is a former one, and counts its exports upwards'); END;";

/// A former id of the log.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FormerLog {
    /// The id.
    pub id: Vec<u8>,
    /// The number of the last entry that was made under it; the ids before it have the lower numbers.
    pub entries: u32,
}

/// Continues the log under another id, random bytes from the caller: from now on its entries are not those of the log that it was copied
/// from. Nothing happens if no log was begun. An id that the log had before is a [`StoreError::Conflict`].
pub(crate) fn succeed(tx: &Tx<'_>, id: &[u8]) -> Result<(), StoreError> {
    tx.sql()
        .prepare_cached("INSERT INTO former_log (id, entries) SELECT id, (SELECT coalesce(max(n), 0) FROM entry) FROM log")?
        .execute([])?;
    tx.sql().prepare_cached("UPDATE log SET id = ?1")?.execute([id])?;
    Ok(())
}

/// The former ids under which entries were made, the oldest first.
pub fn all(view: &View<'_>) -> Result<Vec<FormerLog>, StoreError> {
    let mut query = view.sql().prepare_cached("SELECT id, entries FROM former_log ORDER BY entries, rowid")?;
    let all = query.query_map([], |row| Ok(FormerLog { id: row.get(0)?, entries: row.get(1)? }))?;
    let mut used = 0;
    let mut found = Vec::new();
    for one in all {
        let one = one?;
        // An id that was given and replaced with no entry in between is on none.
        if one.entries > std::mem::replace(&mut used, one.entries) {
            found.push(one);
        }
    }
    Ok(found)
}
