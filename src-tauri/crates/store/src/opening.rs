//! Creates, checks and opens the database file. A file that fails a check is not changed.

use crate::files::{self, FileError, FileFault};
use crate::{LATEST, Store, StoreError, migration};
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};
use std::path::{Path, PathBuf};
use std::time::Duration;

/// Our application id in the file's header, "Cyov" in ASCII: it distinguishes our files from those of other programs.
pub(crate) const APPLICATION_ID: u32 = 0x4379_6f76;

/// The two bytes at place 18 of the file's header, if it needs no write-ahead log.
const WITHOUT_LOG: [u8; 2] = [1, 1];

/// How long to wait for another program (a backup tool, for example) that has locked the database.
const PATIENCE: Duration = Duration::from_secs(2);

/// Creates a new, empty database at `path`. It is built under another name first, so that a file of this name is always complete and
/// an empty file is known to be damaged.
pub(crate) fn create(path: &Path) -> Result<(), StoreError> {
    if let Some(left) = remains(path)? {
        // SQLite would apply a write-ahead log without its database to the new file.
        return Err(StoreError::Damaged { path: path.into(), detail: format!("missing, but {} is there", left.display()) });
    }
    let new = files::beside(path)?;
    close(empty(new.path())?)?;
    Ok(files::put_in_place(new, path)?)
}

/// Makes the empty file at `path` an empty database.
pub(crate) fn empty(path: &Path) -> Result<Connection, StoreError> {
    let mut connection = connect(path)?;
    connection.pragma_update(None, "application_id", APPLICATION_ID)?;
    migration::migrate(&mut connection)?;
    Ok(connection)
}

/// Opens the database at `path`: checks that it is ours, undamaged and not newer than this program, then upgrades it.
pub(crate) fn open(path: &Path) -> Result<Store, StoreError> {
    let mut connection = checked(path)?;
    if connection.is_readonly("main")? {
        return Err(StoreError::ReadOnly { path: path.into() });
    }
    let mode: String = connection.pragma_update_and_check(None, "journal_mode", "WAL", |row| row.get(0))?;
    if mode != "wal" {
        return Err(StoreError::Sqlite { code: 0, detail: format!("journal mode is {mode}, not wal") });
    }
    migration::migrate(&mut connection)?;
    Ok(Store::new(connection, path.into()))
}

/// Opens the database at `path` for reading alone, where there is no room for what writing needs. Nothing is created beside it but an empty
/// log, and nothing is changed.
pub(crate) fn open_for_reading(path: &Path) -> Result<Store, StoreError> {
    // Alone with the file, SQLite keeps the index of its log in memory and not in a file. It must know that before it first reads.
    let connection = connect_after(path, "PRAGMA locking_mode = EXCLUSIVE;")?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    let version: u32 = connection.pragma_query_value(None, "user_version", |row| row.get(0))?;
    // An older database must be upgraded before it can be read, which needs room.
    if version != LATEST {
        return Err(StoreError::DiskFull);
    }
    inspect(&connection, "quick_check").map_err(damaged(path))?;
    Ok(Store::for_reading(connection, path.into()))
}

/// An empty database that is in no file, to go on with where there is no room for one.
pub(crate) fn in_memory(path: &Path) -> Result<Store, StoreError> {
    let mut connection = Connection::open_in_memory()?;
    migration::migrate(&mut connection)?;
    Ok(Store::new(connection, path.into()))
}

/// Whether the error is one of a disk that is full, or on which nothing may grow.
pub(crate) fn is_no_room(error: &StoreError) -> bool {
    matches!(error, StoreError::DiskFull | StoreError::DiskFault { .. })
}

/// Copies a backup's database `from` to `path`, and checks it before and after.
pub(crate) fn copy(from: &Path, path: &Path) -> Result<(), StoreError> {
    Ok(files::put_in_place(checked_copy(from, path)?, path)?)
}

/// Copies a backup's database `from` into a new file that is to replace `path`, and checks it before and after.
pub(crate) fn checked_copy(from: &Path, path: &Path) -> Result<files::NewFile, StoreError> {
    if files::size(from)?.is_none() {
        return Err(StoreError::NotThere { path: from.into() });
    }
    let source = checked(from)?;
    copied(&source, path)
}

/// Writes all of `source` into a single file at `path`. The copy gets this name only after it was checked.
pub(crate) fn backup(source: &Connection, path: &Path) -> Result<(), StoreError> {
    Ok(files::put_in_place(copied(source, path)?, path)?)
}

