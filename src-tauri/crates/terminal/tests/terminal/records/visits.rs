//! What was found at visits, in files for records.

use super::people::{TREATED, VISITS};
use super::{json, lines, measured, of, part};
use serde_json::{Value, json};

/// The value of a component that is chosen from a list, or written.
fn said<'a>(observation: &'a Value, code: &str) -> Vec<&'a Value> {
    let parts = observation["component"].as_array().into_iter().flatten();
    let of = parts.filter(|part| part["code"]["coding"][0]["code"] == code);
    let value = |part: &'a Value| {
        let chosen = &part["valueCodeableConcept"]["coding"][0]["code"];
        [chosen, &part["valueString"], &part["valueBoolean"]]
            .into_iter()
            .find(|value| !value.is_null())
            .unwrap_or(&Value::Null)
    };
    of.map(value).collect()
}

#[test]
fn measures_before_and_after_treatment_are_told_apart_and_none_is_mixed_with_those_from_home() {
    let bundle = json(&VISITS.collection);
    let motion = measured(&bundle, "visit-range-of-motion");
    let told: Vec<_> = motion
        .iter()
        .map(|one| (one["valueQuantity"]["value"].as_f64(), one["effectiveDateTime"].as_str(), said(one, "visit-moment")))
        .collect();
    let before = |value, day, moment: &'static str| (Some(value), Some(day), vec![moment]);
    let expected = [
        before(-5.5, "2026-11-10", "treatment-once"),
        before(40.0, "2026-11-02", "treatment-before"),
        before(55.5, "2026-11-02", "treatment-after"),
    ];
    assert_eq!(told.len(), 3);
    for ((value, day, moment), (of, on, when)) in told.iter().zip(&expected) {
        assert_eq!((value, day), (of, on));
        assert_eq!(moment, when);
    }
    assert_eq!(motion[1]["valueQuantity"]["code"], "deg");
    assert!(measured(&bundle, "single-leg-stance-time").is_empty(), "a stance at a visit is none at home");
    let stance = measured(&bundle, "visit-single-leg-stance-time")[0];
    assert_eq!((&stance["valueQuantity"]["comparator"], &stance["valueQuantity"]["value"]), (&json!(">="), &json!(60)));
    assert_eq!((part(stance, "visit-trial"), &stance["bodySite"]["coding"][0]["code"]), (&json!(60), &json!("32153003")));
    let pain: Vec<&str> = of(&bundle, "Observation")
        .into_iter()
        .filter(|one| one["code"]["coding"][0]["system"] == "http://loinc.org")
        .filter_map(|one| one["identifier"][0]["value"].as_str())
        .collect();
    assert!(pain.len() == 9 && pain.iter().all(|name| !name.starts_with("visit/")), "{pain:?}");
}

#[test]
fn who_measured_and_who_said_it() {
    let bundle = json(&VISITS.collection);
    let patient = |code: &str| measured(&bundle, code)[0]["performer"][0]["reference"].is_string();
    let told = ["visit-pain", "visit-change", "visit-movement-pain", "visit-grip-strength", "visit-note", "visit-screening"];
    assert_eq!(told.map(patient), [true, true, true, false, false, false]);
    assert_eq!(measured(&bundle, "visit-note")[0]["performer"][0]["display"], "Elm Row");
    let grip = measured(&bundle, "visit-grip-strength")[0];
    assert_eq!((&grip["valueQuantity"]["value"], said(grip, "visit-side")), (&json!(32), vec![&json!("24028007")]));
    let other = measured(&bundle, "visit-measure")[0];
    assert_eq!(other["valueQuantity"], json!({ "value": 32.5, "unit": "cm" }), "no code, since it need not be one");
    assert_eq!(other["code"]["text"], "Another measure at a visit: step length");
    let override_of = measured(&bundle, "visit-proposal-not-followed");
    assert_eq!(override_of[0]["valueCodeableConcept"]["coding"][0]["code"], "proposal-progress");
    assert_eq!(said(override_of[0], "visit-words"), ["Wants to wait a week."]);
    assert!(override_of[0]["basedOn"][0]["reference"].is_string());
    let screened = measured(&bundle, "visit-screening")[1];
    assert_eq!([said(screened, "visit-fall-last-year"), said(screened, "condition-osteoporosis")], [[true], [true]]);
}

