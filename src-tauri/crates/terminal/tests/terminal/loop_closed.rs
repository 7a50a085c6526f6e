//! From one visit to the next and back, and what other programs can do with the files.

use crate::forge;
use crate::place::{DONE, Place, TAKEN, VISIT, clinic, copy, patient, program};
use exercises::time::DayNumber;
use format::summary::Letter;
use serde_json::Value;

/// Every line of the output as an object.
#[track_caller]
fn objects(out: &str) -> Vec<Value> {
    assert!(!out.is_empty(), "at least one object");
    let parsed = out.lines().map(|line| serde_json::from_str::<Value>(line).unwrap_or_else(|_| panic!("JSON: {line}")));
    parsed.inspect(|object| assert!(object.is_object(), "{object}")).collect()
}

#[test]
fn what_was_done_between_two_visits_is_on_the_clinicians_page() {
    let place = Place::prepared();
    assert_eq!(place.clinic(&["receive", "summary.age"]), "summary.age: K17, 2 new days.\n");
    let review = place.clinic(&["review", "K17"]);
    // From the example: alarms, sessions done and skipped, pain, balance and ratings.
    for line in [
        "Nearly fell, on 26 November, during Stand on one leg, left.",
        "Little, 5 of 18 sessions in full, 1 in part; together 33%.",
        "09:00 ●●",
        "10:00 ∝●",
        "11:00 .○",
        "Held 176 of 540 seconds, 33%.",
        "6 of 6 attempts, 100%.",
        "19 of 20 repetitions, 95%.",
        "At the visit: 6 (25 November).",
        "left 12.4 s, right 30 s or more.",
        "no time, or could not get away",
        "Stand on one leg, left: Ease to a target of 25 seconds",
    ] {
        assert!(review.contains(line), "{line:?} is missing in\n{review}");
    }
    assert_eq!(place.clinic(&["patients"]), "K17\t1\n", "one patient with one alarm");
}

