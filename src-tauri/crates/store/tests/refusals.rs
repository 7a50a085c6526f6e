//! What the store refuses, and that it does not change what it refuses.

mod support;

use rusqlite::Connection;
use std::fs;
use std::path::Path;
use store::{Home, LATEST, StoreError};
use support::{append, database, place, sound};

#[test]
fn child() {
    support::act();
}

/// A data folder with some entries; the store is closed again.
fn filled(home: &Path) {
    let mut home = Home::open(home, true).expect("a new folder");
    for _ in 0..60 {
        append(&mut home).expect("room");
    }
}

/// Changes the database directly, tries to open it, and checks that trying changed nothing.
#[track_caller]
fn refused(change: impl FnOnce(&Path)) -> StoreError {
    let (_dir, home) = place();
    filled(&home);
    let file = database(&home);
    change(&file);
    let before = fs::read(&file).expect("the database is there");
    let error = Home::open(&home, true).expect_err("this is to be refused");
    assert_eq!(fs::read(&file).expect("still there"), before, "a refused file stays as it was");
    assert_eq!(Home::open(&home, false).expect_err("again"), error, "the same answer every time");
    error
}

#[test]
fn a_folder_that_is_not_there_is_made_only_when_asked() {
    let (_dir, home) = place();
    assert!(matches!(Home::open(&home, false), Err(StoreError::NotThere { path }) if path == home));
    assert!(!home.exists(), "looking makes nothing");
    drop(Home::open(&home, true).expect("made when asked"));
    assert_eq!(sound(&home), 0);
}

#[test]
fn a_folder_without_a_database_is_left_alone_unless_asked() {
    let (_dir, home) = place();
    fs::create_dir(&home).expect("the test owns it");
    assert!(matches!(Home::open(&home, false), Err(StoreError::NotThere { .. })));
    assert_eq!(fs::read_dir(&home).expect("the test owns it").count(), 0, "not even a lock is put into a foreign folder");
}

#[test]
#[cfg(unix)]
fn folder_and_files_are_for_their_owner_alone() {
    use std::os::unix::fs::PermissionsExt;
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    append(&mut open).expect("room");
    let mode = |path: &Path| fs::metadata(path).expect("there").permissions().mode() & 0o777;
    assert_eq!(mode(&home), 0o700);
    let files: Vec<_> =
        fs::read_dir(&home).expect("the test owns it").map(|file| file.expect("the test owns it").path()).collect();
    assert!(files.len() >= 3, "database, write-ahead log and lock at least: {files:?}");
    for file in files {
        assert_eq!(mode(&file), 0o600, "{}", file.display());
    }
}

#[test]
fn a_file_in_place_of_the_folder() {
    let (_dir, home) = place();
    fs::write(&home, "a shopping list").expect("the test owns it");
    assert_eq!(Home::open(&home, true).expect_err("a file"), StoreError::NotAFolder { path: home.clone() });
    assert_eq!(fs::read(&home).expect("still there"), b"a shopping list");
    let below = home.join("deeper");
    assert!(matches!(Home::open(&below, true), Err(StoreError::NotAFolder { .. })));
}

#[test]
fn a_folder_in_place_of_the_database() {
    let (_dir, home) = place();
    fs::create_dir_all(database(&home)).expect("the test owns it");
    assert!(matches!(Home::open(&home, true), Err(StoreError::File(_))));
}

#[test]
fn a_database_of_a_newer_version() {
    let newer = LATEST + 3;
    let error = refused(|file| {
        let connection = Connection::open(file).expect("sound");
        connection.pragma_update(None, "user_version", newer).expect("room");
    });
    assert!(matches!(error, StoreError::Newer { found, known, .. } if found == newer && known == LATEST), "{error:?}");
}

