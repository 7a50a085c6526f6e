//! Correcting mistaken entries in the terminal, and what the clinic then reads.

use crate::place::{DONE, Place, clinic};
use serde_json::Value;

/// A command of the patient whose runs are recorded.
fn correct<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "done", "--at", DONE, "patient", "correct"][..], arguments].concat()
}

/// The number of the newest entry of this kind.
fn entry(place: &Place, kind: &str) -> String {
    let listed = place.done(&[&["--json"][..], &correct(&[])].concat());
    let lines = listed.lines().map(|line| serde_json::from_str::<Value>(line).expect("JSON"));
    lines.filter(|line| !line["said"][kind].is_null()).map(|line| line["n"].to_string()).next().expect(kind)
}

#[test]
fn mistaken_entries_are_corrected_and_the_clinic_reads_the_corrections() {
    let place = Place::prepared();
    place.clinic(&["receive", "summary.age"]);
    let (run, left, trouble) = (entry(&place, "Run"), entry(&place, "LeftOut"), entry(&place, "Trouble"));
    let said = place.done(&correct(&["--entry", &left, "--reason", "unwell"]));
    assert!(said.starts_with(&format!("{left}\t2026-11-26T")), "{said}");
    assert!(said.contains("skipped (no time, or could not get away)") && said.contains(". Now: tired or unwell."), "{said}");
    assert!(place.done(&correct(&["--entry", &run, "--remove"])).ends_with(". Not done.\n"));
    let noted = place.done(&correct(&["--entry", &trouble, "--remove"]));
    assert!(noted.contains("Noted as a mistake. Anything paused stays paused."), "{noted}");
    let seal = ["--home", "done", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "right.age"];
    place.done(&seal);
    assert_eq!(place.clinic(&["receive", "right.age"]), "right.age: K17, 1 day updated.\n");
    // Lines are wrapped.
    let review = place.clinic(&["review", "K17"]).split_whitespace().collect::<Vec<_>>().join(" ");
    for line in [
        "The patient corrected 3 entries.",
        "The patient notes that it was raised by mistake.",
        "Nearly fell, on 26 November",
        "tired or unwell",
    ] {
        assert!(review.contains(line), "{line:?} is missing in\n{review}");
    }
    assert!(!review.contains("no time, or could not get away"), "{review}");
    assert_eq!(place.clinic(&["patients"]), "K17\t1\n", "the alarm is still one");
    assert_eq!(place.clinic(&["receive", "summary.age"]), "summary.age: K17, nothing new. Nothing was changed.\n");
}

#[test]
fn the_persons_own_copy_shows_both() {
    let place = Place::prepared();
    let pain = entry(&place, "Morning");
    place.done(&correct(&["--entry", &pain, "--score", "1"]));
    place.done(&["--home", "done", "--at", DONE, "patient", "export", "--out", "mine"]);
    let whole: Value = serde_json::from_slice(&place.read("mine/everything.json")).expect("JSON");
    let entries = whole["entries"].as_array().expect("a list");
    let number: u64 = pain.parse().expect("a number");
    let first = entries.iter().find(|one| one["n"] == number).expect("the entry as it was");
    assert_ne!(first["score"], 1);
    let last = entries.last().expect("the correction");
    assert_eq!((&last["what"], last["entry"].to_string(), &last["score"]), (&"corrected".into(), pain.clone(), &1.into()));
    let table = place.text("mine/corrections.csv");
    let was = first["score"].to_string();
    assert!(table.lines().nth(1).is_some_and(|line| line.ends_with(&format!(",{pain},morning,{was},changed,1"))), "{table}");
    let answers = place.text("mine/answers.csv");
    let line = answers.lines().find(|line| line.split(',').nth(1) == Some(&pain)).expect("the answer");
    assert!(line.ends_with(",1,"), "as corrected, and by a clock that was right: {line}");
    place.done(&correct(&["--entry", &pain, "--restore"]));
    assert!(!place.done(&correct(&[])).contains("Now: "), "the original value");
}

#[test]
fn a_correction_that_is_not_possible_is_refused() {
    let place = Place::prepared();
    let pain = entry(&place, "Morning");
    place.refused(&correct(&["--entry", "1", "--remove"]), &["There is no entry 1 that can be corrected."]);
    place.refused(&correct(&["--entry", &pain, "--score", "11"]), &["The number must be from 0 to 10."]);
    place.refused(&correct(&["--entry", &pain, "--reason", "pain"]), &["This entry cannot be corrected in that way."]);
    for usage in [&["--entry", pain.as_str()][..], &["--remove"], &["--entry", &pain, "--remove", "--score", "1"]] {
        assert_eq!(place.run(&correct(usage)).code, Some(2), "{usage:?}");
    }
    let refused = place.run(&clinic(&["correct"]));
    assert_eq!(refused.code, Some(2), "the clinic corrects nothing");
    let empty = place.done(&["--home", "patient", "--at", "2026-12-20T09:00:00+01:00", "patient", "correct"]);
    assert_eq!(empty, "There is nothing from the last 7 days that can be corrected.\n");
}
