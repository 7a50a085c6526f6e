//! Backup, restore, and erasing.

mod support;

use std::fs;
use std::path::Path;
use store::table::{entry, keys, log, patient, setting};
use store::{Home, LATEST, Provenance, StoreError};
use support::{append, database, place, sound, whole};

#[test]
fn child() {
    support::act();
}

fn filled(home: &Path, entries: u32) -> Home {
    let mut home = Home::open(home, true).expect("a new folder");
    for _ in 0..entries {
        append(&mut home).expect("room");
    }
    home
}

#[test]
fn a_backup_is_complete_and_restores_to_the_same() {
    let (dir, home) = place();
    let original = filled(&home, 200);
    let copy = dir.path().join("backup.carryover");
    // Twice, because a backup must replace the previous one.
    for _ in 0..2 {
        original.store().backup(&copy).expect("room");
    }
    let files: Vec<_> = fs::read_dir(dir.path())
        .expect("the test owns it")
        .map(|file| file.expect("the test owns it").file_name())
        .collect();
    assert_eq!(files.len(), 2, "the home and one file, no write-ahead log beside it: {files:?}");
    assert_eq!(whole(&original), 200, "the original continues");

    let elsewhere = dir.path().join("new telephone");
    let mut restored = Home::restore(&elsewhere, &copy).expect("a sound copy");
    assert_eq!(whole(&restored), 200);
    assert_eq!(append(&mut restored), Ok(201), "and it continues");
    drop(restored);
    assert_eq!(sound(&elsewhere), 201);
}

#[cfg(unix)]
#[test]
fn a_backup_on_a_write_protected_disk_restores() {
    use std::os::unix::fs::PermissionsExt;
    let (dir, home) = place();
    let copy = dir.path().join("backup.carryover");
    filled(&home, 3).store().backup(&copy).expect("room");
    fs::set_permissions(&copy, PermissionsExt::from_mode(0o444)).expect("the test owns it");
    fs::set_permissions(dir.path(), PermissionsExt::from_mode(0o555)).expect("the test owns it");
    let output = support::as_unprivileged_user("restore", &copy);
    fs::set_permissions(dir.path(), PermissionsExt::from_mode(0o755)).expect("the test owns it");
    assert_eq!(support::said(&output, "restored "), ["Ok(3)"], "reading is enough: {output:?}");
}

#[test]
fn a_backup_never_replaces_the_original() {
    let (_dir, home) = place();
    let original = filled(&home, 2);
    let same = home.join("..").join("home").join("carryover.db");
    assert!(matches!(original.store().backup(&same), Err(StoreError::Occupied { .. })));
    assert_eq!(whole(&original), 2);
}

#[test]
fn a_backup_to_nowhere() {
    let (dir, home) = place();
    let original = filled(&home, 2);
    let nowhere = dir.path().join("no such folder").join("backup");
    assert!(matches!(original.store().backup(&nowhere), Err(StoreError::NotThere { .. })));
}

/// Restores from a backup after applying `change` to it, and checks that a failure leaves no database behind.
#[track_caller]
fn not_restored(change: impl FnOnce(&Path)) -> StoreError {
    let (dir, home) = place();
    let copy = dir.path().join("backup.carryover");
    filled(&home, 50).store().backup(&copy).expect("room");
    change(&copy);
    let elsewhere = dir.path().join("new");
    let error = Home::restore(&elsewhere, &copy).expect_err("to be refused");
    assert!(!database(&elsewhere).exists(), "nothing is half restored");
    error
}

#[test]
fn a_damaged_backup() {
    let error = not_restored(|copy| {
        let whole = fs::read(copy).expect("there");
        fs::write(copy, &whole[..whole.len() / 2]).expect("the test owns it");
    });
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
}

#[test]
fn a_missing_backup() {
    let error = not_restored(|copy| fs::remove_file(copy).expect("the test owns it"));
    assert!(matches!(error, StoreError::NotThere { .. }), "{error:?}");
}

