//! What is found at a visit: noted, compared, corrected, repeated, and printed for the patient.

use crate::place::{Place, clinic};
use serde_json::Value;
use std::fs;
use std::process::Command;

const NEXT_VISIT: &str = "2026-12-16T09:00:00+01:00";

fn later<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "clinic", "--at", NEXT_VISIT, "clinic", "--passphrase-file", "pw", "visit"][..], arguments].concat()
}

#[track_caller]
fn has(text: &str, line: &str) {
    assert!(text.lines().any(|one| one.contains(line)), "{line:?} is missing in\n{text}");
}

#[test]
fn a_visit_is_noted_line_by_line_and_the_next_one_compared_with_it() {
    let place = Place::prepared();
    let note = |arguments: &[&str]| place.clinic(&[&["visit"], arguments].concat());
    assert_eq!(place.clinic(&["visit", "show", "K17"]), "Nothing is noted yet.\n");
    note(&["complaint", "K17", "low-back", "6", "--side", "left", "--line", "after driving"]);
    note(&["measure", "K17", "motion", "40", "--of", "bending forward", "--when", "before"]);
    note(&["measure", "K17", "pain", "6", "--of", "bending forward", "--when", "before"]);
    note(&["measure", "K17", "pain", "5", "--of", "bending forward", "--when", "after"]);
    note(&["measure", "K17", "stance", "12.4", "9", "10.5", "--side", "left"]);
    note(&["screening", "K17", "--flags", "osteoporosis"]);
    let said = note(&["measure", "K17", "motion", "55", "--of", "bending forward", "--when", "after"]);
    has(&said, "Lower back, left: after driving; pain 6 of 10");
    has(&said, "Bending forward, before treatment: 40°");
    has(&said, "Bending forward, after treatment: 55°. +15° since before treatment");
    has(&said, "5 of 10. -1, within measurement error (2 points; in neck pain up to 4) since before treatment");
    has(&said, "best 12.4 s, median 10.5 s of 3");
    has(&said, "Screening: osteoporosis. No fall in the last twelve months.");
    place.done(&later(&["change", "K17", "3", "--words", "sleeps through"]));
    place.done(&later(&["screening", "K17", "--same"]));
    place.done(&later(&["measure", "K17", "stance", "60", "--side", "left"]));
    place.done(&later(&["measure", "K17", "pain", "2", "--of", "bending forward", "--when", "before"]));
    let said = place.done(&later(&["measure", "K17", "motion", "50", "--of", "bending forward", "--when", "before"]));
    has(&said, "Change since last time: +3, better. “sleeps through”");
    has(&said, "Bending forward, before treatment: 50°. +10° since 27 November");
    has(&said, "2 of 10. -4 since 27 November");
    has(&said, "60 s or more. Difference not known, because a time was not measured to its end, since 27 November");
    assert!(
        said.find("16 December").expect("today") < said.find("\n27 November").expect("before"),
        "the newest first:\n{said}"
    );
}

#[test]
fn a_correction_replaces_and_what_was_taken_back_is_gone_from_the_page_alone() {
    let place = Place::prepared();
    let json = |arguments: &[&str]| -> Value {
        let text = place.clinic(&[&["--json", "visit"], arguments].concat());
        serde_json::from_str(&text).expect("JSON")
    };
    place.clinic(&["visit", "note", "K17", "first"]);
    place.clinic(&["visit", "note", "K17", "second"]);
    let page = json(&["note", "K17", "first, corrected", "--correct", "1"]);
    let found = page["visits"][0]["found"].as_array().expect("two").clone();
    assert_eq!(found[0]["finding"]["Note"], "first, corrected");
    assert_eq!((&found[0]["corrected"], &found[1]["corrected"]), (&Value::Bool(true), &Value::Bool(false)));
    place.refused(&clinic(&["visit", "note", "K17", "again", "--correct", "1"]), &["was changed meanwhile"]);
    let page = json(&["take-back", "K17", "2"]);
    assert_eq!(page["visits"][0]["found"].as_array().map(Vec::len), Some(1));
}