/// A killed newer version leaves rows in the write-ahead log; an older version must not move them into the database.
#[test]
fn a_newer_database_keeps_its_write_ahead_log() {
    let (dir, home) = place();
    filled(&home);
    let newer = Connection::open(database(&home)).expect("sound");
    newer.pragma_update(None, "user_version", LATEST + 1).expect("room");
    // Copied while open, like the files that a killed program leaves.
    let killed = dir.path().join("killed");
    fs::create_dir(&killed).expect("the test owns it");
    let files = ["carryover.db", "carryover.db-wal"];
    for file in files {
        fs::copy(home.join(file), killed.join(file)).expect("there");
    }
    let bytes = || files.map(|file| fs::read(killed.join(file)).expect("there"));
    let before = bytes();
    assert!(!before[1].is_empty(), "the version is in the write-ahead log alone");
    let error = Home::open(&killed, true).expect_err("newer");
    assert!(matches!(error, StoreError::Newer { .. }), "{error:?}");
    assert_eq!(bytes(), before);
}

#[test]
fn a_database_of_another_program() {
    let error = refused(|file| {
        fs::remove_file(file).expect("the test owns it");
        let other = Connection::open(file).expect("room");
        other.execute_batch("PRAGMA application_id = 77; CREATE TABLE song (title TEXT)").expect("room");
    });
    assert!(matches!(error, StoreError::Foreign { found: 77, .. }), "{error:?}");
}

#[test]
fn a_file_that_is_not_a_database() {
    let error = refused(|file| fs::write(file, "a shopping list. ".repeat(100)).expect("the test owns it"));
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
}

#[test]
fn an_emptied_database() {
    let error = refused(|file| fs::write(file, "").expect("the test owns it"));
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
}

#[test]
fn a_damaged_header() {
    let error = refused(|file| spoil(file, 0, 16));
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
}

#[test]
fn a_damaged_page() {
    // The second page: the root of the first table. Its position is known from the header.
    let error = refused(|file| spoil(file, 4096, 64));
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
}

#[test]
fn a_database_cut_short_anywhere() {
    for tenths in 1..10 {
        let error = refused(|file| {
            let whole = fs::read(file).expect("there");
            fs::write(file, &whole[..whole.len() * tenths / 10]).expect("the test owns it");
        });
        assert!(matches!(error, StoreError::Damaged { .. }), "cut at {tenths} tenths: {error:?}");
    }
}

#[test]
fn a_write_ahead_log_without_its_database() {
    let (_dir, home) = place();
    filled(&home);
    fs::remove_file(database(&home)).expect("the test owns it");
    let wal = home.join("carryover.db-wal");
    fs::write(&wal, "what is left of somebody's log").expect("the test owns it");
    let error = Home::open(&home, true).expect_err("a loss is not papered over");
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
    assert!(wal.exists() && !database(&home).exists(), "both as they were");
}

#[test]
fn what_a_killed_program_left_half_made_is_removed() {
    let (_dir, home) = place();
    filled(&home);
    let half = home.join(".carryover-new-AbCdEf");
    fs::write(&half, "half a copy").expect("the test owns it");
    assert_eq!(sound(&home), 60);
    assert!(!half.exists());
}

#[test]
fn a_folder_in_use_by_another_copy() {
    let (_dir, home) = place();
    let mut other = support::again(&[], &support::own_binary(), "hold", &home).spawn().expect("started");
    support::first_line(&mut other, "held");
    let error = Home::open(&home, true).expect_err("held by the other");
    assert_eq!(error, StoreError::InUse { path: home.clone() });
    assert!(error.may_pass(), "it helps to try later");
    other.kill().and_then(|()| other.wait()).expect("a child of the test");
    assert_eq!(sound(&home), 0, "the lock ends with its holder");
}

#[test]
fn a_folder_in_use_by_ourselves() {
    let (_dir, home) = place();
    let first = Home::open(&home, true).expect("a new folder");
    assert!(matches!(Home::open(&home, true), Err(StoreError::InUse { .. })));
    drop(first);
    assert_eq!(sound(&home), 0);
}

