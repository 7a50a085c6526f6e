//! Backups of a data folder on either side: one a day by itself, one when a person asks for it, and restoring one.

use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use chrono::{Datelike, NaiveDate};
use exercises::plain_text::shown;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use store::{Home, StoreError};
use wire::Failure;
use wire::app::{BackupSource, Backups, Restored, Role, SalvageReport, SalvagedTable};

/// How many days the automatic backups reach back without a gap, as far as the program was used.
const DAYS: usize = 7;
/// From how many weeks before those days one backup each is kept.
const WEEKS: usize = 4;

/// Writes today's automatic backup, unless there is one, and removes those that are no longer kept. Nothing happens before a side is
/// chosen, in a sample, and with a time that was set on the command line.
///
/// # Errors
/// Any failure to write it, which [`show`] tells; then no older one was removed.
pub fn daily(folder: &mut DataFolder, moment: &Moment) -> ActionResult<()> {
    let today = moment.now.date();
    if folder.role.is_none() || folder.is_sample || folder.at_is_set || folder.backed_up == Some(today) {
        folder.backup_fault = None;
        return Ok(());
    }
    let written = of_today(folder, today);
    folder.backup_fault = written.as_ref().err().cloned();
    for day in superfluous(&written?, today) {
        folder.home.remove_backup(&day.to_string()).map_err(refuse::store(&folder.dir()))?;
    }
    folder.backed_up = Some(today);
    Ok(())
}

/// Writes today's automatic backup, unless there is one; returns the days of all.
fn of_today(folder: &mut DataFolder, today: NaiveDate) -> ActionResult<BTreeSet<NaiveDate>> {
    let mut days = days(&folder.home)?;
    if days.insert(today) {
        folder.home.back_up(&today.to_string()).map_err(refuse::store(&folder.dir()))?;
    }
    Ok(days)
}

fn days(home: &Home) -> ActionResult<BTreeSet<NaiveDate>> {
    let named = home.backup_days().map_err(refuse::store(home.dir()))?;
    Ok(named.iter().filter_map(|day| day.parse().ok()).collect())
}

/// The backups that are removed: of those until today all but the newest seven days, and the newest of each of the four weeks before. Days
/// that have not come yet stay: they are of a clock that was ahead, or the real ones while it is behind. They become no more than that,
/// because while a clock is ahead they are no days to come.
fn superfluous(days: &BTreeSet<NaiveDate>, today: NaiveDate) -> Vec<NaiveDate> {
    let mut weeks = BTreeSet::new();
    let older = days.range(..=today).rev().skip(DAYS);
    let kept = |day: &&NaiveDate| weeks.len() < WEEKS && weeks.insert((day.iso_week().year(), day.iso_week().week()));
    let kept: BTreeSet<NaiveDate> = older.clone().filter(kept).copied().collect();
    older.filter(|day| !kept.contains(day)).copied().collect()
}

/// The days of the automatic backups in the data folder `home`, newest first; also if the folder cannot be opened.
pub fn days_in(home: &Path) -> ActionResult<Vec<NaiveDate>> {
    let named = Home::backup_days_in(home).map_err(refuse::store(home))?;
    Ok(named.iter().rev().filter_map(|day| day.parse().ok()).collect())
}

/// Writes an automatic backup of what is there now, and removes all other copies in the data folder: older backups, and databases that were
/// put aside. They hold what was removed since. With a time that was set on the command line, the backup has that day.
///
/// # Errors
/// Any failure to write the backup; then no other was removed.
pub fn remove_older(folder: &mut DataFolder, moment: &Moment) -> ActionResult<()> {
    let today = moment.now.date();
    let dir = folder.dir();
    let refused = refuse::store(&dir);
    folder.home.back_up(&today.to_string()).map_err(&refused)?;
    folder.home.remove_older_copies(&today.to_string()).map_err(&refused)?;
    folder.backed_up = Some(today);
    folder.backup_fault = None;
    Ok(())
}

/// When the last automatic backup was made, and its path; and why today's could not be written. A day that has not come yet is named only if
/// there is no other: it is of a clock that was ahead, or this one is behind.
///
/// # Errors
/// Any failure to read which backups there are, unless today's could not be written: then the reason for that is returned instead.
pub fn show(folder: &DataFolder, moment: &Moment) -> ActionResult<Backups<String>> {
    let fault = folder.backup_fault.clone();
    let days = match days(&folder.home) {
        Err(_) if fault.is_some() => BTreeSet::new(),
        read => read?,
    };
    let last = days.range(..=moment.now.date()).next_back().or(days.first()).copied();
    let file = |day: NaiveDate| Home::backup_of_day(folder.home.dir(), &day.to_string()).display().to_string();
    Ok(Backups { last: last.map(|day| (day, file(day))), fault, readable: folder.role == Some(Role::Patient) })
}

/// Writes a backup to `to`, or into the folder for saved files.
///
/// # Errors
/// [`Failure::NoRole`] if there is nothing to back up yet; any failure to write the file.
pub fn save(folder: &DataFolder, moment: &Moment, to: Option<&Path>) -> ActionResult<Saved> {
    folder.role.ok_or(Failure::NoRole)?;
    let path = to.map_or_else(|| platform::free_name(folder, moment, "carryover-backup", ".db"), Path::to_path_buf);
    let file = path.display().to_string();
    let bytes = folder.home.store().backup(&path).map_err(|error| match error {
        StoreError::Damaged { .. } | StoreError::Corrupt { .. } => refuse::store(folder.home.dir())(error),
        _ => Failure::FileUnwritable { file: file.clone() },
    })?;
    Ok(Saved { path: file, bytes })
}

