//! Whether a database is the one that was used here last, or a copy of it: moved, cloned, synced or put back.
//!
//! Outside the data folder, in a folder of the system for what programs remember, lies a small file for each database that was used on
//! this machine, named by the database's random id. It says how often the database was written to, and which file on which disk it is. A
//! database that was written to fewer times than its witness says was put back to an earlier state. One without a witness, or one that is
//! another file, was moved or copied. What is found gets a new id, so that a copy and its original, should both be used, differ from
//! then on.
//!
//! A witness is only ever behind its database, never ahead: it is written after each transaction, and not synced. So nothing that a crash
//! or a power cut leaves passes for a database that was put back.

use crate::files::{self, FileError, FileFault, Identity, Register};
use crate::table::origin::Origin;
use std::path::{Path, PathBuf};

/// The subfolder for our witnesses.
const FOLDER: &str = "carryover";
/// Largest size of a witness, in bytes: two lines and a path.
const MAX: u64 = 16 * 1024;
/// Number of digits of the count, which is overwritten in place.
const DIGITS: usize = 20;

/// Where a database comes from, as far as this machine can tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Provenance {
    /// It is the one that was used here last.
    Same,
    /// It never had an id: it is new, or of a version of this program that gave none.
    First,
    /// It was never used on this machine, or it is another file than the one that was: moved or copied.
    Moved,
    /// It was used here, and is in an earlier state than it was: a copy was put back.
    PutBack,
    /// Nothing can be remembered outside the data folder, so a copy cannot be told from the original.
    Unknown,
}

impl Provenance {
    /// Whether it is a copy, or may be one.
    pub fn is_copy(self) -> bool {
        matches!(self, Provenance::Moved | Provenance::PutBack)
    }
}

/// The witness of an open database.
#[derive(Debug)]
pub(crate) struct Witness(Register);

impl Witness {
    /// Notes the number of transactions. If it cannot be written, it is behind, which is safe.
    pub(crate) fn note(&self, generation: i64) {
        let _ = self.0.overwrite(line(generation).as_bytes());
    }
}

/// Compares the database at `path` with what is remembered of it in `folder`; returns the witness if it is the same.
pub(crate) fn examine(folder: Option<&Path>, path: &Path, origin: Option<Origin>) -> (Provenance, Option<Witness>) {
    let Some(folder) = folder else { return (Provenance::Unknown, None) };
    let Some(origin) = origin else { return (Provenance::First, None) };
    let place = place(folder, &origin.id);
    let found = match files::read(&place, MAX) {
        Ok(bytes) => parse(&bytes),
        Err(FileError { fault: FileFault::NotFound, .. }) => None,
        Err(_) => return (Provenance::Unknown, None),
    };
    let Some((generation, was)) = found else { return (Provenance::Moved, None) };
    if generation > origin.generation {
        return (Provenance::PutBack, None);
    }
    if !files::identity(path).is_ok_and(|is| is.is_same(&was)) {
        return (Provenance::Moved, None);
    }
    match files::register(&place) {
        Ok(register) => (Provenance::Same, Some(Witness(register))),
        Err(_) => (Provenance::Unknown, None),
    }
}

/// Writes the first witness of the database at `path` with this id.
pub(crate) fn begin(folder: &Path, path: &Path, id: &[u8; 16], generation: i64) -> Result<Witness, FileError> {
    files::folder(&folder.join(FOLDER), true)?;
    let place = place(folder, id);
    let Identity { disk, number, path } = files::identity(path)?;
    let text = format!("{}{disk} {number}\n{path}\n", line(generation));
    files::write(&place, text.as_bytes())?;
    files::register(&place).map(Witness)
}

/// Removes every witness of a database at `path`: that of this id, and those that it had there before copies were put back.
pub(crate) fn forget_all(folder: &Path, path: &Path) -> Result<(), FileError> {
    let is = files::identity(path)?.path;
    for name in files::names(&folder.join(FOLDER))? {
        let witness = folder.join(FOLDER).join(name);
        let was = files::read(&witness, MAX).ok().and_then(|bytes| parse(&bytes));
        if was.is_some_and(|(_, was)| was.path == is) {
            files::remove(&witness)?;
        }
    }
    Ok(())
}

/// Removes the witness of this id, if there is one.
pub(crate) fn forget(folder: &Path, id: &[u8; 16]) -> Result<(), FileError> {
    files::remove(&place(folder, id))
}

fn place(folder: &Path, id: &[u8; 16]) -> PathBuf {
    let name: String = id.iter().map(|byte| format!("{byte:02x}")).collect();
    folder.join(FOLDER).join(name)
}

fn line(generation: i64) -> String {
    format!("{generation:0DIGITS$}\n")
}

fn parse(bytes: &[u8]) -> Option<(i64, Identity)> {
    let text = std::str::from_utf8(bytes).ok()?;
    let (generation, rest) = text.split_once('\n')?;
    let (file, path) = rest.split_once('\n')?;
    let (disk, number) = file.split_once(' ')?;
    let identity =
        Identity { disk: disk.parse().ok()?, number: number.parse().ok()?, path: path.strip_suffix('\n')?.to_owned() };
    Some((generation.parse().ok()?, identity))
}
