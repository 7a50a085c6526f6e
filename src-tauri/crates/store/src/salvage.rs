//! Saves what can be read of a damaged database, row by row.
//!
//! The damaged file is kept, unchanged, under another name. Every table is read from its beginning and from its end, until a row cannot
//! be read, and between the two row by row where rows have numbers. What was read goes into a new database. If the first page of the file
//! is damaged, SQLite cannot find anything in it, and nothing is saved: then a backup is all that helps.

use crate::{StoreError, backups, files, migration, opening};
use rusqlite::types::Value;
use rusqlite::{Connection, ffi, params_from_iter};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// What is added to the damaged database's name, before the day.
pub(crate) const DAMAGED: &str = ".damaged-";
/// How many numbers after the last row that was read are tried one by one.
const AHEAD: i64 = 20_000;
/// Size of the header of a database, in bytes.
const HEADER: u64 = 100;
/// Where the header says how many pages there are.
const PAGES: u64 = 28;

/// What was saved of a damaged database.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Salvaged {
    /// Where the damaged file is kept.
    pub kept: PathBuf,
    /// Each table that had rows, or may have had some.
    pub tables: Vec<SalvagedTable>,
}

/// What was saved of one table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SalvagedTable {
    /// Its name.
    pub name: String,
    /// Number of rows that were read and are in the new database.
    pub saved: u64,
    /// Number of rows that are known to be lost. More may be, if `is_whole` is false.
    pub lost: u64,
    /// Whether the whole table could be read.
    pub is_whole: bool,
}

/// Puts the damaged database at `path` aside and makes a new one of what can be read of it. Until that is complete, the damaged one stays in
/// its place. The caller must hold the folder's lock.
pub(crate) fn salvage(path: &Path, day: &str) -> Result<Salvaged, StoreError> {
    let kept = backups::put_aside(path, DAMAGED, day)?;
    let new = files::beside(path)?;
    // Reads a copy, because SQLite would write the log back into the file that is kept.
    let source = files::beside(path)?;
    files::copy(&kept, source.path())?;
    // SQLite reads nothing of a file that is shorter than its header says. Of one that was lengthened it would read a row as whole whose end
    // is not there.
    let (page, length) = said_size(&files::beginning(source.path(), HEADER)?);
    if files::size(source.path())?.unwrap_or_default() < length {
        files::cut_to_pages(source.path(), page, PAGES)?;
    }
    let log = backups::beside(source.path(), "-wal");
    if files::size(&backups::beside(&kept, "-wal"))?.is_some() {
        files::copy(&backups::beside(&kept, "-wal"), &log)?;
    }
    let read = read_into(source.path(), new.path());
    backups::remove_companions(source.path())?;
    let tables = read?;
    backups::remove_companions(path)?;
    files::put_in_place(new, path)?;
    Ok(Salvaged { kept, tables })
}

/// The size of a page and of the file in bytes, according to its header; 0 if there is none.
fn said_size(header: &[u8]) -> (u64, u64) {
    let number = |from: usize, bytes: usize| header.get(from..from + bytes).unwrap_or_default();
    let page = number(16, 2).iter().fold(0, |all, byte| all << 8 | u64::from(*byte));
    let pages = number(PAGES as usize, 4).iter().fold(0, |all, byte| all << 8 | u64::from(*byte));
    // The largest size of a page does not fit into its two bytes, and is written as 1.
    let page = if page == 1 { 65_536 } else { page };
    (page, page * pages)
}

fn read_into(damaged: &Path, new: &Path) -> Result<Vec<SalvagedTable>, StoreError> {
    let from = opening::connect(damaged)?;
    let version: u32 = from.pragma_query_value(None, "user_version", |row| row.get(0))?;
    let application = from.pragma_query_value(None, "application_id", |row| row.get(0).map(i32::cast_unsigned))?;
    if application != opening::APPLICATION_ID {
        return Err(StoreError::Foreign { path: damaged.into(), found: application });
    }
    if version > crate::LATEST {
        return Err(StoreError::Newer { path: damaged.into(), found: version, known: crate::LATEST });
    }
    let mut to = opening::empty(new)?;
    // Oldest first, so that a row comes after those that it refers to.
    let mut names = migration::tables(&to)?;
    names.reverse();
    let tx = to.transaction()?;
    let tables = names.iter().map(|name| table(&from, &tx, name)).collect::<Result<Vec<_>, StoreError>>()?;
    continue_numbers(&from, &tx)?;
    tx.commit()?;
    to.close().map_err(|(_, error)| StoreError::from(error))?;
    Ok(tables.into_iter().filter(|table| table.saved + table.lost > 0 || !table.is_whole).collect())
}