/// Puts a backup in the place of the data in the folder `home`, and opens it: see [`DataFolder::open_remembering`]. Returns as well where the
/// data are kept that were there before, if there were any.
///
/// # Errors
/// [`Failure::NotABackup`] and other failures to read the file; then nothing has changed.
pub fn restore(
    home: &Path,
    from: &Path,
    moment: &Moment,
    remembered: Option<&Path>,
) -> ActionResult<(DataFolder, Option<PathBuf>)> {
    let day = moment.now.date().to_string();
    let restored = Home::restore_over(home, from, &day, remembered).map_err(unfit(from, home))?;
    Ok((DataFolder::of(restored.0)?, restored.1))
}

/// Puts a backup that was chosen in the window in the place of the data in the folder `home`, as [`restore`] does.
///
/// # Errors
/// As for [`restore`].
pub fn restore_chosen(
    home: &Path,
    chosen: &BackupSource,
    moment: &Moment,
    remembered: Option<&Path>,
) -> ActionResult<(DataFolder, Restored<String>)> {
    let (folder, before) = match chosen {
        BackupSource::Day(day) => restore(home, &Home::backup_of_day(home, &day.to_string()), moment, remembered)?,
        BackupSource::File { name, bytes } => {
            let name = PathBuf::from(shown(name).as_ref());
            let bytes = platform::from_base64(bytes)?;
            let day = moment.now.date().to_string();
            let restored = Home::restore_bytes_over(home, &name, &bytes, &day, remembered);
            let (restored, before) = restored.map_err(unfit(&name, home))?;
            (DataFolder::of(restored)?, before)
        }
    };
    Ok((folder, Restored { before: before.map(|path| path.display().to_string()) }))
}

/// Why the backup at `from` was not restored to `home`.
fn unfit(from: &Path, home: &Path) -> impl Fn(StoreError) -> Failure {
    let file = from.display().to_string();
    move |error| match error {
        StoreError::NotThere { path } if path == from => Failure::FileMissing { file: file.clone() },
        StoreError::Foreign { path, .. } | StoreError::Damaged { path, .. } if path == from => {
            Failure::NotABackup { file: file.clone() }
        }
        StoreError::Newer { path, .. } if path == from => Failure::HomeNewer { home: file.clone() },
        StoreError::ReadOnly { path } if path == from => Failure::FileUnreadable { file: file.clone() },
        other => refuse::store(home)(other),
    }
}

/// Makes a new database of what can be read of the damaged one in the folder `home`, and opens it. The damaged file is kept beside it.
///
/// # Errors
/// [`Failure::HomeDamaged`] if nothing of it can be read.
pub fn salvage(
    home: &Path,
    moment: &Moment,
    remembered: Option<&Path>,
) -> ActionResult<(DataFolder, SalvageReport<String>)> {
    let day = moment.now.date().to_string();
    let (open, salvaged) = Home::salvage(home, &day, remembered).map_err(refuse::store(home))?;
    let tables = salvaged.tables.into_iter();
    let tables =
        tables.map(|store::SalvagedTable { name, saved, lost, is_whole }| SalvagedTable { name, saved, lost, is_whole });
    let report = SalvageReport { kept: salvaged.kept.display().to_string(), tables: tables.collect() };
    Ok((DataFolder::of(open)?, report))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(number: i64) -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 3, 2).expect("a Monday") + chrono::Duration::days(number)
    }

    /// What is left when a backup is made on each of these days.
    fn left(made: impl IntoIterator<Item = i64>) -> Vec<i64> {
        let mut days = BTreeSet::new();
        for today in made.into_iter().map(day) {
            days.insert(today);
            for gone in superfluous(&days, today) {
                days.remove(&gone);
            }
        }
        days.into_iter().map(|left| (left - day(0)).num_days()).collect()
    }

    #[test]
    fn seven_days_and_four_weeks_are_kept() {
        assert_eq!(left(0..7), Vec::from_iter(0..7));
        // Day 70 is a Monday. Before the last seven days, the newest of each week is left: a Monday, and Sundays.
        assert_eq!(left(0..=70), [48, 55, 62, 63, 64, 65, 66, 67, 68, 69, 70]);
        assert_eq!(left([0, 40, 41, 300]), [0, 40, 41, 300], "seldom used, all are among the newest seven");
    }

    #[test]
    fn a_clock_that_was_ahead_removes_no_backup_of_today() {
        let ahead = 4_000..4_007;
        let left = left((0..30).chain(ahead).chain(30..33));
        assert!(left.contains(&32), "{left:?}");
        assert!(left.iter().any(|day| (20..30).contains(day)), "{left:?}");
    }

    #[test]
    fn after_a_clock_that_was_ahead_the_last_seven_days_are_kept_as_before() {
        let left = left((0..30).chain(4_000..4_020).chain(30..40));
        assert!((33..40).all(|day| left.contains(&day)), "{left:?}");
        assert!(left.len() <= 2 * (DAYS + WEEKS), "{left:?}");
    }

    #[test]
    fn a_clock_that_is_behind_removes_none_of_the_last_days() {
        let behind = left((1_000..1_030).chain(0..30));
        assert!((1_023..1_030).all(|day| behind.contains(&day)), "{behind:?}");
        let after_one_ahead = left((0..30).chain(4_000..4_020).chain(30..40).chain([-2_000]));
        assert!((33..40).all(|day| after_one_ahead.contains(&day)), "{after_one_ahead:?}");
    }
}
