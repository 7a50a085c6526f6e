//! What a data folder and the files around it hold, in a form in which two of them can be compared.

use rusqlite::types::Value;
use rusqlite::{Connection, OpenFlags};
use std::collections::hash_map::DefaultHasher;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::hash::{Hash, Hasher};
use std::path::{Path, PathBuf};
use store::{Home, Provenance, StoreError};

/// The rows of all tables, each cell as text.
pub type Rows = BTreeMap<String, Vec<Vec<String>>>;

/// What the program finds in a data folder at its next start.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Held {
    /// There is no database.
    Nothing,
    /// The database is damaged: a number for the bytes of the database and of its log, which nothing may change.
    Damaged(u64),
    /// Its rows.
    Rows(Rows),
}

/// Opens the data folder as the program does at its next start, and reads all that is in it. Fails if it is in a state that the program
/// never leaves: unfinished files, or a database that does not pass SQLite's whole check.
pub fn held(home: &Path) -> Result<Held, String> {
    held_watched(home, None).map(|(held, _)| held)
}

/// The same, and whether it is taken for an earlier state that was put back, by what is remembered in `witnesses`.
pub fn held_watched(home: &Path, witnesses: Option<&Path>) -> Result<(Held, bool), String> {
    let put_back = match Home::open_watched(home, false, witnesses) {
        Err(StoreError::NotThere { .. }) => return Ok((Held::Nothing, false)),
        Err(StoreError::Damaged { .. }) => return Ok((Held::Damaged(bytes(home)), false)),
        Err(other) => return Err(format!("does not open: {other}")),
        Ok(open) => open.provenance() == Provenance::PutBack,
    };
    for entry in fs::read_dir(home).expect("a folder") {
        let name = entry.expect("an entry").file_name().to_string_lossy().into_owned();
        if name.starts_with(".carryover-") || name.ends_with("-journal") || name.ends_with(".db-wal") {
            return Err(format!("{name} is left"));
        }
    }
    rows(&home.join("carryover.db")).map(|rows| (Held::Rows(rows), put_back))
}

fn bytes(home: &Path) -> u64 {
    let mut hasher = DefaultHasher::new();
    for name in ["carryover.db", "carryover.db-wal"] {
        fs::read(home.join(name)).unwrap_or_default().hash(&mut hasher);
    }
    hasher.finish()
}

/// The rows of a database that passes SQLite's whole check.
pub fn rows(database: &Path) -> Result<Rows, String> {
    read(database).map_err(|fault| format!("{}: {fault}", database.display()))?
}

fn read(database: &Path) -> rusqlite::Result<Result<Rows, String>> {
    let open = Connection::open_with_flags(database, OpenFlags::SQLITE_OPEN_READ_WRITE)?;
    let verdict: String = open.query_row("PRAGMA integrity_check", [], |row| row.get(0))?;
    if verdict != "ok" {
        return Ok(Err(verdict));
    }
    let mut query = open.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")?;
    let names = query.query_map([], |row| row.get(0))?.collect::<rusqlite::Result<Vec<String>>>()?;
    let mut all = Rows::new();
    for name in names {
        let mut query = open.prepare(&format!("SELECT * FROM \"{name}\""))?;
        let columns = query.column_count();
        let row = |row: &rusqlite::Row<'_>| {
            (0..columns).map(|at| row.get::<_, Value>(at).map(|value| format!("{value:?}"))).collect()
        };
        let rows = query.query_map([], row)?.collect::<rusqlite::Result<Vec<Vec<String>>>>()?;
        all.insert(name, rows);
    }
    Ok(Ok(all))
}