/// Copies all of `source` into a new file that is to replace `path`, and checks the copy.
fn copied(source: &Connection, path: &Path) -> Result<files::NewFile, StoreError> {
    let new = files::beside(path)?;
    source.backup("main", new.path(), None::<fn(rusqlite::backup::Progress)>)?;
    let copy = connect(new.path())?;
    let faults = |detail| StoreError::BadCopy { path: path.into(), detail };
    // The copy must be complete without a write-ahead log next to it.
    let _: String = copy.pragma_update_and_check(None, "journal_mode", "DELETE", |row| row.get(0))?;
    inspect(&copy, "integrity_check").and_then(|()| inspect_references(&copy)).map_err(faults)?;
    if count(source)? != count(&copy)? {
        return Err(faults("the numbers of rows differ".into()));
    }
    close(copy)?;
    // SQLite reports the other mode even if it could not write it.
    if files::beginning(new.path(), 20)?.get(18..) != Some(&WITHOUT_LOG[..]) {
        return Err(faults("it needs a write-ahead log".into()));
    }
    Ok(new)
}

/// Connects to the file after checking that it is ours, undamaged and not too new.
fn checked(path: &Path) -> Result<Connection, StoreError> {
    if files::size(path)? == Some(0) {
        return Err(damaged(path)("the file is empty".into()));
    }
    examined(path).map_err(named(path))
}

/// Opens the file so that nothing changes it before it is known to be ours.
fn examined(path: &Path) -> Result<Connection, StoreError> {
    let connection = connect(path)?;
    // Otherwise closing would write the log back into a file that may turn out to be damaged, foreign or newer.
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    let header = |name| connection.pragma_query_value(None, name, |row| row.get(0).map(i32::cast_unsigned));
    let application = header("application_id")?;
    if application != APPLICATION_ID {
        return Err(StoreError::Foreign { path: path.into(), found: application });
    }
    let found = header("user_version")?;
    if found > LATEST {
        return Err(StoreError::Newer { path: path.into(), found, known: LATEST });
    }
    inspect(&connection, "quick_check").map_err(damaged(path))?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
    Ok(connection)
}

/// A connection with our settings; creates no file and changes none.
pub(crate) fn connect(path: &Path) -> Result<Connection, StoreError> {
    connect_after(path, "")
}

fn connect_after(path: &Path, first: &str) -> Result<Connection, StoreError> {
    let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX)?;
    connection.busy_timeout(PATIENCE)?;
    // A prepared statement stays prepared: otherwise SQLite plans most of them anew for every other value that they ask for.
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
    connection.execute_batch(first)?;
    connection.execute_batch(
        // A committed transaction survives a power cut; on Apple's systems this needs fullfsync.
        "PRAGMA synchronous = FULL; PRAGMA fullfsync = ON; PRAGMA checkpoint_fullfsync = ON;
         PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0;
         -- What is deleted is overwritten, and nothing is put into files elsewhere on the disk.
         PRAGMA secure_delete = ON; PRAGMA temp_store = MEMORY;",
    )?;
    Ok(connection)
}

fn close(connection: Connection) -> Result<(), StoreError> {
    connection.close().map_err(|(_, error)| error.into())
}

/// Runs SQLite's own check of the file; returns the first finding as an error.
fn inspect(connection: &Connection, pragma: &str) -> Result<(), String> {
    match connection.query_row(&format!("PRAGMA {pragma}(1)"), [], |row| row.get::<_, String>(0)) {
        Ok(verdict) if verdict == "ok" => Ok(()),
        Ok(finding) => Err(finding),
        Err(error) => Err(error.to_string()),
    }
}

fn inspect_references(connection: &Connection) -> Result<(), String> {
    let broken: i64 = connection
        .query_row("SELECT count(*) FROM pragma_foreign_key_check", [], |row| row.get(0))
        .map_err(|error| error.to_string())?;
    if broken == 0 { Ok(()) } else { Err(format!("{broken} rows refer to nothing")) }
}

fn count(connection: &Connection) -> Result<Vec<i64>, StoreError> {
    let rows = |table: &String| connection.query_row(&format!("SELECT count(*) FROM \"{table}\""), [], |row| row.get(0));
    Ok(migration::tables(connection)?.iter().map(rows).collect::<Result<_, _>>()?)
}

/// A write-ahead log or journal whose database does not exist.
fn remains(path: &Path) -> Result<Option<PathBuf>, FileError> {
    for ending in ["-wal", "-journal"] {
        let mut name = path.as_os_str().to_owned();
        name.push(ending);
        if files::size(Path::new(&name))?.is_some_and(|bytes| bytes > 0) {
            return Ok(Some(name.into()));
        }
    }
    Ok(None)
}

fn damaged(path: &Path) -> impl Fn(String) -> StoreError {
    move |detail| StoreError::Damaged { path: path.into(), detail }
}

/// Adds the path to an error that SQLite reported without one.
fn named(path: &Path) -> impl Fn(StoreError) -> StoreError {
    move |error| match error {
        StoreError::Corrupt { detail } => damaged(path)(detail),
        StoreError::WriteRefused => StoreError::ReadOnly { path: path.into() },
        StoreError::DiskFault { detail, .. } if path.is_dir() => {
            StoreError::File(FileError { path: path.into(), fault: FileFault::Other { detail } })
        }
        other => other,
    }
}
