//! Reads and writes files that a person names.

use crate::{ActionResult, refuse};
use exercises::file_fault::FileFault;
use serde::Serialize;
use std::path::{Path, PathBuf};
use wire::{Failure, Secret};
use zeroize::Zeroizing;

/// A file that was written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Saved {
    /// Its path.
    pub path: String,
    /// Its size, in bytes.
    pub bytes: u64,
}

/// Largest size of a picture or card file, in bytes.
pub const MAX_PICTURE: u64 = pictures::qr::MAX_BYTES;
/// Largest size of a sealed summary's file, in bytes.
pub const MAX_SUMMARY: u64 = format::summary::MAX_SEALED as u64;

/// Reads a file that a person named, up to `most` bytes.
pub fn read(path: &Path, most: u64) -> ActionResult<Vec<u8>> {
    store::files::read(path, most).map_err(refuse::reading)
}

/// The longest file with a passphrase or a name, in bytes.
const MAX_SECRET: u64 = 4096;

/// The first line of a file or pipe that contains a secret.
///
/// # Errors
/// [`Failure::FileExposed`] for a file that other users can read.
pub fn read_secret(path: &Path) -> ActionResult<Secret> {
    let bytes = Zeroizing::new(store::files::read_secret(path, MAX_SECRET).map_err(refuse::reading)?);
    let text = std::str::from_utf8(&bytes).map_err(|_| Failure::FileUnreadable { file: path.display().to_string() })?;
    Ok(text.lines().next().unwrap_or_default().into())
}

/// Reads a file that a clinic receives; a picture may be larger than a sealed file.
pub fn read_received(path: &Path) -> ActionResult<Vec<u8>> {
    let ending = path.extension().and_then(|ending| ending.to_str()).unwrap_or_default();
    let picture = ["png", "jpg", "jpeg"].iter().any(|known| ending.eq_ignore_ascii_case(known));
    read(path, if picture { MAX_PICTURE } else { MAX_SUMMARY })
}

/// Writes a file completely or not at all; the old one stays until the new one is safe.
pub fn write(path: &Path, bytes: &[u8]) -> ActionResult<()> {
    store::files::write(path, bytes).map_err(refuse::writing)
}

/// Writes several files; none of them appears before all are complete.
pub(crate) fn write_all(files: &[(PathBuf, Vec<u8>)]) -> ActionResult<()> {
    store::files::write_all(files).map_err(refuse::writing)
}

/// Refuses a path that cannot be written, to be called before anything is done that requires the file.
pub(crate) fn could_write(path: &Path) -> ActionResult<()> {
    store::files::could_write(path).map_err(refuse::writing)
}

/// Writes a new folder of files, completely or not at all; an existing folder is not changed.
pub(crate) fn write_folder(dir: &Path, files: &[(&str, Vec<u8>)]) -> ActionResult<()> {
    store::files::write_folder(dir, files).map_err(refuse::writing)
}

/// Removes a file that this program wrote, if it exists.
pub(crate) fn remove(path: &Path) -> ActionResult<()> {
    store::files::remove(path).map_err(refuse::writing)
}

/// Removes a folder unless something is in it.
pub(crate) fn remove_empty_folder(path: &Path) -> ActionResult<()> {
    store::files::remove_empty_folder(path).map_err(refuse::writing)
}

/// Creates a folder that a person named, if it does not exist yet.
pub fn folder(path: &Path) -> ActionResult<()> {
    store::files::make_folder(path).map_err(refuse::writing)
}

/// The failure for a file that a person wrote and that cannot be understood.
pub fn not_understood(file: &str) -> impl FnOnce(FileFault) -> Failure {
    let file = file.to_owned();
    |fault| Failure::NotUnderstood { file, fault }
}