#[test]
fn what_cannot_be_noted_is_refused_in_one_sentence_and_nothing_is_stored() {
    let place = Place::prepared();
    for (arguments, says) in [
        (&["complaint", "K17", "hip", "11"][..], "from 0 to 10"),
        (&["change", "K17", "-6"], "from -5 to 5"),
        (&["measure", "K17", "motion", "400", "--of", "turning"], "from -180 to 360"),
        (&["measure", "K17", "motion", "NaN", "--of", "turning", "--side", "left", "--when", "once"], "from -180 to 360"),
        (&["measure", "K17", "motion", "40"], "1 to 40 characters"),
        (&["measure", "K17", "stance", "12"], "The side is missing"),
        (&["measure", "K17", "grip", "1", "2", "3", "4", "--side", "left"], "one to three results"),
        (&["measure", "K17", "pain", "4.5", "--of", "bending"], "whole numbers"),
        (&["note", "K17", " "], "1 to 1000 characters"),
        (&["screening", "K17", "--same"], "no earlier screening"),
        (&["take-back", "K17", "7"], "was changed meanwhile, or is not there"),
    ] {
        place.refused(&clinic(&[&["visit"], arguments].concat()), &[says]);
    }
}

#[test]
fn what_a_screening_says_holds_for_the_next_plan() {
    let place = Place::prepared();
    place.clinic(&["facts", "K17", "--lacks", "mat"]);
    place.clinic(&["visit", "screening", "K17", "--flags", "pregnancy,blood-pressure", "--fell"]);
    let facts = place.clinic(&["facts", "K17"]);
    assert!(facts.contains("pregnancy") && facts.contains("blood pressure") && facts.contains("mat"), "{facts}");
}

#[test]
fn the_hand_out_and_the_diary_are_pdf_files_that_another_program_reads() {
    let place = Place::prepared();
    for (more, name, says) in [(&[][..], "hand-out.pdf", "K17"), (&["--diary", "--letter"], "diary.pdf", "K17")] {
        place.clinic(&[&["print", "K17", "--out", name], more].concat());
        assert!(place.read(name).starts_with(b"%PDF-"));
        let file = place.path(name);
        let read = Command::new("pdftotext").arg(&file).arg("-").output().expect("poppler-utils");
        let text = String::from_utf8_lossy(&read.stdout).into_owned();
        assert!(read.status.success() && text.contains(says), "{text}");
    }
    fs::create_dir(place.path("folder.pdf")).expect("the test owns it");
    place.refused(&clinic(&["print", "K17", "--out", "folder.pdf"]), &["folder.pdf"]);
}

#[test]
fn who_was_treated_without_a_plan_gets_a_report_and_whoever_was_not_gets_none() {
    let place = Place::prepared();
    place.clinic(&["add", "K18"]);
    let report = ["review", "K18", "--as", "pdf", "--out", "report.pdf"];
    let nothing = "There is no plan and no visit yet, so there is nothing to export. Issue a plan or note a visit first.";
    place.refused(&clinic(&report), &[nothing]);
    assert!(!place.path("report.pdf").exists());
    place.clinic(&["visit", "complaint", "K18", "hip", "4", "--side", "right", "--line", "on stairs"]);
    place.clinic(&report);
    let read = Command::new("pdftotext").arg(place.path("report.pdf")).arg("-").output().expect("poppler-utils");
    let text = String::from_utf8_lossy(&read.stdout).into_owned();
    for line in ["Report on visits", "No home exercise plan has been prescribed.", "Hip, right: on stairs; pain 4 of 10"] {
        has(&text, line);
    }
}

#[test]
fn a_diary_on_paper_is_entered_shown_and_counted_in_the_review() {
    let place = Place::prepared();
    assert_eq!(place.clinic(&["diary", "K17"]), "Nothing is entered yet.\n");
    place.write("diary.toml", place.done(&["example", "diary", "--start", "2026-11-26"]));
    let at_next_visit = |arguments: &[&str]| {
        place.done(&[&["--home", "clinic", "--at", NEXT_VISIT, "clinic", "--passphrase-file", "pw"][..], arguments].concat())
    };
    let said = at_next_visit(&["diary", "K17", "diary.toml"]);
    has(&said, "26 November: Sit tall, chin back 3 of ");
    has(&said, "5 of 10 in the morning");
    has(&said, "27 November: nothing done");
    let review = at_next_visit(&["review", "K17"]);
    has(&review, "Entered at the clinic from a diary on paper, up to 27 November.");
    place.write("late.toml", place.done(&["example", "diary", "--start", "2026-11-27"]));
    place.refused(&clinic(&["diary", "K17", "late.toml"]), &["28 November is not a day of the plan so far"]);
    place.write("diary.toml", "[[day]]\ndate = 2026-11-26\nsessions = [{ item = 1 }]\n");
    place.refused(&clinic(&["diary", "K17", "diary.toml"]), &["line 3", "“n” is missing"]);
    place.refused(&clinic(&["diary", "K99"]), &["K99"]);
}
