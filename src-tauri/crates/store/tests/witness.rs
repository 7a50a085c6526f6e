//! A data folder that was copied, moved to another machine, synced or put back never passes for the one that was used here.

mod support;

use std::fs;
use std::path::{Path, PathBuf};
use store::table::{former_log, log, origin};
use store::{Home, Provenance, StoreError, WebView};
use support::{append, database, place};
use tempfile::TempDir;

#[test]
fn child() {
    support::act();
}

/// A machine: a folder for data folders, and what is remembered outside them.
struct Machine {
    dir: TempDir,
    /// How many ids were given.
    given: u8,
}

impl Machine {
    fn new() -> Machine {
        Machine { dir: place().0, given: 0 }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.dir.path().join(name)
    }

    fn state(&self) -> PathBuf {
        self.path("state")
    }

    /// Opens the folder as a program does; returns what was found as well.
    fn open(&mut self, name: &str) -> (Home, Provenance) {
        let mut home = Home::open_watched(&self.path(name), true, Some(&self.state())).expect("the folder opens");
        let found = home.provenance();
        self.given += 1;
        home.settle_in(&[self.given; 16], &[self.given; 8]).expect("room");
        (home, found)
    }

    fn found(&mut self, name: &str) -> Provenance {
        self.open(name).1
    }

    /// A folder with a log of three entries.
    fn used(name: &str) -> Machine {
        let mut machine = Machine::new();
        let (mut home, found) = machine.open(name);
        assert_eq!(found, Provenance::First);
        home.store_mut().transaction(|tx| log::begin(tx, b"log-one!")).expect("new");
        for _ in 0..3 {
            append(&mut home).expect("room");
        }
        machine
    }
}

fn copy(from: &Path, to: &Path) {
    let _ = fs::remove_dir_all(to);
    fs::create_dir_all(to).expect("the test owns it");
    for file in fs::read_dir(from).expect("a folder").flatten().filter(|file| file.path().is_file()) {
        fs::copy(file.path(), to.join(file.file_name())).expect("copied");
    }
}

fn log_id(home: &Home) -> Vec<u8> {
    home.store().read(log::id).expect("readable").expect("begun")
}

fn former(home: &Home) -> Vec<(Vec<u8>, u32)> {
    let all = home.store().read(former_log::all).expect("readable");
    all.into_iter().map(|one| (one.id, one.entries)).collect()
}

#[test]
fn the_folder_that_was_used_last_is_the_same_also_renamed_and_after_a_crash() {
    let mut machine = Machine::used("home");
    for _ in 0..2 {
        let (home, found) = machine.open("home");
        assert_eq!((found, log_id(&home)), (Provenance::Same, b"log-one!".to_vec()));
    }
    fs::rename(machine.path("home"), machine.path("renamed")).expect("the test owns it");
    assert_eq!(machine.found("renamed"), Provenance::Same);
    // The database is ahead of its witness if the program or the machine stopped in between.
    let mut unwatched = Home::open(&machine.path("renamed"), false).expect("there");
    append(&mut unwatched).expect("room");
    drop(unwatched);
    assert_eq!(machine.found("renamed"), Provenance::Same);
}

#[test]
fn a_copy_that_is_put_back_continues_under_another_log_id() {
    let mut machine = Machine::used("home");
    copy(&machine.path("home"), &machine.path("copy"));
    let (mut home, _) = machine.open("home");
    append(&mut home).expect("room");
    drop(home);
    copy(&machine.path("copy"), &machine.path("home"));
    let (mut home, found) = machine.open("home");
    assert_eq!(found, Provenance::PutBack);
    let id = log_id(&home);
    assert_ne!(id, b"log-one!");
    assert_eq!(former(&home), [(b"log-one!".to_vec(), 3)]);
    append(&mut home).expect("room");
    drop(home);
    let (home, found) = machine.open("home");
    assert_eq!((found, log_id(&home)), (Provenance::Same, id.clone()), "it is said once");
    drop(home);
    // The same copy once more is another one than the first time.
    copy(&machine.path("copy"), &machine.path("home"));
    let (home, found) = machine.open("home");
    assert_eq!(found, Provenance::PutBack);
    assert_ne!(log_id(&home), id);
}

/// The bytes go into the same file, so that only the number of transactions differs.
#[test]
fn a_copy_that_is_written_over_the_original_is_found_too() {
    let mut machine = Machine::used("home");
    let kept = fs::read(database(&machine.path("home"))).expect("closed in order");
    let (mut home, _) = machine.open("home");
    append(&mut home).expect("room");
    drop(home);
    fs::write(database(&machine.path("home")), kept).expect("the test owns it");
    assert_eq!(machine.found("home"), Provenance::PutBack);
    assert_eq!(machine.found("home"), Provenance::Same);
}