impl Held {
    /// What differs from what one undisturbed run left, apart from what differs between that and `another` such run: random names, and
    /// bytes that are sealed or signed anew each time. `None` if nothing does.
    pub fn difference(&self, one: &Held, another: &Held) -> Option<String> {
        let (Held::Rows(this), Held::Rows(one), Held::Rows(another)) = (self, one, another) else {
            return (self != one).then(|| "no rows".to_owned());
        };
        let tables: BTreeSet<&String> = this.keys().chain(one.keys()).collect();
        tables.into_iter().find_map(|table| {
            let [rows, ones, others] = [this, one, another].map(|rows| rows.get(table).map_or(&[][..], Vec::as_slice));
            let row = |at: usize| {
                let (row, like) = (&rows[at], &ones[at]);
                let other = |cell: usize| others.get(at).and_then(|other| other.get(cell));
                let varies = |cell: usize| other(cell) != Some(&like[cell]) && kind(&row[cell]) == kind(&like[cell]);
                let differs =
                    |cell: &usize| row[*cell] != like[*cell] && !varies(*cell) && !is_same_time(&row[*cell], &like[*cell]);
                (0..row.len())
                    .find(differs)
                    .map(|cell| format!("{table} {at} {cell}: {:.150} and not {:.150}", row[cell], like[cell]))
            };
            let (is, was) = (rows.len(), ones.len());
            if is == was { (0..is).find_map(row) } else { Some(format!("{table} has {is} rows and not {was}")) }
        })
    }
}

/// Whether both are the same but for times in milliseconds: a clock that was set goes on.
fn is_same_time(one: &str, other: &str) -> bool {
    let timeless = |cell: &str| -> Vec<String> {
        let parts = cell.split(|sign: char| !sign.is_ascii_digit());
        parts.map(|part| if part.len() == 13 { String::new() } else { part.to_owned() }).collect()
    };
    timeless(one) == timeless(other)
}

/// The type of a cell: what its text begins with.
fn kind(cell: &str) -> &str {
    cell.split('(').next().unwrap_or_default()
}

/// The files of a place by their names in it, without the databases of data folders with what SQLite keeps beside them, and locks.
pub fn files(place: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut all = BTreeMap::new();
    gather(place, place, &mut all);
    all
}

fn gather(place: &Path, dir: &Path, all: &mut BTreeMap<PathBuf, Vec<u8>>) {
    for entry in fs::read_dir(dir).expect("a folder") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().expect("a name").to_string_lossy().into_owned();
        if path.is_dir() {
            gather(place, &path, all);
        } else if !is_of_a_database(&name) {
            let bytes = fs::read(&path).expect("readable");
            all.insert(path.strip_prefix(place).expect("below").to_path_buf(), bytes);
        }
    }
}

/// Whether a file is the database of a data folder, lies beside one, or is its lock.
pub fn is_of_a_database(name: &str) -> bool {
    name == "lock" || ["", "-wal", "-shm", "-journal"].iter().any(|ending| name.strip_prefix("carryover.db") == Some(ending))
}

/// The lines of a person's own data without the one that says when they were written: a slow run writes them a second later.
fn without_the_moment(json: &[u8]) -> Vec<&[u8]> {
    json.split(|byte| *byte == b'\n').filter(|line| !line.trim_ascii_start().starts_with(b"\"made\": ")).collect()
}

/// Whether the bytes of a file are all there: as one of two undisturbed runs wrote it or, where these differ, whole by its kind.
pub fn is_whole(name: &Path, bytes: &[u8], one: &[u8], another: &[u8]) -> bool {
    let text = name.to_string_lossy();
    let same = |one: &[u8]| bytes == one || text.ends_with(".json") && without_the_moment(bytes) == without_the_moment(one);
    same(one)
        || same(another)
        || one != another
            && if text.ends_with(".png") {
                image::load_from_memory(bytes).is_ok()
            } else if text.ends_with(".svg") || text.ends_with(".html") {
                bytes.trim_ascii_end().ends_with(b">") && bytes.len().abs_diff(one.len()) < one.len() / 10
            } else if text.contains(".db") {
                let dir = tempfile::tempdir().expect("a temporary folder");
                let copy = dir.path().join("copy.db");
                fs::write(&copy, bytes).expect("written");
                rows(&copy).is_ok()
            } else {
                // What is sealed has a length of its own each time only before the line that ends its head.
                let sealed =
                    |bytes: &[u8]| bytes.windows(5).position(|part| part == b"\n--- ").map_or(0, |at| bytes.len() - at);
                let (is, was) = if text.ends_with(".age") { (sealed(bytes), sealed(one)) } else { (bytes.len(), one.len()) };
                is > 0 && is.abs_diff(was) <= was / 20
            }
}