/// No number of a lost row is given to a new one: the clinic's manifest still has it.
fn continue_numbers(from: &Connection, to: &Connection) -> Result<(), StoreError> {
    // What cannot be read here is no reason to save nothing: the rows that are there have their own numbers.
    let Ok(mut query) = from.prepare("SELECT name, seq FROM sqlite_sequence") else { return Ok(()) };
    let Ok(last) = query.query_map([], |row| Ok((row.get::<_, String>(0)?, row.get::<_, i64>(1)?))) else { return Ok(()) };
    for (name, number) in last.map_while(Result::ok) {
        to.execute("DELETE FROM sqlite_sequence WHERE name = ?1 AND seq < ?2", (&name, number))?;
        to.execute(
            "INSERT INTO sqlite_sequence (name, seq) SELECT ?1, ?2 WHERE NOT EXISTS (SELECT 1 FROM sqlite_sequence WHERE name = ?1)",
            (&name, number),
        )?;
    }
    Ok(())
}

/// The rows that were read, by what they are ordered by, and whether reading came to its end.
struct Rows {
    found: BTreeMap<String, Vec<Value>>,
    numbers: Vec<i64>,
    is_whole: bool,
}

fn table(from: &Connection, to: &Connection, name: &str) -> Result<SalvagedTable, StoreError> {
    let rows = rows(from, name);
    let mut report = SalvagedTable { name: name.to_owned(), saved: 0, lost: 0, is_whole: rows.is_whole };
    for row in rows.found.values() {
        let places = vec!["?"; row.len()].join(", ");
        let added = to.execute(&format!("INSERT INTO \"{name}\" VALUES ({places})"), params_from_iter(row));
        match added.map_err(StoreError::from) {
            Ok(_) => report.saved += 1,
            // A row that refers to one that is lost is lost too, as is one with a value that its table does not take.
            Err(StoreError::Conflict { .. } | StoreError::Sqlite { code: ffi::SQLITE_MISMATCH, .. }) => report.lost += 1,
            // The row can be read: it would be lost only because the new database cannot be written now.
            Err(error) => return Err(error),
        }
    }
    if let (Some(last), "entry") = (rows.numbers.iter().max(), name) {
        // The log is numbered from 1 without a gap.
        report.lost += u64::try_from(*last).unwrap_or_default().saturating_sub(rows.numbers.len() as u64);
    }
    Ok(report)
}

fn rows(from: &Connection, name: &str) -> Rows {
    let mut rows = Rows { found: BTreeMap::new(), numbers: Vec::new(), is_whole: false };
    let numbered = from.prepare(&format!("SELECT rowid FROM \"{name}\" LIMIT 1")).is_ok();
    let order = if numbered { "rowid" } else { "1" };
    let forward = rows.read(from, name, numbered, &format!("ORDER BY {order}"));
    rows.is_whole = forward;
    if !forward {
        rows.read(from, name, numbered, &format!("ORDER BY {order} DESC"));
        if numbered {
            rows.read_between(from, name);
        }
    }
    rows.numbers.sort_unstable();
    rows.numbers.dedup();
    rows
}

impl Rows {
    /// Reads rows until the end or until one cannot be read; returns whether it was the end.
    fn read(&mut self, from: &Connection, name: &str, numbered: bool, how: &str) -> bool {
        let number = if numbered { "rowid" } else { "0" };
        let Ok(mut query) = from.prepare(&format!("SELECT {number}, * FROM \"{name}\" {how}")) else {
            // The table may not exist yet in an older database; that is no damage.
            let known =
                from.query_row("SELECT count(*) FROM sqlite_schema WHERE name = ?1", [name], |row| row.get::<_, i64>(0));
            return known == Ok(0);
        };
        let columns = query.column_count();
        let Ok(mut found) = query.query([]) else { return false };
        loop {
            match found.next() {
                Ok(None) => return true,
                Err(_) => return false,
                Ok(Some(row)) => {
                    let values: Result<Vec<Value>, _> = (1..columns).map(|place| row.get(place)).collect();
                    let (Ok(values), Ok(number)) = (values, row.get::<_, i64>(0)) else { return false };
                    let key = if numbered { format!("{number:020}") } else { format!("{:?}", values.first()) };
                    if self.found.insert(key, values).is_none() && numbered {
                        self.numbers.push(number);
                    }
                }
            }
        }
    }

    /// Tries each number between the rows that were read, and some after the last.
    fn read_between(&mut self, from: &Connection, name: &str) {
        let last = self.numbers.iter().max().copied().unwrap_or(0);
        let first = self.numbers.iter().min().copied().unwrap_or(1).min(1);
        let mut known = std::mem::take(&mut self.numbers);
        known.sort_unstable();
        self.numbers.clone_from(&known);
        for number in first..=last.saturating_add(AHEAD) {
            if known.binary_search(&number).is_err() {
                self.read(from, name, true, &format!("WHERE rowid = {number}"));
            }
        }
    }
}
