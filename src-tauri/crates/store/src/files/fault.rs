//! Why a file operation failed.

use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

/// A file operation that failed.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}: {fault}", path.display())]
pub struct FileError {
    /// The file or folder.
    pub path: PathBuf,
    /// What is wrong with it.
    pub fault: FileFault,
}

/// What is wrong with a file or folder.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum FileFault {
    /// Nothing has that name, or its folder does not exist.
    #[error("not found")]
    NotFound,
    /// A folder, pipe or device instead of a plain file.
    #[error("not a plain file")]
    NotAFile,
    /// A file instead of a folder.
    #[error("not a folder")]
    NotAFolder,
    /// A new folder was to be created where one exists that is not empty.
    #[error("not empty")]
    Occupied,
    /// No permission, or a read-only disk.
    #[error("no permission")]
    ReadOnly,
    /// A folder in which others can read or change files.
    #[error("open to others")]
    OpenToOthers,
    /// Another copy of the program has it locked.
    #[error("in use")]
    InUse,
    /// The disk, the quota or the file-size limit is exhausted.
    #[error("no room left")]
    NoRoom,
    /// A secret in a file that other users can read.
    #[error("readable by others")]
    Exposed,
    /// Larger than the reader's limit.
    #[error("larger than {cap} bytes")]
    TooBig {
        /// The limit, in bytes.
        cap: u64,
    },
    /// Any other fault, in the system's words.
    #[error("{detail}")]
    Other {
        /// The system's text, for an error report.
        detail: String,
    },
}

/// Adds the path to the system's error.
pub(super) fn at(path: &Path) -> impl Fn(io::Error) -> FileError {
    let path = path.to_path_buf();
    move |error| FileError { path: path.clone(), fault: fault(&error) }
}

fn fault(error: &io::Error) -> FileFault {
    match error.kind() {
        ErrorKind::NotFound => FileFault::NotFound,
        ErrorKind::IsADirectory => FileFault::NotAFile,
        ErrorKind::NotADirectory => FileFault::NotAFolder,
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => FileFault::ReadOnly,
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::FileTooLarge => FileFault::NoRoom,
        _ => FileFault::Other { detail: error.to_string() },
    }
}
