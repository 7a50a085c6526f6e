//! Disks that are written out and opened. Equal ones are opened once.

use super::held::{Held, held_watched};
use super::replay::Image;
use std::collections::HashMap;
use std::collections::hash_map::DefaultHasher;
use std::fs::{self, DirBuilder};
use std::hash::{Hash, Hasher};
use std::os::unix::fs::DirBuilderExt;
use std::path::Path;
use tempfile::TempDir;

/// The folder in which what a program remembers outside its data folder is.
pub const STATE: &str = "state";

/// What was found on the disks that were opened.
#[derive(Default)]
pub struct Opened {
    found: HashMap<u64, Result<(Held, bool), String>>,
}

impl Opened {
    /// What the program finds in the data folder `home` of this disk at its next start, and whether it takes that for an earlier state.
    pub fn held(&mut self, image: &Image, home: &str) -> Result<(Held, bool), String> {
        let concerns = |path: &Path| path.starts_with(home) || path.starts_with(STATE);
        let part: Image =
            image.iter().filter(|(path, _)| concerns(path)).map(|(path, node)| (path.clone(), node.clone())).collect();
        self.found.entry(hash(&part)).or_insert_with(|| open(&part, home)).clone()
    }
}

/// A number for what is on a disk.
pub fn hash(image: &Image) -> u64 {
    let mut hasher = DefaultHasher::new();
    image.hash(&mut hasher);
    hasher.finish()
}

fn open(image: &Image, home: &str) -> Result<(Held, bool), String> {
    let dir = in_memory();
    for (path, node) in image {
        let path = dir.path().join(path);
        match node {
            None => DirBuilder::new().recursive(true).mode(0o700).create(path).expect("a folder"),
            Some(bytes) => fs::write(path, bytes).expect("written"),
        }
    }
    held_watched(&dir.path().join(home), Some(&dir.path().join(STATE)))
}

/// A temporary folder, in memory where there is a disk in memory: what is on it needs no syncing.
pub fn in_memory() -> TempDir {
    tempfile::tempdir_in("/dev/shm").or_else(|_| tempfile::tempdir()).expect("a temporary folder")
}
