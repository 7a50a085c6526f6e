//! Errors of the store, with their facts. The texts for people are elsewhere.

use crate::files::{FileError, FileFault};
use rusqlite::ErrorCode;
use std::path::{Path, PathBuf};

/// Why the data could not be opened, read or written.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum StoreError {
    /// There is no data here, and none was to be created.
    #[error("no data at {}", path.display())]
    NotThere {
        /// Where it was looked for.
        path: PathBuf,
    },
    /// There is something other than a folder in the place of the data folder.
    #[error("{} is not a folder", path.display())]
    NotAFolder {
        /// The path of what is there.
        path: PathBuf,
    },
    /// The folder or the database can be read but not written.
    #[error("{} cannot be written", path.display())]
    ReadOnly {
        /// The folder or file.
        path: PathBuf,
    },
    /// Others can read or change what is in the folder, and it cannot be made private without shutting them out.
    #[error("{} is open to others", path.display())]
    OpenToOthers {
        /// The folder.
        path: PathBuf,
    },
    /// Another copy of the program has this data folder open.
    #[error("{} is in use by another copy of the program", path.display())]
    InUse {
        /// The data folder.
        path: PathBuf,
    },
    /// A valid SQLite file, but not one of this program.
    #[error("{} belongs to another program (application id {found:#010x})", path.display())]
    Foreign {
        /// The file.
        path: PathBuf,
        /// The application id in its header; 0 if it has none.
        found: u32,
    },
    /// Written by a newer version of this program; not changed.
    #[error("{} has schema {found}, this program knows up to {known}", path.display())]
    Newer {
        /// The file.
        path: PathBuf,
        /// Its schema version.
        found: u32,
        /// The newest version that this program knows.
        known: u32,
    },
    /// Not readable as a database, or its integrity check failed; not changed.
    #[error("{} is damaged: {detail}", path.display())]
    Damaged {
        /// The file.
        path: PathBuf,
        /// The first finding of the check, for an error report.
        detail: String,
    },
    /// Found to be damaged while open, after the checks at opening.
    #[error("the database is damaged: {detail}")]
    Corrupt {
        /// SQLite's text, for an error report.
        detail: String,
    },
    /// A backup whose contents differ from the original.
    #[error("the copy at {} is not complete: {detail}", path.display())]
    BadCopy {
        /// Where the copy was to be written.
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
    /// The disk is full; the transaction was undone.
    #[error("no room left on the disk")]
    DiskFull,
    /// The disk reported an error, was removed, or exceeded a limit; the transaction was undone.
    #[error("the disk failed: {detail} (code {code})")]
    DiskFault {
        /// SQLite's extended result code, which distinguishes reading, writing and syncing.
        code: i32,
        /// SQLite's text, for an error report.
        detail: String,
    },
    /// Another program has locked the database; trying again may help.
    #[error("the database is busy")]
    Busy,
    /// The database became read-only while open.
    #[error("the database cannot be written")]
    WriteRefused,
    /// The row would violate a constraint of its table: it exists already, or a row that it refers to does not. Nothing was changed.
    #[error("the row conflicts: {detail}")]
    Conflict {
        /// The constraint, in the table's words.
        detail: String,
    },
    /// No row with this id.
    #[error("no row {id} in {table}")]
    NoRow {
        /// The table.
        table: &'static str,
        /// The requested id.
        id: i64,
    },
    /// A file operation failed.
    #[error(transparent)]
    File(FileError),
    /// SQLite failed for a reason without a case of its own.
    #[error("SQLite: {detail} (code {code})")]
    Sqlite {
        /// SQLite's extended result code; 0 if SQLite was called wrongly.
        code: i32,
        /// SQLite's text, for an error report.
        detail: String,
    },
}

impl StoreError {
    /// Whether the same call may succeed later without a repair.
    pub fn may_pass(&self) -> bool {
        matches!(self, StoreError::Busy | StoreError::InUse { .. })
    }

    /// The same about a file that the person knows as `to`, if it is about the file at `from`.
    pub(crate) fn renamed(self, from: &Path, to: &Path) -> StoreError {
        let known = |path: PathBuf| if path == from { to.to_path_buf() } else { path };
        match self {
            StoreError::Foreign { path, found } => StoreError::Foreign { path: known(path), found },
            StoreError::Newer { path, found, known: newest } => {
                StoreError::Newer { path: known(path), found, known: newest }
            }
            StoreError::Damaged { path, detail } => StoreError::Damaged { path: known(path), detail },
            other => other,
        }
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
            FileFault::OpenToOthers => StoreError::OpenToOthers { path },
            fault @ (FileFault::NotAFile
            | FileFault::Occupied
            | FileFault::Exposed
            | FileFault::TooBig { .. }
            | FileFault::Other { .. }) => StoreError::File(FileError { path, fault }),
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
            ErrorCode::SystemIoFailure | ErrorCode::CannotOpen => {
                StoreError::DiskFault { code: inner.extended_code, detail }
            }
            _ => StoreError::Sqlite { code: inner.extended_code, detail },
        }
    }
}
