//! The program may end at any moment: committed data are there afterwards, and nothing is half-written.
//!
//! A process that appends to the log is killed repeatedly, also while it creates the folder; another one reaches a limit on the size
//! of files. `STORE_KILL_ROUNDS` sets the number of rounds; the default is twenty.
#![cfg(unix)]

mod support;

use std::path::Path;
use std::process::Child;
use std::time::Duration;
use store::{Home, StoreError};
use support::{again, own_binary, place, said, sound, whole};

#[test]
fn child() {
    support::act();
}

fn rounds() -> u32 {
    match std::env::var("STORE_KILL_ROUNDS") {
        Ok(rounds) => rounds.parse().expect("STORE_KILL_ROUNDS is a number"),
        Err(_) => 20,
    }
}

/// A different pause in each round, spread over `most`.
fn pause(round: u32, most: Duration) {
    std::thread::sleep(most * (round.wrapping_mul(2_654_435_761) >> 16) / (1 << 16));
}

/// Kills the writer and returns the highest entry number that it acknowledged, 0 if none.
fn kill(mut writer: Child) -> u32 {
    writer.kill().expect("a child of the test");
    let output = writer.wait_with_output().expect("a child of the test");
    assert_eq!(said(&output, "stopped "), Vec::<String>::new(), "it was killed at work, not by an error");
    said(&output, "committed ").last().map_or(0, |n| n.parse().expect("a number"))
}

fn writer(home: &Path) -> Child {
    again(&[], &own_binary(), "write", home).spawn().expect("started")
}

#[test]
fn acknowledged_entries_survive_a_kill() {
    let (_dir, home) = place();
    drop(Home::open(&home, true).expect("a new folder"));
    let mut acknowledged = 0;
    for round in 0..rounds() {
        let writer = writer(&home);
        pause(round, Duration::from_millis(150));
        acknowledged = kill(writer).max(acknowledged);
        let kept = sound(&home);
        assert!(
            kept == acknowledged || kept == acknowledged + 1,
            "round {round}: {acknowledged} acknowledged, {kept} kept; only the one in flight may be more"
        );
        acknowledged = kept;
    }
    assert!(acknowledged > 0, "the writer got to write at all");
}

#[test]
fn a_kill_while_the_folder_is_made_leaves_a_usable_one() {
    for round in 0..rounds() {
        let (_dir, home) = place();
        let writer = writer(&home);
        pause(round, Duration::from_millis(40));
        let acknowledged = kill(writer);
        let kept = whole(&Home::open(&home, true).expect("usable"));
        assert!(kept == acknowledged || kept == acknowledged + 1, "round {round}: {acknowledged}, {kept}");
    }
}

/// Starts a program that may not create a file larger than 200 KiB; it gets an error instead of being killed.
const LIMITED: [&str; 4] = ["sh", "-c", "trap '' XFSZ; ulimit -f 400; exec \"$0\" \"$@\"", "env"];

#[test]
fn a_limit_on_file_size_stops_the_writer_and_costs_nothing() {
    let (_dir, home) = place();
    let output = again(&LIMITED, &own_binary(), "write", &home).output().expect("sh starts the binary");
    let acknowledged: u32 = said(&output, "committed ").last().expect("some fit").parse().expect("a number");
    let stopped = said(&output, "stopped ").concat();
    assert!(stopped.starts_with("DiskFault") || stopped.starts_with("DiskFull"), "{stopped}");
    assert_eq!(sound(&home), acknowledged, "what was refused is not there, what was acknowledged is");
    let mut open = Home::open(&home, false).expect("usable without the limit");
    assert_eq!(support::append(&mut open), Ok::<_, StoreError>(acknowledged + 1), "and it continues");
}

#[test]
fn a_limit_on_file_size_leaves_the_old_file_in_place() {
    let (dir, _) = place();
    let file = dir.path().join("summary.age");
    std::fs::write(&file, "last week's").expect("the test owns it");
    let output = again(&LIMITED, &own_binary(), "save", &file).output().expect("sh starts the binary");
    let outcome = said(&output, "saved ").concat();
    assert!(outcome.starts_with("Err(") && outcome.contains("NoRoom"), "{outcome}");
    assert_eq!(std::fs::read(&file).expect("still there"), b"last week's");
    assert_eq!(std::fs::read_dir(dir.path()).expect("the test owns it").count(), 1, "nothing half-made is left beside it");
}