#[test]
fn a_correction_replaces_on_a_server_and_what_was_taken_back_is_marked_there_and_not_told_again() {
    let bundle = json(&VISITS.transaction);
    let entries = bundle["entry"].as_array().expect("a list");
    let named = |which: &str| {
        let mut found = entries
            .iter()
            .filter(|entry| entry["resource"]["identifier"][0]["value"].as_str().is_some_and(|name| name.ends_with(which)));
        (found.next().expect("it is there"), found.next().is_none())
    };
    let (corrected, once) = named("2026-11-02/6");
    assert!(once && corrected["request"]["method"] == "PUT");
    assert_eq!(corrected["resource"]["status"], "corrected");
    assert_eq!(corrected["resource"]["valueQuantity"]["value"], 5);
    let (gone, once) = named("2026-11-02/8");
    assert!(once && gone["request"]["method"] == "PUT" && gone["resource"]["status"] == "entered-in-error");
    assert!(!VISITS.transaction.contains("two words too many") && !VISITS.table.contains("two words too many"));
    let origins = of(&bundle, "Provenance").into_iter().filter(|one| {
        one["entity"][0]["what"]["identifier"]["value"].as_str().is_some_and(|source| source.starts_with("visit/"))
    });
    let targets: Vec<usize> = origins.map(|one| one["target"].as_array().expect("a list").len()).collect();
    assert_eq!(targets, [7, 10], "one for each visit");
}

#[test]
fn the_table_has_them_after_what_is_from_home_without_what_was_taken_back() {
    assert!(VISITS.table.contains(r#""'=after, ""driving""""#), "no formula: {}", VISITS.table);
    let all = lines(&super::super::vignettes::person::Records {
        table: VISITS.table.replace("=after, ", "=after "),
        ..VISITS.clone()
    });
    let found: Vec<Vec<String>> =
        all.iter().filter(|line| line[8] == "visit-range-of-motion").map(|line| line[4..].to_vec()).collect();
    assert_eq!(found[0], ["", "turning", "2026-11-10", "2026-11-10", "visit-range-of-motion", "-5.5", "deg", ""]);
    let line = |measure: &str| all.iter().find(|line| line[8] == measure).unwrap_or_else(|| panic!("{measure}")).clone();
    assert_eq!(line("visit-pain")[4..], ["both", "knee", "2026-11-10", "2026-11-10", "visit-pain", "2", "score", ""]);
    assert_eq!(line("visit-change")[9..], ["-3.0", "score", ""]);
    assert_eq!(line("visit-movement-pain")[9..], ["5.0", "score", "corrected"]);
    assert_eq!(line("visit-single-leg-stance-time")[9..], ["60.0", "s", "at-least eyes-open"]);
    assert_eq!(line("visit-proposal-not-followed")[1..4], ["1", "heel-raise", "both-hands"]);
    let first = all.iter().position(|line| line[8].starts_with("visit-")).expect("there are some");
    assert!(
        all[first..].iter().all(|line| ["visit-", "surface", "condition-"].iter().any(|begin| line[8].starts_with(begin)))
    );
    assert!(!all.iter().any(|line| line[8] == "visit-proposal-not-followed" && line[1] == "2"), "it was taken back");
}

#[test]
fn who_was_treated_without_a_plan_is_written_with_what_was_found() {
    let bundle = json(&TREATED.collection);
    assert!(of(&bundle, "CarePlan").is_empty() && of(&bundle, "ServiceRequest").is_empty());
    let patient = of(&bundle, "Patient")[0];
    assert_eq!(patient["identifier"][0]["value"], "K18");
    let pain = measured(&bundle, "visit-pain")[0];
    assert_eq!((&pain["valueQuantity"]["value"], &pain["basedOn"]), (&json!(6), &Value::Null));
    assert_eq!(of(&bundle, "Provenance").len(), 1, "one visit");
    assert_eq!(measured(&bundle, "visit-note")[0]["status"], "entered-in-error");
    let found: Vec<String> = lines(&TREATED).into_iter().map(|line| line[8].clone()).collect();
    assert_eq!(found, ["visit-pain", "visit-range-of-motion", "visit-moment"]);
}
