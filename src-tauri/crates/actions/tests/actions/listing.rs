//! The list of patients, whose lines are made once, shows whatever has changed since.

use crate::people::at;
use crate::receiving::{K18, receive, summary, two_patients, unlocked};
use crate::sealed_rows::{copy, database, full};
use actions::clinic::{devices, patients};
use actions::patient::{plans, sealing, taking, today};
use actions::{DataFolder, Moment};
use chrono::NaiveDate;
use rusqlite::Connection;
use std::path::Path;
use wire::app::Role;
use wire::patient::{CardSource, SealRequest, TakeCardRequest};
use wire::receiving::Outcome;

/// Code, last day covered and damage of each line.
fn lines(folder: &DataFolder, moment: &Moment) -> Vec<(String, Option<NaiveDate>, bool)> {
    let list = patients::list(folder, moment).expect("unlocked");
    list.lines.into_iter().map(|line| (line.code, line.covered_until, line.damaged)).collect()
}

fn day(text: &str) -> Option<NaiveDate> {
    Some(at(text).now.date())
}

#[test]
fn what_is_received_or_left_out_after_the_list_was_shown_is_in_the_next() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let moment = at("11-26T08:00");
    let line = |code: &str, covered| (code.to_owned(), covered, false);
    assert_eq!(lines(&folder, &moment), [line("K17", None), line("K18", None)]);
    receive(&mut folder, &summary(&dir.path().join("a"), &cards[0]));
    assert_eq!(lines(&folder, &moment), [line("K17", day("11-25T08:00")), line("K18", None)]);
    let device = devices::list(&folder, "K17").expect("one")[0].device;
    devices::leave_out(&mut folder, "K17", device, true).expect("known");
    assert_eq!(lines(&folder, &moment), [line("K17", None), line("K18", None)]);
    patients::remove(&mut folder, "K18", "K18").expect("confirmed");
    assert_eq!(lines(&folder, &moment), [line("K17", None)]);
}

#[test]
fn what_is_received_is_stored_for_the_list_at_once() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let outside = Connection::open(dir.path().join("clinic/carryover.db")).expect("a database");
    let of_k17 = || outside.query_row("SELECT count(*) FROM digest WHERE patient <> ?1", [K18], |row| row.get::<_, u32>(0));
    assert_eq!(of_k17(), Ok(0));
    receive(&mut folder, &summary(&dir.path().join("a"), &cards[0]));
    assert_eq!(of_k17(), Ok(1));
    drop(folder);
    let line = |code: &str, covered| (code.to_owned(), covered, false);
    let again = lines(&unlocked(dir.path()), &at("11-26T08:00"));
    assert_eq!(again, [line("K17", day("11-25T08:00")), line("K18", None)]);
}

#[test]
fn a_card_that_is_damaged_while_the_clinic_is_open_is_seen_at_once() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    let folder = unlocked(dir.path());
    let damaged = || lines(&folder, &at("11-26T08:00")).into_iter().map(|line| line.2).collect::<Vec<_>>();
    assert_eq!(damaged(), [false, false]);
    let outside = Connection::open(dir.path().join("clinic/carryover.db")).expect("a database");
    outside.execute("UPDATE issued SET sealed = x'02' WHERE patient = ?1", [K18]).expect("written");
    assert_eq!(damaged(), [false, true]);
}

/// A summary of a device that was opened on 25 November and, with a clock that is ahead, on the 29th.
fn summary_ahead(dir: &Path, card: &str) -> Vec<u8> {
    let mut folder = DataFolder::open(dir, true).expect("a new folder");
    folder.choose_role(Role::Patient).expect("free to choose");
    let request = TakeCardRequest { source: CardSource::Text(card.into()), agreed: Vec::new() };
    taking::take(&mut folder, &at("11-25T08:40"), &request).expect("a valid card");
    for moment in ["11-25T08:41", "11-29T08:41"] {
        today::opened(&mut folder, &at(moment)).expect("written");
    }
    let plan = plans::one(&folder, None).expect("taken").plan().header.id;
    let seal = SealRequest { plan, from: None, until: at("11-29T20:00").now.date(), note: None };
    let out = dir.join("summary.age");
    sealing::seal(&mut folder, &at("11-29T20:00"), &seal, Some(&out)).expect("days to hand over");
    std::fs::read(out).expect("written")
}

