//! Backups in the real window: one takes the place of the data, one brings them to a new device, and a damaged data folder is saved as far
//! as it can be read.

use end_to_end::scenes::{HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Window, carryover};
use std::path::PathBuf;

/// Something to rate, so that the record becomes long.
const COMPLAINT: &str = "\n[[complaint]]\nnumber = 1\nname = \"neck\"\npain = 4\n";
const MORNING: &str = "2027-03-01T09:10:00+01:00";

fn open(desktop: &Desktop, home: &str) -> Window {
    desktop.open(home).at(MORNING).zone(ZONE).start()
}

/// A patient's backup, made by the terminal.
fn backup(desktop: &Desktop) -> PathBuf {
    let file = desktop.path("carryover-backup.db");
    let home = desktop.path("patient");
    carryover(&["--home", &home.to_string_lossy(), "--at", MORNING, "backup", "--to", &file.to_string_lossy()]);
    file
}

#[test]
fn a_backup_takes_the_place_of_the_data_only_after_a_question() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let file = backup(&desktop);
    let window = open(&desktop, "patient");
    window.press("Record");
    window.press("Your data");
    window.press("Restore a backup");
    let foreign = desktop.path("foreign.db");
    std::fs::write(&foreign, "no database").expect("room");
    window.choose_file("Choose a backup file", &foreign);
    window.press("Restore this backup");
    window.see("foreign.db is not a backup of this program, or it is damaged.");
    window.press("Close");
    window.choose_file("Choose a backup file", &file);
    window.see("in the place of everything that is saved here: carryover-backup.db?");
    window.see("What is here now is kept in the data folder under another name.");
    window.look_at_phone_sizes("restore-ask");
    window.press("Leave everything as it is");
    window.choose_file("Choose a backup file", &file);
    window.press("Restore this backup");
    window.see("The data that were here before are kept as carryover.db.before-restore-");
    window.press("Go on");
    window.see("These data were put back to an earlier state.");
}

#[test]
fn a_backup_brings_everything_to_a_new_device() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let file = backup(&desktop);
    let window = open(&desktop, "new");
    window.welcomed();
    window.press("Restore a backup");
    window.see("On a new device, a backup brings back everything");
    window.look_at_phone_sizes("restore-new-device");
    window.choose_file("Choose a backup file", &file);
    window.press("Restore this backup");
    window.see("The backup was restored.");
    window.press("Go on");
    window.see("Monday, 09:1");
}

#[test]
fn of_a_damaged_folder_what_can_be_read_is_saved_in_the_window() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(&format!("{HOLD}{COMPLAINT}"), TAKEN);
    let at = |n: i32| format!("2027-03-01T{:02}:{:02}:00+01:00", 9 + n / 60, n % 60);
    let rating = |n| format!(r#"{{"do":"pain","at":"{}","complaint":1,"score":3}}"#, at(n));
    let lines: Vec<String> = (0..300).map(rating).collect();
    let many = desktop.path("many.jsonl");
    std::fs::write(&many, lines.join("\n")).expect("room");
    made.patient("2027-03-01T20:00:00+01:00", &["record", &many.to_string_lossy()]);
    let database = desktop.path("patient").join("carryover.db");
    let mut bytes = std::fs::read(&database).expect("there");
    // A leaf of a table begins with this byte; the last of the file is one of the record's.
    let leaf = (1..bytes.len() / 4096).rev().map(|page| page * 4096).find(|page| bytes[*page] == 0x0D).expect("many pages");
    bytes[leaf..leaf + 4096].fill(0);
    std::fs::write(&database, bytes).expect("room");
    let window = open(&desktop, "patient");
    window.see("is damaged.");
    window.see("Restore a backup");
    window.look_at_phone_sizes("damaged");
    window.press("Save what can be read");
    window.see("Plan cards: 1 saved, none lost.");
    window.look_at_phone_sizes("damaged-saved");
    window.press("Go on");
    window.see("Monday, 09:1");
}
