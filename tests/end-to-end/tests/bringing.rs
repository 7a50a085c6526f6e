//! How files come into the clinic's window from the desktop: dropped on it, or in a folder that is chosen in the system's dialogue.

use end_to_end::scenes::{HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Opening, Window};
use std::fs;
use std::path::PathBuf;

const VISIT: &str = "2027-03-08T09:00:00+01:00";
/// What the page says while files are over it.
const HINT: &str = "Drop them to receive them.";

fn open(desktop: &Desktop) -> Window {
    unlocked(desktop, desktop.open("clinic"))
}

fn unlocked(desktop: &Desktop, opening: Opening<'_>) -> Window {
    let clinic = opening.at(VISIT).zone(ZONE).size(1280, 800).start();
    clinic.type_into("Passphrase", desktop.passphrase());
    clinic.press("Unlock");
    clinic.see("Receive summaries");
    clinic
}

/// Three files in a folder: two summaries of K17, the second of which covers more days than the first, and a file that is no summary. One
/// name has characters that are escaped in an address.
fn brought(desktop: &Desktop) -> [PathBuf; 3] {
    let made = desktop.prescribe(HOLD, TAKEN);
    let folder = desktop.path("brought");
    fs::create_dir(&folder).expect("the desktop's folder is writable");
    let summary = |name: &str, until: &str| {
        let path = folder.join(name);
        made.patient("2027-03-08T08:00:00+01:00", &["summary", "--until", until, "--out", &path.to_string_lossy()]);
        path
    };
    let files = [summary("one.age", "2027-03-04"), summary("two & 50 % más.age", "2027-03-07"), folder.join("none.age")];
    fs::write(&files[2], "no summary").expect("the folder was just made");
    files
}

#[test]
fn files_that_are_dropped_are_received_and_those_that_are_dragged_away_again_are_not() {
    let desktop = Desktop::new();
    let files = brought(&desktop);
    let clinic = open(&desktop);
    assert!(!clinic.sees(HINT));
    let drag = clinic.drag(&files);
    clinic.see(HINT);
    drag.leave();
    clinic.see_no_more(HINT);
    // Had those been received, these would tell nothing new.
    let drag = clinic.drag(&files);
    clinic.see(HINT);
    drag.drop_here();
    clinic.see("New: 2 · known already: 0 · refused: 1");
    clinic.see_no_more(HINT);
    clinic.see("K17: new summary, 4 new days.");
    clinic.see("one.age");
    clinic.see("K17: new summary, 3 new days.");
    clinic.see("two & 50 % más.age");
    clinic.see("none.age: This is not an encrypted Carryover summary.");
    clinic.look_at_desk_and_phones("received-dropped");
    clinic.drag(&[desktop.path("brought")]).drop_here();
    clinic.see("New: 0 · known already: 2 · refused: 1");
    clinic.close();
}

/// Whether the first folder is still being received when the second is dropped depends on the machine. Both are received in any case.
#[test]
fn a_folder_that_is_dropped_while_another_is_being_received_is_received_afterwards() {
    let desktop = Desktop::new();
    brought(&desktop);
    let many = desktop.path("many");
    fs::create_dir(&many).expect("the desktop's folder is writable");
    (0..5000).for_each(|file| fs::write(many.join(format!("{file}.age")), "no summary").expect("the folder was just made"));
    let clinic = open(&desktop);
    clinic.drag(&[many]).drop_here();
    clinic.drag(&[desktop.path("brought")]).drop_here();
    clinic.see("K17: new summary, 4 new days.");
    clinic.see("K17: new summary, 3 new days.");
    clinic.see("New: 2 · known already: 0");
    clinic.close();
}

#[test]
fn where_nothing_is_received_nothing_is_taken_from_what_is_dropped() {
    let desktop = Desktop::new();
    let files = brought(&desktop);
    let clinic = desktop.open("clinic").at(VISIT).zone(ZONE).size(1280, 800).start();
    clinic.see("Passphrase");
    clinic.drag(&files).drop_here();
    clinic.type_into("Passphrase", desktop.passphrase());
    clinic.press("Unlock");
    clinic.press("Case of K17");
    clinic.see("Plans that were issued");
    let drag = clinic.drag(&files);
    assert!(!clinic.sees(HINT));
    drag.drop_here();
    clinic.press("Patients");
    clinic.see("Receive summaries");
    assert!(!clinic.sees("New: "), "{}", clinic.text());
    // The window heard of what was dropped before this: had it been received, this would tell nothing new.
    clinic.drag(&files).drop_here();
    clinic.see("New: 2 · known already: 0 · refused: 1");
    clinic.close();
}

/// The folder is the home of the person who chooses, since keys lead there wherever the dialogue begins.
#[test]
fn a_folder_that_is_chosen_in_the_systems_dialogue_is_received_and_a_cancelled_choice_receives_nothing() {
    let desktop = Desktop::new();
    brought(&desktop);
    let home = desktop.path("brought").to_string_lossy().into_owned();
    // What such dialogues remember is kept nowhere.
    let opening = desktop.open("clinic").with("HOME", &home).with("GSETTINGS_BACKEND", "memory");
    let clinic = unlocked(&desktop, opening);
    clinic.press("Choose a folder");
    clinic.dialog("Choose a folder").cancel();
    clinic.press("Choose a folder");
    clinic.dialog("Choose a folder").choose_home();
    // Had anything been received after the first dialogue, these would tell nothing new.
    clinic.see("New: 2 · known already: 0 · refused: 1");
    clinic.see("none.age: This is not an encrypted Carryover summary.");
    clinic.close();
}
