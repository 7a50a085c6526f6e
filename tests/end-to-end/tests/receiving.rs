//! Receiving many files in the clinic's window: how far it is, stopping, what was done with each, and from there to the review.

use end_to_end::scenes::{HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Window};
use serde_json::json;
use std::fs;
use std::path::PathBuf;

const VISIT: &str = "2027-03-08T09:00:00+01:00";

fn open(desktop: &Desktop) -> Window {
    let clinic = desktop.open("clinic").at(VISIT).zone(ZONE).size(1280, 800).start();
    clinic.type_into("Passphrase", desktop.passphrase());
    clinic.press("Unlock");
    clinic.see("Receive summaries");
    clinic
}

/// A summary of K17 among so many files that are none.
fn brought(desktop: &Desktop, others: usize) -> Vec<PathBuf> {
    let made = desktop.prescribe(HOLD, TAKEN);
    let summary = desktop.path("brought.age");
    made.patient("2027-03-08T08:00:00+01:00", &["summary", "--until", "2027-03-07", "--out", &summary.to_string_lossy()]);
    let other = |number| {
        let path = desktop.path(&format!("none-{number:03}.age"));
        fs::write(&path, "no summary").expect("written");
        path
    };
    (0..others).map(other).chain([summary]).collect()
}

fn number_of(clinic: &Window, what: &str) -> serde_json::Value {
    clinic.ask("return document.querySelectorAll(arguments[0]).length", &[what.into()])
}

#[test]
fn files_of_several_parts_are_counted_the_new_comes_first_and_leads_to_the_review_and_equal_refusals_are_one_line() {
    let desktop = Desktop::new();
    let files = brought(&desktop, 70);
    let clinic = open(&desktop);
    clinic.wait_for("const row = document.querySelector('.patient'); if (row) row.kept = true; return row !== null");
    clinic.choose_files("Choose files", &files);
    clinic.see("New: 1 · known already: 0 · refused: 70");
    clinic.wait_for("return document.querySelector('.patient .news') !== null");
    assert_eq!(clinic.ask("return document.querySelector('.patient').kept", &[]), true, "a press on the row is not lost");
    assert_eq!(number_of(&clinic, ".receipts > li"), json!(2), "the summary, and one line for what was refused");
    let first = clinic.ask("return document.querySelector('.receipts > li').innerText.startsWith('K17: new summary')", &[]);
    assert_eq!(first, true, "{}", clinic.text());
    clinic.see("70 files: This is not an encrypted Carryover summary.");
    assert!(!clinic.sees("none-000.age"), "the names are folded");
    clinic.look_at_phone_sizes("receiving");
    clinic.press_part("70 files");
    clinic.see("none-000.age");
    assert_eq!(number_of(&clinic, ".refused .files li"), json!(20), "a long list is cut");
    clinic.look_at_phone_sizes("receiving-refused");
    for shown in [40, 60, 70] {
        clinic.press("Show more");
        assert_eq!(number_of(&clinic, ".refused .files li"), json!(shown));
    }
    assert!(!clinic.can_press("Show more"));
    clinic.press_part("K17: new summary");
    clinic.see("What got in the way");
    clinic.press("Patients");
    clinic.see("New: 1 · known already: 0 · refused: 70");

    clinic.choose_files("Choose files", &files[69..]);
    clinic.see("New: 0 · known already: 1 · refused: 1");
    clinic.see("K17: nothing new.");
    clinic.see("none-069.age: This is not an encrypted Carryover summary.");
    clinic.close();
}

/// The page stops itself as soon as it shows how far it is: whenever that is, each file is either told of or said to be untouched.
#[test]
fn whoever_stops_is_told_what_was_not_touched_and_can_go_on() {
    let desktop = Desktop::new();
    let files = brought(&desktop, 200);
    let clinic = open(&desktop);
    let stop = "window.seen = [];
        new MutationObserver(() => {
            const bar = document.querySelector('progress');
            if (!bar) return;
            window.seen.push([bar.getAttribute('aria-valuetext'), bar.getAttribute('aria-label')]);
            bar.parentElement.querySelector('button').click();
        }).observe(document.body, { childList: true, subtree: true, attributes: true, characterData: true });
        return true";
    clinic.ask(stop, &[]);
    clinic.choose_files("Choose files", &files);
    clinic.see("Stopped. ");
    clinic.see("What was received is kept.");
    let seen = clinic.ask("return window.seen[0]", &[]);
    assert_eq!(seen, json!(["0 of 201", "Receive summaries"]));
    let said = clinic.text();
    let number = |before: &str| -> usize {
        // A count of what was done is there only if anything was done.
        let rest = said.split(before).nth(1).unwrap_or_default();
        rest.split(|sign: char| !sign.is_ascii_digit()).next().and_then(|digits| digits.parse().ok()).unwrap_or_default()
    };
    assert_eq!(number("New: ") + number("refused: ") + number("Stopped. "), files.len(), "{said}");
    clinic.reload();
    clinic.see("Receive summaries");
    clinic.choose_files("Choose files", &files);
    clinic.see("refused: 200");
    clinic.close();
}