#[test]
fn a_backup_of_a_newer_version() {
    let error = not_restored(|copy| {
        let connection = rusqlite::Connection::open(copy).expect("sound");
        connection.pragma_update(None, "user_version", LATEST + 1).expect("room");
    });
    assert!(matches!(error, StoreError::Newer { .. }), "{error:?}");
}

#[test]
fn a_restore_never_replaces_what_is_there() {
    let (dir, home) = place();
    let copy = dir.path().join("backup.carryover");
    filled(&home, 4).store().backup(&copy).expect("room");
    let error = Home::restore(&home, &copy).expect_err("occupied");
    assert_eq!(error, StoreError::Occupied { path: home.clone() });
    assert_eq!(sound(&home), 4);
}

/// Whether any file of the folder contains the words.
fn found_in(home: &Path, words: &[u8]) -> bool {
    fs::read_dir(home).expect("the test owns it").any(|file| {
        let bytes = fs::read(file.expect("the test owns it").path()).expect("readable");
        bytes.windows(words.len()).any(|window| window == words)
    })
}

#[test]
fn erasing_leaves_no_row_and_no_trace_in_the_files() {
    let (_dir, home) = place();
    let mut open = filled(&home, 300);
    open.store_mut()
        .transaction(|tx| {
            log::begin(tx, b"12345678")?;
            keys::insert(tx, b"knot sealed")?;
            patient::insert(tx, |_| Ok::<_, StoreError>(b"knot sealed too".into()))
        })
        .expect("room");
    assert!(found_in(&home, b"knot "), "what is looked for can be found");

    open.store_mut().erase().expect("free");
    assert!(!found_in(&home, b"knot "), "not in the database, nor in its write-ahead log");
    open.store()
        .read(|view| {
            assert_eq!(entry::all(view)?, []);
            assert_eq!(setting::all(view)?.len(), 0);
            assert_eq!(log::id(view)?, None);
            assert_eq!(keys::get(view)?, None);
            assert_eq!(patient::all(view)?, []);
            Ok::<_, StoreError>(())
        })
        .expect("readable");
    assert_eq!(append(&mut open), Ok(1), "as on the first day");
    drop(open);
    assert_eq!(sound(&home), 1);
}

#[test]
fn a_removed_patient_leaves_no_trace_once_settled() {
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    let id = open
        .store_mut()
        .transaction(|tx| patient::insert(tx, |_| Ok::<_, StoreError>(b"sealed for nobody".into())))
        .expect("room");
    assert!(found_in(&home, b"sealed for nobody"), "what is looked for can be found");
    open.store_mut().transaction(|tx| patient::remove(tx, id)).expect("there");
    open.store().settle().expect("free");
    assert!(!found_in(&home, b"sealed for nobody"));
}

#[test]
fn a_restored_backup_keeps_what_it_replaces_and_begins_another_log() {
    let (dir, home) = place();
    let mut open = filled(&home, 5);
    open.store_mut().transaction(|tx| log::begin(tx, b"log-one!")).expect("new");
    let copy = dir.path().join("backup.db");
    open.store().backup(&copy).expect("room");
    append(&mut open).expect("room");
    drop(open);
    for (round, name) in [(1u8, "carryover.db.before-restore-a day"), (2, "carryover.db.before-restore-a day-2")] {
        let (mut restored, before) = Home::restore_over(&home, &copy, "a day", None).expect("a sound copy");
        assert_eq!(before, Some(home.join(name)));
        restored.settle_in(&[round; 16], &[round; 8]).expect("room");
        assert_eq!((whole(&restored), restored.provenance()), (5, Provenance::PutBack));
        assert_eq!(restored.store().read(log::id), Ok::<_, StoreError>(Some(vec![round; 8])));
        assert_eq!(append(&mut restored), Ok(6));
    }
    let (again, _) =
        Home::restore_over(&home, &home.join("carryover.db.before-restore-a day"), "a day", None).expect("a copy");
    assert_eq!(whole(&again), 6, "what was replaced first can be put back");
}