#[test]
fn a_line_that_reads_differently_on_another_day_is_made_anew() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let sealed = summary_ahead(&dir.path().join("a"), &cards[0]);
    assert!(matches!(receive(&mut folder, &sealed), Outcome::New { .. }));
    let covered = |today: &str| lines(&folder, &at(today)).swap_remove(0).1;
    assert_eq!(covered("11-25T20:00"), day("11-25T08:00"), "what is of days to come counts for none");
    assert_eq!(covered("11-30T08:00"), day("11-29T08:00"));
    assert_eq!(covered("11-25T20:00"), day("11-25T08:00"));
}

/// The lines of a store whose list was stored, and of the same without what was stored: they must be alike.
#[track_caller]
fn with_and_without_what_was_stored(dir: &Path, case: &str) -> Vec<(String, Option<NaiveDate>, bool)> {
    let all = |dir: &Path| lines(&unlocked(dir), &at("12-02T08:00"));
    let with = all(dir);
    database(dir).execute_batch("DELETE FROM digest").expect("allowed");
    assert_eq!(with, all(dir), "{case}");
    with
}

#[test]
fn what_is_stored_of_the_list_hides_nothing_that_was_changed_from_outside() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let older: Vec<u8> =
        database(dir.path()).query_row("SELECT sealed FROM received WHERE id = 1", [], |row| row.get(0)).expect("there");
    patients::show(&mut unlocked(dir.path()), &at("12-02T08:00")).expect("unlocked");
    let stored: i64 = database(dir.path()).query_row("SELECT count(*) FROM digest", [], |row| row.get(0)).expect("there");
    assert_eq!(stored, 2);
    let place = copy(dir.path(), "as it is");
    let sound = with_and_without_what_was_stored(&place, "as it is");
    assert!(sound.iter().all(|(_, covered, damaged)| covered.is_some() && !damaged), "{sound:?}");
    let cases = [
        "UPDATE received SET sealed = x'02' WHERE patient = 2",
        "DELETE FROM received WHERE patient = 2",
        "UPDATE issued SET sealed = x'02' WHERE patient = 2",
        "DELETE FROM issued WHERE patient = 2",
        "UPDATE device SET sealed = x'02' WHERE patient = 2",
        "UPDATE patient SET sealed = x'02' WHERE id = 2",
        "UPDATE received SET patient = 1 WHERE patient = 2",
        "DELETE FROM manifest; DELETE FROM received WHERE patient = 2",
    ];
    for (place, sql) in cases.into_iter().enumerate() {
        let place = copy(dir.path(), &place.to_string());
        database(&place).execute_batch(sql).expect("allowed");
        assert_ne!(with_and_without_what_was_stored(&place, sql), sound, "{sql}");
    }
    let place = copy(dir.path(), "exchanged");
    database(&place)
        .execute_batch("UPDATE digest SET patient = 99 WHERE patient = 1; UPDATE digest SET patient = 1 WHERE patient = 2")
        .expect("allowed");
    assert_eq!(with_and_without_what_was_stored(&place, "another's"), sound);
    // Rows as they were, in a store that has said something else of them since.
    let place = copy(dir.path(), "put back");
    database(&place).execute("UPDATE received SET sealed = ?1 WHERE id = 1", [&older]).expect("allowed");
    assert_eq!(with_and_without_what_was_stored(&place, "the same bytes"), sound);
}

#[test]
fn what_is_stored_of_the_list_is_of_no_day_before_it_was_made_and_no_later_write() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    receive(&mut folder, &summary_ahead(&dir.path().join("a"), &cards[0]));
    let show = |folder: &mut DataFolder, when: &str| {
        let list = patients::show(folder, &at(when)).expect("unlocked");
        list.lines.into_iter().next().expect("two").covered_until
    };
    assert_eq!(show(&mut folder, "11-30T08:00"), day("11-29T08:00"));
    drop(folder);
    let mut folder = unlocked(dir.path());
    assert_eq!(show(&mut folder, "11-25T20:00"), day("11-25T08:00"), "what is of days to come counts for none");
    drop(folder);
    let mut folder = unlocked(dir.path());
    assert_eq!(show(&mut folder, "11-30T08:00"), day("11-29T08:00"), "a line that a later day changes is not stored");
    let device = devices::list(&folder, "K17").expect("one")[0].device;
    devices::leave_out(&mut folder, "K17", device, true).expect("known");
    drop(folder);
    assert_eq!(show(&mut unlocked(dir.path()), "11-30T08:00"), None, "left out after the list was stored");
}
