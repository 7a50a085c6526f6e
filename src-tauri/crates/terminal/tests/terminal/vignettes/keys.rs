//! The keys of the review by which programs of others read it. A key that is renamed, dropped or given another type breaks them.

use super::person::Person;
use super::prescribed::{about, chair_rise, heel_raise, one_leg};
use super::review::Review;
use serde_json::Value;

/// Each list of the review, with the keys of its entries and the types that a value may have.
const LISTS: [(&str, &[(&str, &str)]); 7] = [
    (
        "alarms",
        &[
            ("id", "text"),
            ("kind", "text"),
            ("day", "number"),
            ("item", "number or null"),
            ("suspended", "numbers"),
            ("cleared", "boolean"),
            ("revision", "number or null"),
            ("circumstances", "texts"),
            ("score", "number or null"),
            ("limit", "number or null"),
            ("said_mistaken", "boolean"),
            ("wrong_clock", "boolean"),
        ],
    ),
    (
        "adherence",
        &[
            ("item", "number"),
            ("done", "k of n or null"),
            ("in_part", "number"),
            ("last14", "k of n or null"),
            ("late", "number"),
            ("moved", "number"),
            ("broke_off_day", "number or null"),
            ("in_force", "boolean"),
            ("as_needed", "times or null"),
        ],
    ),
    (
        "pain",
        &[
            ("complaint", "number"),
            ("verdict", "text"),
            ("base", "number or null"),
            ("now", "number or null"),
            ("last_day", "number or null"),
            ("flares", "flares"),
            ("unsettled", "numbers"),
        ],
    ),
    ("during", &[("item", "number"), ("known", "k of n or null"), ("above_limit", "number"), ("last", "numbers")]),
    (
        "balance",
        &[
            ("item", "number or null"),
            ("side", "text or null"),
            ("verdict", "text"),
            ("now_s", "number or null"),
            ("last_day", "number or null"),
            ("exercise", "text"),
            ("level", "text or null"),
        ],
    ),
    (
        "counts",
        &[
            ("item", "number or null"),
            ("unit", "text"),
            ("seconds", "number"),
            ("last", "number or null"),
            ("last_day", "number or null"),
            ("best", "number"),
            ("verdict", "text or null"),
            ("error", "number or null"),
            ("days", "counted days"),
            ("exercise", "text"),
            ("level", "text or null"),
        ],
    ),
    ("items", &[("item", "number"), ("proposal", "text"), ("step", "text or null"), ("reasons", "texts"), ("ask", "texts")]),
];

fn is_a(value: &Value, kind: &str) -> bool {
    let each = |kind: &str| value.as_array().is_some_and(|all| all.iter().all(|one| is_a(one, kind)));
    let numbers = |keys: &[&str]| keys.iter().all(|key| value.get(key).is_some_and(Value::is_u64));
    match kind {
        "null" => value.is_null(),
        "text" => value.is_string(),
        "number" => value.is_number(),
        "boolean" => value.is_boolean(),
        "texts" => each("text"),
        "numbers" => each("number"),
        "flares" => each("flare"),
        "counted days" => each("counted day"),
        "counted day" => numbers(&["day", "count"]),
        "flare" => numbers(&["from", "to", "peak"]),
        "k of n" => numbers(&["k", "n"]),
        "times" => value.get("times").is_some_and(Value::is_u64) && value.get("last_day").is_some(),
        other => panic!("no type {other}"),
    }
}

/// Balance and a counted movement, three weeks of mornings with a flare, and one rating above the limit.
fn eventful() -> Review {
    let mut ivo = Person::with(&[one_leg(), heel_raise().number(2).at(&["18:20"]), chair_rise().number(3).at(&["18:40"])]);
    ivo.counts(3, 0, "18:45", 12);
    for day in 0..21 {
        ivo.morning(day, if (8..13).contains(&day) { 7 } else { 2 });
        ivo.stands(1, day, "18:02", &about(12));
        ivo.does(2, day, "18:22");
        ivo.hurts(2, day, "18:30", if day == 9 { 6 } else { 1 });
    }
    ivo.review(20)
}

