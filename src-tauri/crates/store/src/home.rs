//! Creates and locks the data folder, and opens its database. Window and terminal share the folder, one at a time.

use crate::backups;
use crate::erasing::{self, WebView};
use crate::files::{self, FileError, FileFault, Lock, NewFile};
use crate::salvage::{self, Salvaged};
use crate::table::{former_log, origin};
use crate::witness::{self, Provenance};
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
    /// The folder outside the data folder in which it is remembered what was used on this machine.
    witnesses: Option<PathBuf>,
    provenance: Provenance,
    /// Whether the database was restored from a backup just now, so that it is known to be a copy.
    is_restored: bool,
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
    ///
    /// A copy cannot be told from the original, because nothing is remembered outside the folder; see [`Home::open_watched`].
    pub fn open(dir: &Path, create: bool) -> Result<Home, StoreError> {
        Home::open_watched(dir, create, None)
    }

    /// Opens the data folder as [`Home::open`] does, and says whether it is the one that was used on this machine last, according to what
    /// is remembered in the folder `witnesses`: see [`Home::provenance`].
    pub fn open_watched(dir: &Path, create: bool, witnesses: Option<&Path>) -> Result<Home, StoreError> {
        let (lock, path) = enter(dir, create)?;
        if files::size(&path)?.is_none() {
            opening::create(&path)?;
        }
        Home::of(dir, &path, witnesses, lock)
    }

    fn of(dir: &Path, path: &Path, witnesses: Option<&Path>, lock: Lock) -> Result<Home, StoreError> {
        let mut store = match opening::open(path) {
            Err(error) if opening::is_no_room(&error) => opening::open_for_reading(path).map_err(|_| error)?,
            opened => opened?,
        };
        let origin = store.read(origin::get)?;
        let (provenance, witness) = witness::examine(witnesses, path, origin);
        store.watched_by(witness);
        Ok(Home {
            dir: dir.into(),
            store,
            witnesses: witnesses.map(Path::to_owned),
            provenance,
            is_restored: false,
            _lock: lock,
        })
    }

    /// Where the database comes from, as it was found when the folder was opened.
    pub fn provenance(&self) -> Provenance {
        self.provenance
    }

    /// Makes a database that is new here, or a copy, one of its own: with the id `id`, and, if it is a copy that has a log, with the log
    /// id `log`; both are random bytes from the caller. Nothing happens to one that is the same as before.
    ///
    /// If nothing can be remembered outside the folder, nothing is changed, and the provenance is [`Provenance::Unknown`].
    pub fn settle_in(&mut self, id: &[u8; 16], log: &[u8]) -> Result<(), StoreError> {
        if !matches!(self.provenance, Provenance::First | Provenance::Moved | Provenance::PutBack) {
            return Ok(());
        }
        let generation = self.store.read(origin::get)?.map_or(0, |origin| origin.generation);
        // The witness comes first: without one, the new id would be taken for a copy each time.
        let begin = |folder: &PathBuf| witness::begin(folder, self.store.path(), id, generation).ok();
        let witness = self.witnesses.as_ref().and_then(begin);
        if witness.is_none() && !self.is_restored {
            self.provenance = Provenance::Unknown;
            return Ok(());
        }
        let is_copy = self.provenance.is_copy();
        let settled = self.store.transaction(|tx| {
            if witness.is_some() {
                origin::rename(tx, id)?;
            }
            if is_copy { former_log::succeed(tx, log) } else { Ok::<_, StoreError>(()) }
        });
        if let (Err(_), Some(folder)) = (&settled, &self.witnesses) {
            let _ = witness::forget(folder, id);
        }
        match settled {
            // What is written under the old ids would pass for the original's. Reading goes on.
            Err(error) if opening::is_no_room(&error) => {
                self.store.close_for_writing();
                return Ok(());
            }
            settled => settled?,
        }
        if let Some(witness) = &witness {
            witness.note(generation + 1);
        }
        self.store.watched_by(witness);
        Ok(())
    }

    /// Writes the automatic backup of the day named `day`, in the folder of backups; one that was written before on that day is replaced. It
    /// was checked when this returns.
    pub fn back_up(&self, day: &str) -> Result<(), StoreError> {
        backups::make_folder(&self.dir)?;
        self.store.backup(&backups::of_day(&self.dir, day)).map(drop)
    }

    /// The days of the automatic backups, ascending.
    pub fn backup_days(&self) -> Result<Vec<String>, StoreError> {
        Home::backup_days_in(&self.dir)
    }

    /// The days of the automatic backups in the data folder `dir`, ascending, whether or not it can be opened.
    pub fn backup_days_in(dir: &Path) -> Result<Vec<String>, StoreError> {
        Ok(backups::days(dir)?)
    }

    /// Where the automatic backup of a day is, by the day's name.
    pub fn backup_of_day(dir: &Path, day: &str) -> PathBuf {
        backups::of_day(dir, day)
    }

    /// Removes, overwritten, the automatic backups made before the one of `day` and every database that was put aside when a backup was
    /// restored or a damaged one was salvaged: they have what was deleted since. Returns how many files were removed.
    pub fn remove_older_copies(&self, day: &str) -> Result<usize, StoreError> {
        let (found, _) = backups::all(&self.dir, self.store.path())?;
        let newest = backups::of_day(&self.dir, day);
        let older: Vec<PathBuf> = found.into_iter().filter(|file| *file != newest).collect();
        older.iter().try_for_each(|file| files::wipe(file))?;
        Ok(older.len())
    }

    /// Removes the automatic backup of a day, if there is one.
    pub fn remove_backup(&self, day: &str) -> Result<(), StoreError> {
        Ok(files::wipe(&backups::of_day(&self.dir, day))?)
    }

    /// Puts the backup at `from` in the place of the database in `dir`, if there is one, and opens it. The database that was there before is
    /// kept beside it, with `day` in its name, which is returned as well.
    ///
    /// A database that cannot be opened is kept with its write-ahead log. Until the backup is in its place, complete and checked, the
    /// database that was there is the one that opens.
    pub fn restore_over(
        dir: &Path,
        from: &Path,
        day: &str,
        witnesses: Option<&Path>,
    ) -> Result<(Home, Option<PathBuf>), StoreError> {
        Home::replace(dir, day, witnesses, |path| opening::checked_copy(from, path))
    }

    /// Does what [`Home::restore_over`] does with a backup of which these are the bytes. In what is wrong with it, its path is `name`.
    pub fn restore_bytes_over(
        dir: &Path,
        name: &Path,
        bytes: &[u8],
        day: &str,
        witnesses: Option<&Path>,
    ) -> Result<(Home, Option<PathBuf>), StoreError> {
        Home::replace(dir, day, witnesses, |path| {
            let source = files::beside(path)?;
            files::fill(&source, bytes)?;
            let copied = opening::checked_copy(source.path(), path);
            backups::remove_companions(source.path())?;
            copied.map_err(|error| error.renamed(source.path(), name))
        })
    }

    /// Puts the database that `make` makes in the place of the one in `dir`, and opens it.
    fn replace(
        dir: &Path,
        day: &str,
        witnesses: Option<&Path>,
        make: impl FnOnce(&Path) -> Result<NewFile, StoreError>,
    ) -> Result<(Home, Option<PathBuf>), StoreError> {
        let (lock, path) = enter(dir, true)?;
        let new = make(&path)?;
        let before = match files::size(&path)? {
            None => None,
            Some(_) => {
                // Closing it writes its log back; if it cannot be opened, the log is kept beside it.
                match opening::open(&path) {
                    Err(error) if error.may_pass() => return Err(error),
                    opened => drop(opened),
                }
                Some(backups::put_aside(&path, backups::REPLACED, day)?)
            }
        };
        // SQLite would apply a log that is left to the new database.
        backups::remove_companions(&path)?;
        files::put_in_place(new, &path)?;
        let mut home = Home::of(dir, &path, witnesses, lock)?;
        home.is_restored = true;
        if !home.provenance.is_copy() {
            home.provenance = Provenance::PutBack;
            home.store.watched_by(None);
        }
        Ok((home, before))
    }

    /// Makes a new database of what can be read of the damaged one in `dir`, which is kept beside it with `day` in its name. One that is
    /// not damaged goes through this without a loss.
    ///
    /// # Errors
    /// [`StoreError::Damaged`] if nothing of it can be read; then nothing but the copy under another name has changed.
    pub fn salvage(dir: &Path, day: &str, witnesses: Option<&Path>) -> Result<(Home, Salvaged), StoreError> {
        let (lock, path) = enter(dir, false)?;
        let salvaged = salvage::salvage(&path, day).map_err(|error| match error {
            StoreError::Corrupt { detail } => StoreError::Damaged { path: path.clone(), detail },
            other => other,
        })?;
        Ok((Home::of(dir, &path, witnesses, lock)?, salvaged))
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
        Home::of(dir, &path, None, lock)
    }

    /// Removes everything of ours from the folder: the database with SQLite's files next to it, its backups, the web view's folder, and
    /// unfinished files, and what is remembered of it outside. All but the web view's folder is overwritten first. The folder is then like a new one. Files that a person saved in it remain.
    ///
    /// Once begun it cannot be undone: if it fails or is interrupted, the next opening finishes it first.
    pub fn erase(&mut self, web_view: WebView) -> Result<(), StoreError> {
        let path = self.store.path().to_path_buf();
        // Before the mark, because afterwards nothing says which witnesses they are. If this is all that happens, the folder counts as a copy.
        if let Some(folder) = self.witnesses.as_ref().filter(|_| self.provenance != Provenance::Unknown) {
            witness::forget_all(folder, &path)?;
        }
        self.store.let_go()?;
        if let Err(error) = erasing::begin(&self.dir, &path) {
            self.store = opening::open(&path)?;
            return Err(error.into());
        }
        erasing::end(&self.dir, &path, web_view)?;
        self.store = match opening::create(&path).and_then(|()| opening::open(&path)) {
            // What was asked for is done. There is room for a new database at the next start, or that says that there is none.
            Err(error) if opening::is_no_room(&error) => opening::in_memory(&path)?,
            opened => opened?,
        };
        self.provenance = if self.witnesses.is_some() { Provenance::First } else { Provenance::Unknown };
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
    let is_ours =
        files::names(dir)?.iter().all(|name| name == LOCK || erasing::is_mark(name)) || files::size(&path)?.is_some();
    match files::takes_files(dir) {
        // What is there can still be read, exported to another disk, and erased.
        Err(FileError { fault: FileFault::NoRoom, .. }) => {}
        takes => takes?,
    }
    files::make_private(dir, is_ours)?;
    files::sweep(dir)?;
    backups::sweep(dir);
    erasing::end(dir, &path, WebView::Closed)?;
    if missing(&path)? {
        return Err(StoreError::NotThere { path: dir.into() });
    }
    Ok((lock, path))
}
