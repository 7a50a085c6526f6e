//! Backups: saved, restored, made by themselves; and moving to a new device in the middle of a plan.

use crate::place::{PASSPHRASE, Place, clinic, patient};
use crate::put_back::{Story, alarms, rating};
use serde_json::Value;
use std::fs;
use std::path::PathBuf;

/// The whole way: a backup on the old device, restored on the new one, used there; the old one brought a summary before.
#[test]
fn a_new_device_in_the_middle_of_a_plan_continues_the_old_one() {
    let story = Story::begun();
    let trouble = "{\"do\":\"trouble\",\"at\":\"2026-11-25T10:00:00+01:00\",\"what\":\"nerve\"}".to_owned();
    story.records("state", "patient", &[rating("25T09:00", 3), trouble, rating("26T09:00", 4)]);
    story.review("state", "patient", "one.age");
    story.done("state", &["--home", "patient", "backup", "--to", "moving.db"]);
    let said = story.run("new-state", &["--home", "new", "restore", "moving.db"]);
    assert_eq!(said.code, Some(0), "{said:?}");
    assert!(said.out.starts_with("The backup was restored.") && said.err.contains("moved or copied here"), "{said:?}");
    story.records("new-state", "new", &[rating("27T09:00", 5)]);
    let review = story.review("new-state", "new", "two.age");
    assert_eq!(alarms(&review), [("nerve".to_owned(), false)], "once");
    assert_eq!(
        (review["pain"][0]["last_day"].clone(), review["pain"][0]["now"].clone()),
        (2.into(), Value::Null),
        "three mornings"
    );
    let text = story.clinic("2026-11-28T09:20:00+01:00", &["review", "K17"]);
    assert!(!text.contains("from 2 devices") && !text.contains("record ends on"), "{text}");
}

#[test]
fn a_clinics_backup_restores_and_what_it_replaces_is_kept() {
    let place = Place::prepared();
    let said = place.done(&["--home", "clinic", "backup", "--to", "clinic.db"]);
    assert!(said.contains("clinic.db") && said.contains("It is encrypted"), "{said}");
    let bytes = place.read("clinic.db");
    for words in [&b"K17"[..], b"upper back", PASSPHRASE.as_bytes()] {
        assert!(!bytes.windows(words.len()).any(|part| part == words), "{words:?}");
    }
    place.clinic(&["add", "Q9"]);
    let said = place.run(&["--home", "clinic", "--at", "2026-11-28T09:00:00+01:00", "restore", "clinic.db"]);
    let before = "clinic/carryover.db.before-restore-2026-11-28";
    assert!(
        said.code == Some(0) && said.out.contains(before) && said.err.contains("put back to an earlier state"),
        "{said:?}"
    );
    assert_eq!(place.clinic(&["patients"]), "K17\t0\n");
    place.run(&["--home", "clinic", "restore", before]);
    assert_eq!(place.clinic(&["patients"]).lines().count(), 2);
}

#[test]
fn what_is_no_backup_is_refused_and_nothing_changes() {
    let place = Place::prepared();
    place.done(&["--home", "patient", "backup", "--to", "whole.db"]);
    place.write("cut.db", &place.read("whole.db")[..9_000]);
    for (file, says) in [
        ("nowhere.db", "There is no file"),
        ("runs.jsonl", "runs.jsonl is not a backup of this program"),
        ("cut.db", "cut.db is not a backup of this program"),
    ] {
        place.refused(&["--home", "patient", "restore", file], &[says]);
    }
    place.refused(&["--home", "nowhere", "backup", "--to", "x.db"], &["There is no data folder at nowhere."]);
    place.refused(&["--home", "patient", "backup", "--to", "no/such/folder.db"], &["Could not write no/such/folder.db."]);
}

fn automatic(place: &Place) -> Vec<PathBuf> {
    fs::read_dir(place.path("patient/backups")).into_iter().flatten().flatten().map(|file| file.path()).collect()
}

/// With the real clock, because a set one says nothing about the day.
#[test]
fn a_backup_is_made_by_itself_and_erasing_removes_it() {
    let place = Place::prepared();
    place.done(&["--home", "patient", "--at", "2026-11-25T12:00:00+01:00", "patient", "now"]);
    assert_eq!(automatic(&place), [] as [PathBuf; 0]);
    let now = ["--home", "patient", "patient", "now"];
    place.done(&now);
    let made = automatic(&place);
    assert_eq!(made.len(), 1, "{made:?}");
    let said = place.run(&["--home", "elsewhere", "restore", made[0].to_str().expect("text")]);
    assert_eq!(said.code, Some(0), "{said:?}");
    place.done(&patient(&["erase", "--yes"]));
    assert!(!place.path("patient/backups").exists());
}

#[test]
fn backups_need_no_passphrase_and_a_restored_clinic_still_does() {
    let place = Place::prepared();
    place.done(&["--home", "clinic", "backup", "--to", "clinic.db"]);
    place.run(&["--home", "other", "restore", "clinic.db"]);
    place.write("wrong", "not this one at all\n");
    place.refused(&["--home", "other", "clinic", "--passphrase-file", "wrong", "patients"], &["passphrase"]);
    assert_eq!(place.run(&clinic(&["patients"])).code, Some(0));
}

#[test]
fn of_a_damaged_folder_what_can_be_read_is_saved_and_counted() {
    let place = Place::prepared();
    let lines: Vec<String> = (0..400).map(|n| rating(&format!("25T{:02}:{:02}", 9 + n / 60, n % 60), 3)).collect();
    place.write("many.jsonl", lines.join("\n"));
    place.done(&patient(&["record", "many.jsonl"]));
    let mut bytes = place.read("patient/carryover.db");
    // A leaf of a table begins with this byte; the last of the file is one of the record's.
    let leaf = (1..bytes.len() / 4096).rev().map(|page| page * 4096).find(|page| bytes[*page] == 0x0D).expect("many pages");
    bytes[leaf..leaf + 4096].fill(0);
    place.write("patient/carryover.db", &bytes);
    place.refused(
        &patient(&["now"]),
        &["The database in patient is damaged.", "restore your last backup", "carryover salvage"],
    );
    let said = place.run(&["--home", "patient", "--at", "2026-11-28T09:00:00+01:00", "salvage"]);
    assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{said:?}");
    assert!(said.out.contains("Plan cards: 1 saved, none lost."), "{said:?}");
    assert!(said.out.contains("patient/carryover.db.damaged-2026-11-28"), "{said:?}");
    assert_eq!(place.read("patient/carryover.db.damaged-2026-11-28"), bytes);
    place.done(&patient(&["now"]));
}
