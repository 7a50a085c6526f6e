//! Creates and locks the data folder, and opens its database. Window and terminal share the folder, one at a time.

use crate::erasing::{self, WebView};
use crate::files::{self, Lock};
use crate::{Store, StoreError, opening};
use std::path::{Path, PathBuf};

/// The database's name in the data folder.
const DATABASE: &str = "carryover.db";
/// The lock file's name in the data folder. The file remains; only the lock on it is released.
const LOCK: &str = "lock";

/// An open data folder. As long as it exists, no other copy of the program can open the same folder.
#[derive(Debug)]
pub struct Home {
    dir: PathBuf,
    // Declared before the lock, because fields are dropped in this order: the database is closed before the folder is unlocked.
    store: Store,
    _lock: Lock,
}

impl Home {
    /// Opens the data folder at `dir`, checks its database and upgrades it to this version.
    ///
    /// With `create`, a missing folder (0700 on Unix) and a missing database are created; without, either one missing is
    /// [`StoreError::NotThere`] and nothing is written.
    ///
    /// Refuses a file in the folder's place, a folder that cannot be written, a folder that another copy has open, and a database
    /// that is damaged, foreign or newer than this program. None of these is changed.
    pub fn open(dir: &Path, create: bool) -> Result<Home, StoreError> {
        let (lock, path) = enter(dir, create)?;
        if files::size(&path)?.is_none() {
            opening::create(&path)?;
        }
        let store = opening::open(&path)?;
        Ok(Home { dir: dir.into(), store, _lock: lock })
    }

    /// Opens `dir` with the contents of the backup at `from`. The folder may exist, but must not contain a database yet.
    ///
    /// The copy has the same log id as the original: it is meant for a device that replaces the old one, not for a second device
    /// that is used beside it.
    pub fn restore(dir: &Path, from: &Path) -> Result<Home, StoreError> {
        let (lock, path) = enter(dir, true)?;
        if files::size(&path)?.is_some() {
            return Err(StoreError::Occupied { path: dir.into() });
        }
        opening::copy(from, &path)?;
        let store = opening::open(&path)?;
        Ok(Home { dir: dir.into(), store, _lock: lock })
    }

    /// Removes everything of ours from the folder: the database with SQLite's files next to it, the web view's folder, and
    /// unfinished files. The folder is then like a new one. Files that a person saved in it remain.
    ///
    /// Once begun it cannot be undone: if it fails or is interrupted, the next opening finishes it first.
    pub fn erase(&mut self, web_view: WebView) -> Result<(), StoreError> {
        let path = self.store.path().to_path_buf();
        erasing::begin(&self.dir)?;
        // Overwritten first, because the bytes of a removed file stay on the disk. If that fails, the file is removed nonetheless.
        let _ = self.store.erase();
        self.store.let_go()?;
        erasing::end(&self.dir, &path, web_view)?;
        opening::create(&path)?;
        self.store = opening::open(&path)?;
        Ok(())
    }

    /// The folder's path, as it was given.
    pub fn dir(&self) -> &Path {
        &self.dir
    }

    /// The database, for reading.
    pub fn store(&self) -> &Store {
        &self.store
    }

    /// The database, for writing.
    pub fn store_mut(&mut self) -> &mut Store {
        &mut self.store
    }
}

/// Prepares and locks the folder; returns the lock and the database's path.
fn enter(dir: &Path, create: bool) -> Result<(Lock, PathBuf), StoreError> {
    files::folder(dir, create)?;
    let path = files::absolute(dir)?.join(DATABASE);
    let missing = |path: &Path| Ok::<_, StoreError>(!create && files::size(path)?.is_none());
    if missing(&path)? && !erasing::begun(dir)? {
        return Err(StoreError::NotThere { path: dir.into() });
    }
    let lock = files::lock(&dir.join(LOCK)).map_err(|mut error| {
        error.path = dir.into();
        error
    })?;
    files::takes_files(dir)?;
    files::sweep(dir)?;
    erasing::end(dir, &path, WebView::Closed)?;
    if missing(&path)? {
        return Err(StoreError::NotThere { path: dir.into() });
    }
    Ok((lock, path))
}
