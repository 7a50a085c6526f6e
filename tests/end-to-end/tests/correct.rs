//! Correcting mistaken entries in the patient's window with two presses each, and what the clinic then reads. The log only grows.

use end_to_end::scenes::{FOUR_WEEKS_ON, ZONE};
use end_to_end::{Desktop, Prescribed, Window};
use exercises::log::LogEvent;
use rusqlite::Connection;

fn log(desktop: &Desktop) -> Vec<LogEvent> {
    let db = Connection::open(desktop.path("patient").join("carryover.db")).expect("the patient's database");
    let mut rows = db.prepare("SELECT payload FROM entry ORDER BY n").expect("the log");
    let rows = rows.query_map([], |row| row.get::<_, Vec<u8>>(0)).expect("entries");
    rows.map(|payload| format::entry::read(&payload.expect("bytes")).expect("an entry")).collect()
}

fn open(desktop: &Desktop) -> Window {
    let window = desktop.open("patient").at(FOUR_WEEKS_ON).zone(ZONE).start();
    window.press("Record");
    window.press("Was something entered by mistake?");
    window.see("Pain this morning, upper back: 9 of 10");
    window
}

/// Opens the entry with these words and presses the correction.
fn put_right(window: &Window, entry: &str, press: &str, then: &str) {
    window.press_part(entry);
    window.press(press);
    window.see(then);
    // The focus is back on the entry, which now shows what counts.
    window
        .wait_for("return document.activeElement.id.startsWith('entry-') && document.activeElement.ariaExpanded !== 'true'");
}

#[test]
fn mistakes_are_corrected_and_nothing_is_erased() {
    let desktop = Desktop::new();
    let made = desktop.with_four_weeks();
    let before = log(&desktop);
    let window = open(&desktop);
    put_right(&window, "Pain this morning, upper back: 9 of 10", "2", "Now: 2 of 10.");
    put_right(&window, "Carry the shopping home: 5 of 10", "7", "Now: 7 of 10.");
    put_right(
        &window,
        "Upper back: settled by the morning",
        "Upper back: not settled by the morning",
        "Now: Upper back: not",
    );
    put_right(&window, "skipped (no time", "Felt fine, no need", "Now: felt fine, no need.");
    put_right(&window, ": travelling", "Delete: it was a mistake", "Deleted.");
    put_right(&window, "11:10", "I did not do this", "Not done.");
    put_right(&window, "Something was wrong during", "Note that it was a mistake", "Anything paused stays paused.");
    window.screenshot("mistakes-put-right");
    window.close();

    let after = log(&desktop);
    let grown: Vec<&LogEvent> = after[before.len()..].iter().filter(|event| !matches!(event, LogEvent::Opened)).collect();
    assert_eq!(after[..before.len()], before[..], "nothing of before was changed");
    assert_eq!(grown.len(), 7, "{grown:?}");
    assert!(grown.iter().all(|event| matches!(event, LogEvent::Corrected { .. })), "{grown:?}");
    the_clinic_reads(&desktop, &made);
}

/// Checks what counts now, that it is marked as corrected, and that the alarm is unchanged.
fn the_clinic_reads(desktop: &Desktop, made: &Prescribed) {
    let file = desktop.path("summary.age").to_string_lossy().into_owned();
    made.patient(FOUR_WEEKS_ON, &["summary", "--until", "2027-03-28", "--out", &file]);
    made.clinic_at(FOUR_WEEKS_ON, &["receive", &file]);
    let review = made.clinic_at(FOUR_WEEKS_ON, &["review", "K17"]).split_whitespace().collect::<Vec<_>>().join(" ");
    for line in ["The patient corrected 7 entries", "raised by mistake", "felt fine, no need"] {
        assert!(review.contains(line), "{line:?} is missing in\n{review}");
    }
    assert!(!review.contains("no time"), "{review}");
}

#[test]
fn a_correction_is_undone_by_another() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let window = open(&desktop);
    put_right(&window, "Pain this morning, upper back: 9 of 10", "Delete: it was a mistake", "Deleted.");
    window.press_part("Pain this morning, upper back: 9 of 10");
    window.see("Back to what I entered first");
    assert!(!window.can_press("Delete: it was a mistake"), "it is out");
    window.press("Back to what I entered first");
    window.see_no_more("Deleted.");
    // Choosing the original score is not a correction.
    put_right(&window, "Pain this morning, upper back: 9 of 10", "3", "Now: 3 of 10.");
    window.press_part("Pain this morning, upper back: 9 of 10");
    window.press("9");
    window.see_no_more("Now: 3 of 10.");
    window.close();
    let window = open(&desktop);
    assert!(!window.sees("Now: "), "{}", window.text());
}

#[test]
fn days_off_are_moved_but_not_to_an_end_before_their_beginning() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let window = open(&desktop);
    window.press_part(": travelling");
    window.choose("To", "28 Mar");
    window.wait_for(
        "return [...document.querySelectorAll('button')].some((it) => it.innerText === 'Save these days' && it.disabled)",
    );
    window.choose("To", "2 Apr");
    window.choose("Why?", "On holiday");
    window.press("Save these days");
    window.see("Now: Days off from 29 March to 2 April: on holiday.");
    window.press("Show earlier days");
    window.see("Monday 1 March");
    window.see_no_more("Show earlier days");
}
