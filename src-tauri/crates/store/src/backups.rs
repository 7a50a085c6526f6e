//! Backups: the automatic ones in the data folder, and the database that a restored one replaces.
//!
//! A backup is one file, a complete copy of the database, checked before it gets its name. What is readable in the database is readable in
//! the backup too.

use crate::files::{self, FileError};
use crate::salvage::DAMAGED;
use std::path::{Path, PathBuf};

/// The subfolder of the data folder for automatic backups.
const FOLDER: &str = "backups";
/// What the names of automatic backups begin and end with; the day is between them.
const NAME: (&str, &str) = ("carryover-", ".db");
/// What is added to a database's name, before the day, when another one takes its place.
pub(crate) const REPLACED: &str = ".before-restore-";
/// The endings of the files that SQLite keeps next to a database.
pub(crate) const COMPANIONS: [&str; 3] = ["-wal", "-shm", "-journal"];

/// Where the automatic backup of a day is, by the day's name.
pub(crate) fn of_day(dir: &Path, day: &str) -> PathBuf {
    dir.join(FOLDER).join(format!("{}{day}{}", NAME.0, NAME.1))
}

/// The days of the automatic backups in the data folder `dir`, ascending by name.
pub(crate) fn days(dir: &Path) -> Result<Vec<String>, FileError> {
    let names = files::names(&dir.join(FOLDER))?;
    let day = |name: &String| name.strip_prefix(NAME.0)?.strip_suffix(NAME.1).map(str::to_owned);
    let mut days: Vec<String> = names.iter().filter_map(day).collect();
    days.sort();
    Ok(days)
}

/// Makes sure that there is a folder for automatic backups.
pub(crate) fn make_folder(dir: &Path) -> Result<(), FileError> {
    files::folder(&dir.join(FOLDER), true)
}

/// Copies the files of the database at `path`, as they are, to a free name with `day` in it; returns that name.
pub(crate) fn put_aside(path: &Path, ending: &str, day: &str) -> Result<PathBuf, FileError> {
    let named = |number: u32| match number {
        1 => beside(path, &format!("{ending}{day}")),
        _ => beside(path, &format!("{ending}{day}-{number}")),
    };
    // A log that a killed program left there alone would be applied to the database beside it.
    let is_taken = |aside: &Path| {
        let names = ["", "-wal", "-journal"].map(|ending| files::size(&beside(aside, ending)));
        names.into_iter().try_fold(false, |taken, size| Ok::<_, FileError>(taken || size?.is_some()))
    };
    let mut number = 1;
    while is_taken(&named(number))? {
        number += 1;
    }
    let aside = named(number);
    for companion in COMPANIONS {
        if companion != "-shm" && files::size(&beside(path, companion))?.is_some() {
            files::copy(&beside(path, companion), &beside(&aside, companion))?;
        }
    }
    files::copy(path, &aside)?;
    Ok(aside)
}

/// Removes the files that SQLite keeps next to the database at `path`, which must be closed. Afterwards they are gone for good: after a
/// power cut a log that came back would be applied to the database that takes the place of this one.
pub(crate) fn remove_companions(path: &Path) -> Result<(), FileError> {
    COMPANIONS.iter().try_for_each(|ending| files::remove(&beside(path, ending)))?;
    path.parent().map_or(Ok(()), files::settle)
}

/// Removes what a killed program left unfinished in the folder of automatic backups. One that cannot be removed is no reason not to go
/// on. The caller must hold the folder's lock.
pub(crate) fn sweep(dir: &Path) {
    let folder = dir.join(FOLDER);
    for name in files::names(&folder).into_iter().flatten().filter(|name| files::is_half_made(name)) {
        let _ = files::wipe(&folder.join(name));
    }
}

/// Everything that backups and restoring have left in the data folder `dir` of the database at `path`, and the folder of the automatic ones.
pub(crate) fn all(dir: &Path, path: &Path) -> Result<(Vec<PathBuf>, PathBuf), FileError> {
    let folder = dir.join(FOLDER);
    let ours = |name: &String| name.starts_with(NAME.0) && name.contains(NAME.1) || files::is_half_made(name);
    let mut found: Vec<PathBuf> =
        files::names(&folder)?.iter().filter(|name| ours(name)).map(|name| folder.join(name)).collect();
    let database = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let aside = files::names(dir)?;
    let aside = aside.iter().filter(|name| {
        name.strip_prefix(&database).is_some_and(|rest| rest.starts_with(REPLACED) || rest.starts_with(DAMAGED))
    });
    found.extend(aside.map(|name| dir.join(name)));
    Ok((found, folder))
}

pub(crate) fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    name.into()
}
