//! What the command writes, where, and what it refuses.

use super::{json, of};
use crate::place::{Place, clinic};
use crate::vignettes::person::Person;
use crate::vignettes::prescribed::chin_back;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// A clinic that has received the summary of K17, whose name it knows by then.
fn received() -> Place {
    let place = Place::prepared();
    place.clinic(&["receive", "summary.age"]);
    place
}

fn urls(bundle: &Value) -> BTreeSet<String> {
    let entries = bundle["entry"].as_array().expect("a list").iter();
    entries.map(|entry| entry["fullUrl"].as_str().expect("a text").to_owned()).collect()
}

#[test]
fn a_file_holds_what_would_be_printed_and_the_same_review_gives_the_same_file() {
    let place = received();
    for form in ["text", "json", "csv", "fhir", "fhir-transaction"] {
        let said = place.clinic(&["review", "K17", "--as", form, "--out", "written"]);
        assert_eq!(said, "written\n");
        let printed = place.clinic(&["review", "K17", "--as", form]);
        assert!(place.text("written") == printed, "{form}");
        assert!(printed == place.clinic(&["review", "K17", "--as", form]), "{form}, again");
    }
    let said = json(&place.clinic(&["--json", "review", "K17", "--as", "csv", "--out", "written"]));
    assert_eq!(said, json!({ "files": ["written"], "bytes": place.read("written").len() }));
}

#[test]
fn a_later_review_names_what_it_has_in_common_with_an_earlier_one_the_same() {
    let mut person = Person::with(&[chin_back()]);
    person.does(1, 0, "18:05");
    person.morning(1, 4);
    let first = json(&person.for_records(2).transaction);
    person.does(1, 3, "18:05");
    person.morning(9, 3);
    let second = json(&person.for_records(9).transaction);
    let origin = |bundle: &Value, url: &String| {
        let entries = bundle["entry"].as_array().expect("a list").iter();
        entries.clone().any(|entry| entry["fullUrl"] == **url && entry["resource"]["resourceType"] == "Provenance")
    };
    // What the later one was made of is another summary.
    let gone: Vec<String> = urls(&first).difference(&urls(&second)).cloned().collect();
    assert_eq!(gone.len(), 1, "{gone:?}");
    assert!(origin(&first, &gone[0]));
    let week = |bundle: &Value| {
        let entries = bundle["entry"].as_array().expect("a list").iter();
        let mut weeks = entries.filter(|entry| entry["resource"]["effectivePeriod"]["start"] == "2026-11-02");
        let first = weeks.next().expect("a week").clone();
        (first["request"].clone(), first["resource"]["effectivePeriod"]["end"].clone())
    };
    let (before, after) = (week(&first), week(&second));
    assert_eq!((&before.1, &after.1), (&json!("2026-11-04"), &json!("2026-11-08")));
    assert_eq!((&before.0, before.0["method"].as_str()), (&after.0, Some("PUT")), "the week is replaced, not added");
}

#[test]
fn names_stay_in_the_clinic_unless_they_are_asked_for() {
    let place = received();
    place.clinic(&["add", "K18", "--name", "Wilhelmina Underhill"]);
    place.clinic(&["issue", "K18", "plan.toml", "--out", "another"]);
    let without = place.clinic(&["review", "K18", "--as", "fhir"]);
    assert!(!without.contains("Underhill"));
    let patient = |text: &str| of(&json(text), "Patient")[0].clone();
    assert_eq!((&patient(&without)["identifier"][0]["value"], &patient(&without)["name"]), (&json!("K18"), &Value::Null));
    let with = place.clinic(&["review", "K18", "--as", "fhir", "--with-name"]);
    assert_eq!(patient(&with)["name"], json!([{ "text": "Wilhelmina Underhill" }]));
    assert!(of(&json(&with), "Observation").is_empty(), "nothing was received yet");
}

#[test]
fn all_patients_go_into_one_file_in_which_each_is_somebody_else() {
    let place = received();
    place.clinic(&["add", "A1"]);
    place.clinic(&["issue", "A1", "plan.toml", "--out", "another"]);
    place.clinic(&["add", "Z9"]);
    let bundle = json(&place.clinic(&["review", "--all", "--as", "fhir"]));
    let codes: Vec<&Value> = of(&bundle, "Patient").into_iter().map(|patient| &patient["identifier"][0]["value"]).collect();
    assert_eq!(codes, ["A1", "K17"], "who has no plan is left out");
    assert_eq!(of(&bundle, "Device").len(), 1);
    let table = place.clinic(&["review", "--all", "--as", "csv"]);
    let one = place.clinic(&["review", "K17", "--as", "csv"]);
    assert!(table == one && table.lines().count() > 5, "nothing was received from A1");
    assert_eq!(place.clinic(&["review", "--all", "--as", "json"]).lines().count(), 3);
}

#[test]
fn nothing_secret_and_nothing_of_the_computer_is_written() {
    let place = received();
    let bundle = place.clinic(&["review", "K17", "--as", "fhir"]);
    for part in ["AGE-SECRET", "age1", "Europe/Vienna", "+43"] {
        assert!(!bundle.contains(part), "{part}");
    }
    let device = of(&json(&bundle), "Device")[0].clone();
    let keys: Vec<&String> = device.as_object().expect("an object").keys().collect();
    assert_eq!(keys, ["deviceName", "identifier", "resourceType", "status", "version"]);
}

#[test]
fn what_cannot_be_written_is_refused_in_a_sentence() {
    let place = received();
    place.clinic(&["add", "Z9"]);
    let nothing = "There is no plan and no visit yet, so there is nothing to export. Issue a plan or note a visit first.";
    for form in ["csv", "fhir", "fhir-transaction"] {
        place.refused(&clinic(&["review", "Z9", "--as", form, "--out", "written"]), &[nothing]);
        place.refused(&clinic(&["review", "Z0", "--as", form, "--out", "written"]), &["Z0"]);
        place.refused(&clinic(&["review", "K17", "--as", form, "--out", "no/such/folder/file"]), &["no/such/folder"]);
    }
    let empty = Place::prepared();
    empty.clinic(&["remove", "K17", "--yes"]);
    empty.refused(&clinic(&["review", "--all", "--as", "fhir"]), &[nothing]);
    for wrong in [&["review"][..], &["review", "K17", "--all"]] {
        assert_eq!(place.run(&clinic(wrong)).code, Some(2), "{wrong:?}");
    }
}
