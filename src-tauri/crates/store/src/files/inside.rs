//! What is in a folder.

use super::FileError;
use super::fault::at;
use std::fs;
use std::path::{Path, PathBuf};

/// One thing in a folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Inside {
    /// Its path: the folder's, and its name.
    pub path: PathBuf,
    /// What it is.
    pub kind: InsideKind,
}

/// What is in a folder, as the folder says it: nothing is opened, and no link is followed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InsideKind {
    /// A folder.
    Folder,
    /// Anything else: a plain file, a link to whatever, a pipe, a device.
    Other,
}

/// What is in the folder, in the order in which the system lists it. One at a time: a folder may hold any number.
///
/// # Errors
/// The folder cannot be read. What is in it and cannot be looked at counts as [`InsideKind::Other`].
pub fn inside(dir: &Path) -> Result<impl Iterator<Item = Inside>, FileError> {
    let found = fs::read_dir(dir).map_err(at(dir))?;
    Ok(found.flatten().map(|entry| {
        let folder = entry.file_type().is_ok_and(|kind| kind.is_dir());
        Inside { path: entry.path(), kind: if folder { InsideKind::Folder } else { InsideKind::Other } }
    }))
}

/// Whether the path is that of a folder, or of a link to one.
pub fn is_folder(path: &Path) -> bool {
    path.is_dir()
}