#[test]
fn every_key_is_there_with_its_type() {
    let review = eventful();
    for (name, keys) in LISTS {
        let entries = review.list(name);
        assert!(!entries.is_empty(), "{name} has entries to look at");
        for (entry, (key, kinds)) in entries.iter().flat_map(|entry| keys.iter().map(move |key| (entry, key))) {
            let value = entry.get(key).unwrap_or_else(|| panic!("{name} without {key}: {entry}"));
            assert!(kinds.split(" or ").any(|kind| is_a(value, kind)), "{name}: {key} is to be {kinds}: {entry}");
        }
    }
    for (key, kind) in [("code", "text"), ("today", "text"), ("until", "number")] {
        assert!(is_a(&review.0[key], kind), "{key} is to be a {kind}: {}", review.0[key]);
    }
    let clock = &review.0["clock"];
    assert!(clock["entries"].is_array() && clock["ahead_days"].is_null(), "no clock was wrong: {clock}");
}

/// Of the visits, which are the clinic's and last in the list.
#[test]
fn every_key_of_a_visit_is_there() {
    let mut ivo = Person::with(&[one_leg()]);
    ivo.visit(0, &["complaint", "hip", "4", "--side", "right", "--line", "on stairs"]);
    ivo.visit(0, &["change", "2"]);
    ivo.visit(0, &["measure", "stance", "60", "9.5", "--side", "left"]);
    ivo.visit(0, &["measure", "motion", "35", "--of", "turning", "--when", "before"]);
    ivo.visit(0, &["screening", "--flags", "osteoporosis"]);
    ivo.visit(0, &["note", "first", "--correct", "5"]);
    ivo.visit(0, &["override", "1", "keep", "he wants more"]);
    let review = ivo.review(0);
    let told = serde_json::json!([{ "date": "2026-11-02", "by": [], "found": [
        { "kind": "complaint", "n": 1, "corrected": false, "region": "hip", "side": "right", "score": 4, "words": "on stairs" },
        { "kind": "change", "n": 2, "corrected": false, "score": 2, "words": "" },
        {
            "kind": "measure", "n": 3, "corrected": false, "what": "stance", "called": null, "unit": "s", "treatment": "once", "side": "left",
            "surface": "firm", "eyes": "open", "value": 60.0, "at_least": true, "trials": [60.0, 9.5],
        },
        {
            "kind": "measure", "n": 4, "corrected": false, "what": "motion", "called": "turning", "unit": "deg", "treatment": "before",
            "side": null, "surface": null, "eyes": null, "value": 35.0, "at_least": false, "trials": [35.0],
        },
        { "kind": "note", "n": 6, "corrected": true, "words": "first" },
        { "kind": "override", "n": 7, "corrected": false, "item": 1, "proposal": "keep", "words": "he wants more" },
    ] }]);
    assert_eq!(review.0["visits"], told);
}

/// What is null elsewhere has its value where there is something to say.
#[test]
fn what_is_known_is_not_null() {
    let review = eventful();
    let alarm = &review.list("alarms")[0];
    assert_eq!((&alarm["score"], &alarm["limit"], &alarm["said_mistaken"]), (&6.into(), &5.into(), &false.into()));
    assert_eq!((&alarm["item"], &alarm["revision"], &alarm["day"]), (&2.into(), &1.into(), &9.into()));
    let flares = review.pain(1)["flares"].as_array().expect("a list");
    assert_eq!(flares.len(), 1, "{flares:?}");
    assert_eq!((&flares[0]["from"], &flares[0]["to"], &flares[0]["peak"]), (&8.into(), &12.into(), &7.into()));
    let balance = review.of("balance", 1);
    assert_eq!(
        (&balance["exercise"], &balance["side"], &balance["last_day"]),
        (&"one-leg-stand".into(), &"left".into(), &20.into())
    );
}