#[test]
fn a_damaged_database_is_kept_with_its_log_when_a_backup_takes_its_place() {
    let (dir, home) = place();
    let copy = dir.path().join("backup.db");
    filled(&home, 50).store().backup(&copy).expect("room");
    let mut bytes = fs::read(database(&home)).expect("closed in order");
    bytes[5_000..9_000].fill(0xA5);
    fs::write(database(&home), &bytes).expect("the test owns it");
    fs::write(home.join("carryover.db-wal"), "what a killed program left").expect("the test owns it");
    let (restored, before) = Home::restore_over(&home, &copy, "a day", None).expect("a sound copy");
    assert_eq!(whole(&restored), 50);
    let before = before.expect("there was one");
    assert_eq!(fs::read(&before).expect("kept"), bytes);
    assert_eq!(
        fs::read(before.with_file_name("carryover.db.before-restore-a day-wal")).expect("kept"),
        b"what a killed program left"
    );
}

/// A program that was killed between the two left the log alone. SQLite would apply it to whatever database is put beside it.
#[test]
fn a_log_that_was_put_aside_without_its_database_is_put_beside_no_other() {
    let (dir, home) = place();
    let copy = dir.path().join("backup.db");
    filled(&home, 5).store().backup(&copy).expect("room");
    let alone = home.join("carryover.db.before-restore-a day-wal");
    fs::write(&alone, "the log of a damaged database").expect("the test owns it");
    let (_, before) = Home::restore_over(&home, &copy, "a day", None).expect("a sound copy");
    assert_eq!(before, Some(home.join("carryover.db.before-restore-a day-2")));
    assert_eq!(fs::read(&alone).expect("kept"), b"the log of a damaged database");
}

/// What a program left that was killed while it made the automatic backup.
#[test]
fn an_unfinished_automatic_backup_is_removed_at_the_next_start() {
    let (_dir, home) = place();
    filled(&home, 5).back_up("a day").expect("room");
    let left = home.join("backups/.carryover-new-half");
    fs::write(&left, "half a backup").expect("the test owns it");
    drop(Home::open(&home, false).expect("sound"));
    assert!(!left.exists(), "unfinished");
    assert!(home.join("backups/carryover-a day.db").exists(), "whole");
}

#[test]
fn a_backup_that_cannot_be_restored_changes_nothing() {
    let (dir, home) = place();
    drop(filled(&home, 5));
    let copy = dir.path().join("backup.db");
    fs::write(&copy, "a shopping list".repeat(1000)).expect("the test owns it");
    let before = fs::read(database(&home)).expect("there");
    Home::restore_over(&home, &copy, "a day", None).expect_err("no backup");
    assert_eq!(fs::read(database(&home)).expect("there"), before);
    assert!(!home.join("carryover.db.before-restore-a day").exists());
}

#[test]
fn automatic_backups_are_checked_copies_for_their_owner_alone() {
    let (_dir, home) = place();
    let open = filled(&home, 30);
    assert_eq!(open.backup_days(), Ok(vec![]));
    for day in ["2026-11-26", "2026-11-25", "2026-11-26"] {
        open.back_up(day).expect("room");
    }
    assert_eq!(open.backup_days(), Ok(vec!["2026-11-25".into(), "2026-11-26".into()]));
    open.remove_backup("2026-11-25").and_then(|()| open.remove_backup("2026-11-25")).expect("also twice");
    assert_eq!(open.backup_days(), Ok(vec!["2026-11-26".into()]));
    drop(open);
    let file = home.join("backups/carryover-2026-11-26.db");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let mode = |path: &Path| fs::metadata(path).expect("there").permissions().mode() & 0o777;
        assert_eq!((mode(&home.join("backups")), mode(&file)), (0o700, 0o600));
    }
    assert_eq!(whole(&Home::restore(&home.join("elsewhere"), &file).expect("a copy")), 30);
}