#[test]
fn a_second_card_closes_the_loop_and_the_history_goes_on() {
    let place = Place::prepared();
    place.write("fall.jsonl", r#"{"do":"trouble","at":"2026-11-26T19:50:00+01:00","what":"fell"}"#);
    place.done(&["--home", "done", "--at", DONE, "patient", "record", "fall.jsonl"]);
    place.done(&["--home", "done", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "fall.age"]);
    place.clinic(&["receive", "fall.age"]);
    let name = objects(&place.clinic(&["review", "K17", "--as", "json"]))[0]["alarms"][0]["id"]
        .as_str()
        .expect("a name")
        .to_owned();
    let review = place.clinic(&["review", "K17"]);
    let clears = review.lines().last().expect("a last line");
    assert!(
        clears.starts_with(&format!("clear = [\"{name}\", ")),
        "ready to be copied into the next plan, newest first: {clears}"
    );
    place.write("second.toml", place.text("plan.toml").replace("clear = []", clears));
    place.clinic(&["issue", "K17", "second.toml", "--out", "second"]);
    let paused = place.run(&["--home", "done", "--at", VISIT, "patient", "record", "later.jsonl"]);
    assert_eq!(paused.code, Some(1), "no such file yet");
    place.write("later.jsonl", BALANCED);
    place.refused(
        &["--home", "done", "--at", VISIT, "patient", "record", "later.jsonl"],
        &["line 1: this exercise is paused for safety at that time."],
    );
    place.done(&["--home", "done", "--at", "2026-11-27T09:30:00+01:00", "patient", "accept", "second/card.txt"]);
    place.done(&["--home", "done", "--at", "2026-11-27T20:00:00+01:00", "patient", "record", "later.jsonl"]);
    let seal = ["summary", "--until", "2026-11-27", "--out", "third.age"];
    place.done(&[&["--home", "done", "--at", "2026-11-27T20:00:00+01:00", "patient"][..], &seal].concat());
    assert_eq!(place.clinic(&["receive", "third.age"]), "third.age: K17, 1 new day.\n");
    let review = place.clinic(&["review", "K17"]);
    assert!(review.contains("Record from 25 November to 27 November."), "the first days are still there:\n{review}");
    assert_eq!(place.clinic(&["patients"]), "K17\t0\n", "the alarm is cleared");
    assert!(!review.contains("clear = "), "nothing is left to clear:\n{review}");
}

const BALANCED: &str = r#"{"do":"run","at":"2026-11-27T19:35:00+01:00","item":2,"trials":[{"leg":"left","seconds":15,"end":"touch"}]}
"#;

#[test]
fn the_same_summary_twice_changes_nothing() {
    let place = Place::prepared();
    place.clinic(&["receive", "summary.age"]);
    let before = place.all();
    assert_eq!(place.clinic(&["receive", "summary.age"]), "summary.age: K17, nothing new. Nothing was changed.\n");
    assert!(before == place.all(), "not a byte");
}

/// The restored copy did not know that it had already used the first number.
#[test]
fn a_summary_from_a_restored_folder_is_refused_and_the_next_one_accepted() {
    let place = Place::prepared();
    place.write("first.jsonl", r#"{"do":"run","at":"2026-11-25T10:01:00+01:00","item":1,"held":[10,10,10]}"#);
    place.write("later.jsonl", r#"{"do":"run","at":"2026-11-26T12:01:00+01:00","item":1,"held":[10,10,10]}"#);
    let lost = ["--home", "lost", "--at", "2026-11-25T20:00:00+01:00", "patient"];
    copy(&place.path("patient"), &place.path("lost"));
    place.done(&[&lost[..], &["record", "first.jsonl"]].concat());
    place.done(&[&lost[..], &["summary", "--until", "2026-11-25", "--out", "one.age"]].concat());
    assert_eq!(place.clinic(&["receive", "one.age"]), "one.age: K17, 1 new day.\n");
    place.done(&patient(&["record", "later.jsonl"]));
    place.done(&patient(&["summary", "--until", "2026-11-26", "--out", "other.age"]));
    place.refused(
        &clinic(&["receive", "other.age"]),
        &["already sent another summary with the same number.", "save a new summary"],
    );
    place.done(&patient(&["summary", "--until", "2026-11-26", "--out", "new.age"]));
    assert_eq!(place.clinic(&["receive", "new.age"]), "new.age: K17, 1 new day.\n");
    let review = place.clinic(&["review", "K17"]);
    assert!(review.contains("Record from 25 November to 26 November."), "{review}");
}

#[test]
fn a_later_summary_without_news_changes_nothing_as_it_says() {
    let place = Place::prepared();
    place.clinic(&["receive", "summary.age"]);
    place.done(&["--home", "done", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "again.age"]);
    let before = place.all();
    assert_eq!(place.clinic(&["receive", "again.age"]), "again.age: K17, nothing new. Nothing was changed.\n");
    assert!(before == place.all(), "not a byte");
}

#[test]
fn of_several_summaries_the_good_ones_are_kept() {
    let place = Place::prepared();
    place.write("list.txt", "a shopping list");
    let said = place.run(&clinic(&["receive", "list.txt", "summary.age", "missing.age"]));
    let out = "summary.age: K17, 2 new days.\nNew: 1 · known already: 0 · refused: 2\n";
    assert_eq!((said.code, said.out.as_str()), (Some(1), out), "{said:?}");
    let refusals: Vec<&str> = said.err.lines().collect();
    assert_eq!(refusals.len(), 2, "{said:?}");
    assert!(refusals[0].starts_with("list.txt: This is not an encrypted Carryover summary."), "{said:?}");
    assert!(refusals[1].starts_with("There is no file missing.age."), "{said:?}");
    assert!(place.clinic(&["review", "K17"]).contains("Record from 25 November to 26 November."));
}

#[test]
fn several_devices_of_one_patient_add_up() {
    let place = Place::prepared();
    place.done(&["--home", "phone", "--at", TAKEN, "patient", "accept", "card/card.txt"]);
    place.write("phone.jsonl", r#"{"do":"run","at":"2026-11-26T13:01:00+01:00","item":1,"held":[10,10,10]}"#);
    place.done(&["--home", "phone", "--at", DONE, "patient", "record", "phone.jsonl"]);
    place.done(&["--home", "phone", "--at", DONE, "patient", "summary", "--until", "2026-11-26", "--out", "phone.age"]);
    let said = place.clinic(&["receive", "summary.age", "phone.age"]);
    let told = "summary.age: K17, 2 new days.\nphone.age: K17, 2 days updated. It comes from a new device (";
    assert!(said.starts_with(told), "{said}");
    assert!(place.clinic(&["review", "K17"]).contains("Little, 6 of 18 sessions"), "five on one device, one on the other");
}

#[test]
fn any_age_tool_opens_a_summary_with_the_printed_identity() {
    let place = Place::prepared();
    forge::identity(&place);
    let (identity, sealed) = (place.path("identity.txt"), place.path("summary.age"));
    let plain = program("age", &["--decrypt".as_ref(), "--identity".as_ref(), identity.as_ref(), sealed.as_ref()]);
    let letter = Letter::parse(&plain).expect("a letter");
    let summary = format::summary::read(&letter.body).expect("a summary");
    assert_eq!(
        (summary.plan, summary.from, summary.until),
        (forge::card(&place).plan.header.id, DayNumber(0), DayNumber(1))
    );
}

#[test]
fn another_reader_finds_the_cards_text_in_its_picture() {
    let place = Place::prepared();
    let picture = place.path("card/card.png");
    let options = ["--quiet", "--raw", "-Sdisable", "-Sqrcode.enable"].map(AsRef::as_ref);
    let read = program("zbarimg", &[&options[..], &[picture.as_ref()]].concat());
    assert_eq!(String::from_utf8(read).expect("text").trim_end(), place.text("card/card.txt").trim_end());
}

#[test]
fn every_form_of_the_card_is_accepted() {
    let place = Place::prepared();
    let taken: Vec<String> = ["png", "txt", "bin"]
        .iter()
        .map(|form| place.done(&["--home", form, "--at", TAKEN, "patient", "accept", &format!("card/card.{form}")]))
        .collect();
    assert!(taken[0].starts_with("Linden Lane Practice 1 ("), "{}", taken[0]);
    assert!(taken.iter().all(|one| *one == taken[0]));
}

#[test]
fn with_json_every_command_prints_one_object_a_line() {
    let place = Place::prepared();
    let mut seen = Vec::new();
    let mut json = |arguments: &[&str]| {
        let said = place.run(&[arguments, &["--json"]].concat());
        assert_eq!(said.code, Some(0), "{arguments:?}: {said:?}");
        seen.push(objects(&said.out).len());
        if !said.err.is_empty() {
            objects(&said.err);
        }
        objects(&said.out)
    };
    assert!(json(&["example", "plan"])[0]["example"].as_str().is_some_and(|text| text.contains("[[item]]")));
    assert!(json(&["example", "runs", "--start", "2026-11-25"])[0]["example"].is_string());
    assert_eq!(json(&["catalogue", "check"]).len(), format::catalogue::FILES.len());
    let start = ["--home", "new", "clinic", "--passphrase-file", "pw", "start", "--name", "Elm Row"];
    assert_eq!(json(&start)[0]["clinic"], "Elm Row");
    assert_eq!(json(&clinic(&["add", "M-2"]))[0]["added"], "M-2");
    assert_eq!(json(&clinic(&["issue", "M-2", "plan.toml", "--out", "m2"]))[0]["files"].as_array().map(Vec::len), Some(4));
    assert_eq!(json(&clinic(&["receive", "summary.age", "summary.age"])).len(), 3, "each, and how many");
    assert_eq!(json(&clinic(&["review", "K17"]))[0]["code"], "K17");
    assert!(json(&["example", "norms"])[0]["example"].as_str().is_some_and(|text| text.contains("[[row]]")));
    assert!(json(&clinic(&["norms"]))[0]["norms"].is_null());
    assert_eq!(json(&clinic(&["norms", "--remove"]))[0]["removed"], false);
    assert_eq!(json(&clinic(&["patients"])).len(), 2);
    assert!(
        json(&clinic(&["identity", "--show"]))[0]["identity"]
            .as_str()
            .is_some_and(|key| key.starts_with("AGE-SECRET-KEY-1"))
    );
    assert_eq!(json(&["--home", "p2", "--at", TAKEN, "patient", "accept", "card/card.bin"])[0]["items"], 3);
    assert_eq!(json(&patient(&["record", "runs.jsonl"]))[0]["recorded"], 20);
    let slots = json(&patient(&["slots", "--from", "2026-11-26", "--days", "1", "--zone", "Europe/Vienna"]));
    assert_eq!(slots.len(), 11, "nine by the hour, two of balance");
    assert_eq!(slots[1]["due"], "2026-11-26T09:00:00+01:00");
    assert!(json(&patient(&["now"]))[0].is_object());
    assert_eq!(json(&patient(&["summary", "--until", "2026-11-26", "--out", "j.age"]))[0]["path"], "j.age");
}

#[test]
fn two_clinics_one_patient_each_plan_by_its_name() {
    let place = Place::prepared();
    let second = ["--home", "elm", "--at", TAKEN, "clinic", "--passphrase-file", "pw"];
    place.done(&[&second[..], &["start", "--name", "Elm Row"]].concat());
    place.done(&[&second[..], &["add", "B2"]].concat());
    place.done(&[&second[..], &["issue", "B2", "plan.toml", "--out", "elm-card"]].concat());
    let accept = ["--json", "--home", "patient", "--at", TAKEN, "patient", "accept", "elm-card/card.png"];
    let plan = objects(&place.done(&accept))[0]["plan"].as_str().expect("a name").to_owned();
    let seal = ["summary", "--until", "2026-11-26", "--out", "elm.age"];
    place.refused(&patient(&seal), &["You have more than one plan.", "--plan"]);
    place.done(&patient(&[&seal[..], &["--plan", &plan]].concat()));
    assert_eq!(place.done(&[&second[..], &["receive", "elm.age"]].concat()), "elm.age: B2, 2 new days.\n");
    place.refused(&clinic(&["receive", "elm.age"]), &["elm.age: ", "The summary is encrypted for another clinic."]);
}