#[test]
fn a_copy_beside_the_original_has_a_log_of_its_own_and_the_original_goes_on() {
    let mut machine = Machine::used("home");
    copy(&machine.path("home"), &machine.path("other"));
    let (other, found) = machine.open("other");
    assert_eq!(found, Provenance::Moved);
    assert_ne!(log_id(&other), b"log-one!");
    let (home, found) = machine.open("home");
    assert_eq!((found, log_id(&home)), (Provenance::Same, b"log-one!".to_vec()));
    drop((home, other));
    assert_eq!((machine.found("home"), machine.found("other")), (Provenance::Same, Provenance::Same));
}

/// A folder that two machines sync: each change of machine begins a log of its own, so that no entry has two meanings.
#[test]
fn a_folder_synced_between_two_machines_is_another_log_on_each() {
    let mut one = Machine::used("home");
    let mut other = Machine { dir: place().0, given: 100 };
    copy(&one.path("home"), &other.path("home"));
    let (mut home, found) = other.open("home");
    assert_eq!(found, Provenance::Moved);
    let there = log_id(&home);
    append(&mut home).expect("room");
    drop(home);
    // Synced back into the same file, as some programs do.
    let bytes = fs::read(database(&other.path("home"))).expect("closed in order");
    fs::write(database(&one.path("home")), bytes).expect("the test owns it");
    let (home, found) = one.open("home");
    assert_eq!(found, Provenance::Moved);
    assert_eq!(former(&home), [(b"log-one!".to_vec(), 3), (there.clone(), 4)]);
    assert!(![b"log-one!".to_vec(), there].contains(&log_id(&home)));
}

#[test]
fn where_nothing_can_be_remembered_nothing_changes() {
    let machine = Machine::used("home");
    fs::write(machine.path("a file"), "").expect("the test owns it");
    for witnesses in [None, Some(machine.path("a file")), Some(machine.path("a file/below"))] {
        let (_dir, copied) = place();
        copy(&machine.path("home"), &copied);
        for _ in 0..2 {
            let mut home = Home::open_watched(&copied, false, witnesses.as_deref()).expect("there");
            home.settle_in(&[7; 16], &[7; 8]).expect("nothing to do");
            assert_eq!((home.provenance(), log_id(&home)), (Provenance::Unknown, b"log-one!".to_vec()));
        }
    }
}

#[test]
fn erasing_forgets_the_folder_outside_it_too() {
    let mut machine = Machine::used("home");
    copy(&machine.path("home"), &machine.path("copy"));
    let (mut home, _) = machine.open("home");
    append(&mut home).expect("room");
    drop(home);
    copy(&machine.path("copy"), &machine.path("home"));
    let (mut home, _) = machine.open("home");
    let witnesses = || fs::read_dir(machine.dir.path().join("state/carryover")).expect("a folder").count();
    assert_eq!(witnesses(), 2, "that of the copy and that of the state before");
    home.erase(WebView::Closed).expect("erased");
    assert_eq!(witnesses(), 0);
    assert_eq!(home.store().read(origin::get), Ok::<_, StoreError>(None));
    drop(home);
    assert_eq!(machine.found("home"), Provenance::First, "as on the first day");
}

/// Like a kill between the two writes of settling in: the next start finds the same and does it again.
#[test]
fn a_witness_that_cannot_be_read_is_one_of_another_folder() {
    let mut machine = Machine::used("home");
    for witness in fs::read_dir(machine.path("state/carryover")).expect("a folder").flatten() {
        fs::write(witness.path(), "torn").expect("the test owns it");
    }
    assert_eq!(machine.found("home"), Provenance::Moved);
    assert_eq!(machine.found("home"), Provenance::Same);
}

#[cfg(unix)]
#[test]
fn what_is_remembered_is_for_its_owner_alone() {
    use std::os::unix::fs::PermissionsExt;
    let machine = Machine::used("home");
    let mode = |path: &Path| fs::metadata(path).expect("there").permissions().mode() & 0o777;
    let folder = machine.path("state/carryover");
    assert_eq!(mode(&folder), 0o700);
    fs::read_dir(folder).expect("a folder").flatten().for_each(|file| assert_eq!(mode(&file.path()), 0o600));
}
