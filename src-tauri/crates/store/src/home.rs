//! The data folder: made, locked, and its database opened. Window and terminal share it, one at a time.

use crate::erasing::{self, WebView};
use crate::files::{self, Lock};
use crate::{Store, StoreError, opening};
use std::path::{Path, PathBuf};

/// The database's name in the data folder.
const DATABASE: &str = "carryover.db";
/// The lock's name in the data folder. The file stays; what is held is the lock on it.
const LOCK: &str = "lock";

/// An open data folder. While it lives, no other copy of the program can open the same folder.
#[derive(Debug)]
pub struct Home {
    dir: PathBuf,
    // Above the lock, because fields are dropped in this order: the database is closed before the folder is given back.
    store: Store,
    _lock: Lock,
}

impl Home {
    /// Opens the data folder at `dir`, checks its database and brings it up to this version.
    ///
    /// With `create`, a missing folder (0700 on Unix) and a missing database are made; without, either is
    /// [`StoreError::NotThere`] and nothing is written.
    ///
    /// Refuses a file in the folder's place, a folder that takes no files, a folder that another copy has open, and a
    /// database that is damaged, foreign or newer than this program; all of those are left as they were.
    pub fn open(dir: &Path, create: bool) -> Result<Home, StoreError> {
        let (lock, path) = enter(dir, create)?;
        if files::size(&path)?.is_none() {
            opening::create(&path)?;
        }
        let store = opening::open(&path)?;
        Ok(Home { dir: dir.into(), store, _lock: lock })
    }

    /// Opens `dir` with what the backup at `from` holds. The folder may exist, but must not hold a database yet.
    ///
    /// The copy carries the log's id too: it is meant for the device that replaces the old one, not for a second one
    /// that goes on beside it.
    pub fn restore(dir: &Path, from: &Path) -> Result<Home, StoreError> {
        let (lock, path) = enter(dir, true)?;
        if files::size(&path)?.is_some() {
            return Err(StoreError::Occupied { path: dir.into() });
        }
        opening::copy(from, &path)?;
        let store = opening::open(&path)?;
        Ok(Home { dir: dir.into(), store, _lock: lock })
    }

    /// Removes everything of ours from the folder: the database with its companions, the web view's folder, what was left
    /// half-made. The folder is then as a new one. Files that somebody saved in it stay.
    ///
    /// Once this has begun there is no way back: where it fails or is cut off, the next opening ends it first.
    pub fn erase(&mut self, web_view: WebView) -> Result<(), StoreError> {
        let path = self.store.path().to_path_buf();
        erasing::begin(&self.dir)?;
        // Overwritten first, since a removed file's bytes stay on the disk. Where that fails, the file goes all the same.
        let _ = self.store.erase();
        self.store.let_go()?;
        erasing::end(&self.dir, &path, web_view)?;
        opening::create(&path)?;
        self.store = opening::open(&path)?;
        Ok(())
    }

    /// The folder, as it was given.
    pub fn dir(&self) -> &Path {
        &self.dir
    }

    /// The database, to look.
    pub fn store(&self) -> &Store {
        &self.store
    }

    /// The database, to write.
    pub fn store_mut(&mut self) -> &mut Store {
        &mut self.store
    }
}

/// Into the folder and its lock; gives the lock and the database's path.
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
