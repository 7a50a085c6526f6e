//! Which file a path leads to, whatever its name.

use super::FileError;
use super::fault::at;
use std::fs;
use std::path::Path;

/// Which file a path leads to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Identity {
    /// The number of the disk; 0 where the system has none.
    pub(crate) disk: u64,
    /// The file's number on its disk; 0 where the system has none.
    pub(crate) number: u64,
    /// The path without links, as far as it can be written as text, on one line.
    pub(crate) path: String,
}

impl Identity {
    /// Whether it is the same file: on the same disk or at the same path, because some systems number their disks anew at each start.
    /// Where files have no numbers, the path alone counts.
    pub(crate) fn is_same(&self, other: &Identity) -> bool {
        let numbered = self.number != 0 && other.number != 0;
        let same_path = self.path == other.path;
        if numbered { self.number == other.number && (self.disk == other.disk || same_path) } else { same_path }
    }
}

/// Which file `path` leads to.
pub(crate) fn identity(path: &Path) -> Result<Identity, FileError> {
    let facts = fs::metadata(path).map_err(at(path))?;
    let (disk, number) = numbers(&facts);
    let path = fs::canonicalize(path).map_err(at(path))?.display().to_string().replace('\n', " ");
    Ok(Identity { disk, number, path })
}

#[cfg(unix)]
fn numbers(facts: &fs::Metadata) -> (u64, u64) {
    use std::os::unix::fs::MetadataExt;
    (facts.dev(), facts.ino())
}

#[cfg(not(unix))]
fn numbers(_facts: &fs::Metadata) -> (u64, u64) {
    (0, 0)
}
