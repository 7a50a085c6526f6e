//! What can go wrong with the data, as facts. The texts for people are elsewhere.

use crate::files::{FileError, FileFault};
use rusqlite::ErrorCode;
use std::path::PathBuf;

/// Why the data could not be opened, read or written.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum StoreError {
    /// There is no data here, and none was to be made.
    #[error("no data at {}", path.display())]
    NotThere {
        /// Where it was looked for.
        path: PathBuf,
    },
    /// Something that is not a folder stands where the data folder should be.
    #[error("{} is not a folder", path.display())]
    NotAFolder {
        /// What stands there.
        path: PathBuf,
    },
    /// The folder or the database may be read, not written.
    #[error("{} cannot be written", path.display())]
    ReadOnly {
        /// Folder or file.
        path: PathBuf,
    },
    /// Another copy of the program has this data folder open.
    #[error("{} is in use by another copy of the program", path.display())]
    InUse {
        /// The data folder.
        path: PathBuf,
    },
    /// A sound SQLite file, but not one of ours.
    #[error("{} belongs to another program (application id {found:#010x})", path.display())]
    Foreign {
        /// The file.
        path: PathBuf,
        /// The application id in its header; 0 if its maker set none.
        found: u32,
    },
    /// Written by a newer version of this program; left as it is.
    #[error("{} has schema {found}, this program knows up to {known}", path.display())]
    Newer {
        /// The file.
        path: PathBuf,
        /// Its schema version.
        found: u32,
        /// The newest that this program knows.
        known: u32,
    },
    /// Not readable as a database, or its inner checks failed; left as it is.
    #[error("{} is damaged: {detail}", path.display())]
    Damaged {
        /// The file.
        path: PathBuf,
        /// The first finding, for a report.
        detail: String,
    },
    /// Turned out to be damaged while open, after the checks at opening.
    #[error("the database is damaged: {detail}")]
    Corrupt {
        /// SQLite's text, for a report.
        detail: String,
    },
    /// A backup that does not hold what the original holds.
    #[error("the copy at {} is not complete: {detail}", path.display())]
    BadCopy {
        /// Where the copy was to go.
        path: PathBuf,
        /// What differs.
        detail: String,
    },
    /// There is already a database here, which a restore would replace.
    #[error("{} already holds data", path.display())]
    Occupied {
        /// The data folder.
        path: PathBuf,
    },
    /// No room left; what was to be written is undone.
    #[error("no room left on the disk")]
    DiskFull,
    /// The disk reported an error, was taken away, or went past a limit; what was to be written is undone.
    #[error("the disk failed: {detail} (code {code})")]
    DiskFault {
        /// SQLite's extended result code, which tells reading from writing and syncing.
        code: i32,
        /// SQLite's text, for a report.
        detail: String,
    },
    /// Another program holds the database; trying again may help.
    #[error("the database is busy")]
    Busy,
    /// The database became read-only while open.
    #[error("the database cannot be written")]
    WriteRefused,
    /// The row would break a rule of its table: it exists already, or what it refers to does not. Nothing was changed.
    #[error("the row conflicts: {detail}")]
    Conflict {
        /// The rule, as the table states it.
        detail: String,
    },
    /// No row with this id.
    #[error("no row {id} in {table}")]
    NoRow {
        /// The table.
        table: &'static str,
        /// The id that was asked for.
        id: i64,
    },
    /// A file operation failed in a way that has no case of its own.
    #[error(transparent)]
    File(FileError),
    /// SQLite failed in a way that has no case of its own.
    #[error("SQLite: {detail} (code {code})")]
    Sqlite {
        /// SQLite's extended result code; 0 if the fault is in how it was called.
        code: i32,
        /// SQLite's text, for a report.
        detail: String,
    },
}

impl StoreError {
    /// Whether the same call may succeed later without anyone's repair.
    pub fn may_pass(&self) -> bool {
        matches!(self, StoreError::Busy | StoreError::InUse { .. })
    }
}

impl From<FileError> for StoreError {
    fn from(error: FileError) -> StoreError {
        let FileError { path, fault } = error;
        match fault {
            FileFault::NotFound => StoreError::NotThere { path },
            FileFault::NotAFolder => StoreError::NotAFolder { path },
            FileFault::ReadOnly => StoreError::ReadOnly { path },
            FileFault::InUse => StoreError::InUse { path },
            FileFault::NoRoom => StoreError::DiskFull,
            fault @ (FileFault::NotAFile | FileFault::Occupied | FileFault::TooBig { .. } | FileFault::Other { .. }) => {
                StoreError::File(FileError { path, fault })
            }
        }
    }
}

impl From<rusqlite::Error> for StoreError {
    fn from(error: rusqlite::Error) -> StoreError {
        let detail = error.to_string();
        let Some(inner) = error.sqlite_error() else {
            return StoreError::Sqlite { code: 0, detail };
        };
        match inner.code {
            ErrorCode::DiskFull => StoreError::DiskFull,
            ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked => StoreError::Busy,
            ErrorCode::ReadOnly => StoreError::WriteRefused,
            ErrorCode::ConstraintViolation => StoreError::Conflict { detail },
            ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase => StoreError::Corrupt { detail },
            ErrorCode::SystemIoFailure => StoreError::DiskFault { code: inner.extended_code, detail },
            _ => StoreError::Sqlite { code: inner.extended_code, detail },
        }
    }
}