#[test]
fn a_database_that_another_program_is_writing() {
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    let other = Connection::open(database(&home)).expect("sound");
    other.execute_batch("BEGIN IMMEDIATE").expect("free");
    let error = append(&mut open).expect_err("the other writes");
    assert!(error == StoreError::Busy && error.may_pass(), "{error:?}");
    other.execute_batch("ROLLBACK").expect("open");
    assert_eq!(append(&mut open), Ok(1), "later it works");
}

#[cfg(unix)]
mod permissions {
    use super::*;
    use std::os::unix::fs::PermissionsExt;

    /// A folder with `mode` that other users can reach but do not own, filled by `fill`.
    #[track_caller]
    fn opened_by_nobody(mode: u32, fill: impl FnOnce(&Path)) -> String {
        let (dir, home) = place();
        fs::set_permissions(dir.path(), PermissionsExt::from_mode(0o755)).expect("the test owns it");
        fs::create_dir(&home).expect("the test owns it");
        fill(&home);
        fs::set_permissions(&home, PermissionsExt::from_mode(mode)).expect("the test owns it");
        let output = support::as_unprivileged_user("open", &home);
        // Makes it possible for a user other than root to remove the folder.
        fs::set_permissions(&home, PermissionsExt::from_mode(0o755)).expect("the test owns it");
        let said = support::said(&output, "opened ");
        assert_eq!(said.len(), 1, "{output:?}");
        said.concat()
    }

    fn all_may_write_files(home: &Path) {
        for file in fs::read_dir(home).expect("the test owns it") {
            let path = file.expect("the test owns it").path();
            fs::set_permissions(path, PermissionsExt::from_mode(0o666)).expect("the test owns it");
        }
    }

    #[test]
    fn an_empty_read_only_folder() {
        let said = opened_by_nobody(0o555, |_| ());
        assert!(said.starts_with("Err(ReadOnly"), "{said}");
    }

    #[test]
    fn a_read_only_folder_whose_files_could_be_written() {
        let said = opened_by_nobody(0o555, |home| {
            filled(home);
            all_may_write_files(home);
        });
        assert!(said.starts_with("Err(ReadOnly"), "{said}");
    }

    #[test]
    fn a_read_only_database_in_a_folder_that_takes_files() {
        let said = opened_by_nobody(0o700, |home| {
            filled(home);
            all_may_write_files(home);
            give_away(home);
            fs::set_permissions(database(home), PermissionsExt::from_mode(0o444)).expect("the test owns it");
        });
        assert!(said.starts_with("Err(ReadOnly"), "{said}");
    }

    #[test]
    fn a_folder_that_may_not_be_entered() {
        let said = opened_by_nobody(0o600, filled);
        assert!(said.starts_with("Err(ReadOnly"), "{said}");
    }

    /// Makes the folder that of the user without privileges. Without privileges of its own, the test is that user.
    fn give_away(home: &Path) {
        let _ = std::os::unix::fs::chown(home, Some(65534), None);
    }

    #[test]
    fn with_all_permissions_the_same_folder_opens() {
        let said = opened_by_nobody(0o777, |home| {
            filled(home);
            all_may_write_files(home);
            give_away(home);
        });
        assert_eq!(said, "Ok(\"well\")");
    }

    /// Only its owner can make a folder private.
    #[test]
    fn a_folder_of_somebody_else_in_which_all_may_write() {
        use std::os::unix::fs::MetadataExt;
        let mut is_root = false;
        let said = opened_by_nobody(0o777, |home| {
            filled(home);
            all_may_write_files(home);
            is_root = fs::metadata(home).expect("the test owns it").uid() == 0;
        });
        assert_eq!(said.starts_with("Err(OpenToOthers"), is_root, "{said}");
    }
}

/// Overwrites `length` bytes starting at `from`.
fn spoil(file: &Path, from: usize, length: usize) {
    let mut bytes = fs::read(file).expect("there");
    bytes[from..from + length].fill(0xA5);
    fs::write(file, bytes).expect("the test owns it");
}
