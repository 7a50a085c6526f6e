//! Clocks that are wrong, go backwards or change their offset: records stay intact.

use crate::place::{DONE, Place, TAKEN, VISIT, patient};
use serde_json::Value;

fn at<'a>(instant: &'a str, arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "patient", "--at", instant, "patient"][..], arguments].concat()
}

#[test]
fn before_the_plans_start_there_is_nothing_to_do_and_nothing_to_hand_over() {
    let place = Place::prepared();
    let before = "2026-11-20T09:00:00+01:00";
    assert_eq!(place.done(&at(before, &["now"])), "\n");
    let slots = ["slots", "--from", "2026-11-20", "--days", "3", "--zone", "Europe/Vienna"];
    assert_eq!(place.done(&at(before, &slots)), "");
    let seal = ["summary", "--until", "2026-11-26", "--out", "x.age"];
    place.refused(
        &at(before, &seal),
        &["There is no day of the plan in this period.", "from the start of the plan to today"],
    );
    place.refused(
        &at(DONE, &["summary", "--from", "2026-11-26", "--until", "2026-11-25", "--out", "x.age"]),
        &["no day of the plan"],
    );
    place.done(&patient(&["record", "runs.jsonl"]));
}

#[test]
fn a_clock_that_goes_backwards_between_commands_harms_nothing() {
    let place = Place::prepared();
    place.write("late.jsonl", r#"{"do":"run","at":"2026-11-26T15:02:00+01:00","item":1,"held":[10,10,10]}"#);
    place.write("early.jsonl", r#"{"do":"run","at":"2026-11-26T14:02:00+01:00","item":1,"held":[10,10,10]}"#);
    place.done(&at("2026-11-26T20:00:00+01:00", &["record", "late.jsonl"]));
    place.done(&at("2026-11-26T20:01:00+01:00", &["summary", "--until", "2026-11-26", "--out", "one.age"]));
    // The clock's battery is empty.
    place.done(&at("2020-01-01T00:00:00+01:00", &["now"]));
    place.done(&at("2020-01-01T00:01:00+01:00", &["record", "early.jsonl"]));
    place.done(&at("2026-11-26T20:05:00+01:00", &["summary", "--until", "2026-11-26", "--out", "two.age"]));
    assert_eq!(place.clinic(&["receive", "two.age"]), "two.age: K17, 2 new days.\n");
    assert_eq!(
        place.clinic(&["receive", "one.age"]),
        "one.age: K17, nothing new. Nothing was changed.\n",
        "older, but authentic"
    );
    assert!(place.clinic(&["review", "K17"]).contains("Little, 2 of 18 sessions"), "both runs, each once");
}

#[test]
fn a_card_may_be_taken_by_a_clock_that_is_behind_or_ahead() {
    let place = Place::prepared();
    for instant in ["2020-01-01T00:00:00Z", "2026-11-24T08:00:00+01:00", "2031-01-01T00:00:00Z"] {
        place.done(&["--home", instant, "--at", instant, "patient", "accept", "card/card.bin"]);
        place.done(&["--home", instant, "--at", TAKEN, "patient", "now"]);
    }
}

#[test]
fn the_list_of_patients_counts_no_day_beyond_the_clinics_own() {
    let place = Place::prepared();
    let ahead = "2026-11-28T20:00:00+01:00";
    place.done(&["--home", "done", "--at", ahead, "patient", "summary", "--until", "2026-11-28", "--out", "ahead.age"]);
    place.clinic(&["receive", "ahead.age"]);
    let covered_until = |now: &str| {
        let list = ["--home", "clinic", "--at", now, "--json", "clinic", "--passphrase-file", "pw", "patients"];
        serde_json::from_str::<Value>(&place.done(&list)).expect("one patient")["covered_until"].clone()
    };
    assert_eq!(covered_until(VISIT), "2026-11-28", "a day ahead may be the day of another place");
    assert_eq!(
        covered_until("2026-11-25T18:00:00+01:00"),
        "2026-11-25",
        "the device's clock was ahead, or this one is behind"
    );
}

/// A plan with a time in the hour that summer time skips and repeats, from October to April.
fn night(place: &Place) {
    let plan = place
        .text("plan.toml")
        .replace("2027-01-06", "2027-04-15")
        .replace("at = [\"08:00\", \"19:30\"]", "at = [\"02:30\", \"08:00\"]");
    place.write("night.toml", plan);
    let issued = "2026-10-20T08:30:00+02:00";
    place.done(&["--home", "clinic", "--at", issued, "clinic", "--passphrase-file", "pw", "add", "N1"]);
    place.done(&[
        "--home",
        "clinic",
        "--at",
        issued,
        "clinic",
        "--passphrase-file",
        "pw",
        "issue",
        "N1",
        "night.toml",
        "--out",
        "night",
    ]);
    place.done(&["--home", "owl", "--at", issued, "patient", "accept", "night/card.png"]);
}

fn slots(place: &Place, day: &str) -> Vec<Value> {
    let ask = [
        "--json",
        "--home",
        "owl",
        "--at",
        "2026-10-21T09:00:00+02:00",
        "patient",
        "slots",
        "--from",
        day,
        "--days",
        "1",
        "--zone",
        "Europe/Vienna",
    ];
    let all = place.done(&ask);
    let all = all.lines().map(|line| serde_json::from_str::<Value>(line).expect("JSON"));
    all.filter(|slot| slot["item"] == 2).collect()
}

#[test]
fn an_hour_that_occurs_twice_counts_once() {
    let place = Place::prepared();
    night(&place);
    let sunday = slots(&place, "2026-10-25");
    assert_eq!(sunday.len(), 2, "{sunday:?}");
    assert_eq!(sunday[0]["due"], "2026-10-25T02:30:00+02:00", "its first occurrence");
    assert_eq!(sunday[1]["due"], "2026-10-25T08:00:00+01:00");
    let trial = r#""item":2,"trials":[{"leg":"left","seconds":12,"end":"touch"},{"leg":"left","seconds":12,"end":"touch"},{"leg":"left","seconds":12,"end":"touch"}]}"#;
    place.write("twice.jsonl", format!(
        "{{\"do\":\"run\",\"at\":\"2026-10-25T02:31:00+02:00\",{trial}\n{{\"do\":\"run\",\"at\":\"2026-10-25T02:45:00+01:00\",{trial}\n"
    ));
    let now = ["--home", "owl", "--at", "2026-10-25T20:00:00+01:00", "patient"];
    place.done(&[&now[..], &["record", "twice.jsonl"]].concat());
    place.done(&[&now[..], &["summary", "--from", "2026-10-25", "--until", "2026-10-25", "--out", "owl.age"]].concat());
    place.clinic(&["receive", "owl.age"]);
    let review = place.clinic(&["review", "N1"]);
    assert!(review.contains("1 of 2 sessions"), "the second run is extra:\n{review}");
}

#[test]
fn an_hour_that_does_not_exist_is_marked_and_not_counted() {
    let place = Place::prepared();
    night(&place);
    let sunday = slots(&place, "2027-03-28");
    assert_eq!(sunday.len(), 2, "{sunday:?}");
    assert!(sunday[0]["due"].is_null() && sunday[0]["minute"] == 150, "02:30 is not there: {sunday:?}");
    assert_eq!(sunday[1]["due"], "2027-03-28T08:00:00+02:00");
    let now = ["--home", "owl", "--at", "2027-03-28T20:00:00+02:00", "patient"];
    assert!(place.done(&[&now[..], &["now"]].concat()).starts_with("02:30 "));
    place.done(&[&now[..], &["summary", "--from", "2027-03-28", "--until", "2027-03-28", "--out", "owl.age"]].concat());
    let spring = |arguments: &[&str]| {
        let clinic = ["--home", "clinic", "--at", "2027-03-29T09:00:00+02:00", "clinic", "--passphrase-file", "pw"];
        place.done(&[&clinic[..], arguments].concat())
    };
    spring(&["receive", "owl.age"]);
    let review = spring(&["review", "N1"]);
    assert!(review.contains("Little, 0 of 1 session in full, 0%."), "one of the two counts:\n{review}");
}

#[test]
fn a_day_is_the_same_in_the_zone_where_it_is_spent() {
    let place = Place::prepared();
    let ask = |zone| patient(&["slots", "--from", "2026-11-26", "--days", "1", "--zone", zone]);
    let due =
        |line: &str| line.split_once(" due ").and_then(|(_, rest)| rest.split_once(", opens ")).expect("due").0.to_owned();
    let dues = |said: String| said.lines().map(due).collect::<Vec<_>>();
    let (vienna, lima) = (dues(place.done(&ask("Europe/Vienna"))), dues(place.done(&ask("America/Lima"))));
    assert_eq!((vienna[1].as_str(), lima[1].as_str()), ("2026-11-26T09:00:00+01:00", "2026-11-26T09:00:00-05:00"));
    assert_eq!(vienna.len(), lima.len());
}

/// A session with a rating and a fall.
fn session(day: &str) -> String {
    [
        format!(r#"{{"do":"run","at":"{day}T15:02:00+01:00","item":1,"held":[10,10,10]}}"#),
        format!(r#"{{"do":"hurt","at":"{day}T15:04:00+01:00","item":1,"score":3}}"#),
        format!(r#"{{"do":"trouble","at":"{day}T15:05:00+01:00","what":"fell"}}"#),
    ]
    .join("\n")
}

fn review(place: &Place) -> Value {
    serde_json::from_str(&place.clinic(&["review", "K17", "--as", "json"])).expect("JSON")
}

/// The review of the same runs without the session of a wrong clock: what it may not change.
fn as_if_it_never_happened() -> Value {
    let place = Place::prepared();
    place.done(&patient(&["record", "runs.jsonl"]));
    place.done(&at("2026-11-27T08:00:00+01:00", &["summary", "--until", "2026-11-27", "--out", "right.age"]));
    place.clinic(&["receive", "right.age"]);
    review(&place)
}

#[test]
fn a_session_with_a_wrong_clock_is_marked_and_owes_no_days() {
    let expected = as_if_it_never_happened();
    for (day, said) in [("2030-03-01", "was ahead then"), ("2020-03-01", "was behind then")] {
        let place = Place::prepared();
        place.done(&patient(&["record", "runs.jsonl"]));
        place.write("wrong.jsonl", session(day));
        place.done(&at(&format!("{day}T16:00:00+01:00"), &["record", "wrong.jsonl"]));
        let morning = "2026-11-27T08:00:00+01:00";
        let listed = place.done(&at(morning, &["correct"]));
        assert_eq!(listed.lines().filter(|line| line.contains(said)).count(), 3, "kept and shown:\n{listed}");
        place.done(&at(morning, &["summary", "--until", "2026-11-27", "--out", "right.age"]));
        assert_eq!(place.clinic(&["receive", "right.age"]), "right.age: K17, 3 new days.\n");
        let told = review(&place);
        for key in ["until", "adherence", "pain", "during", "balance"] {
            assert_eq!(told[key], expected[key], "{day}: {key}");
        }
        let kinds = told["clock"]["entries"].as_array().expect("a list").iter().map(|entry| entry["kind"].clone());
        assert_eq!(kinds.collect::<Vec<_>>(), ["session", "during"]);
        assert_eq!((&told["alarms"][0]["kind"], &told["alarms"][0]["wrong_clock"]), (&"fell".into(), &true.into()));
        assert!(!told["alarms"][0]["suspended"].as_array().expect("a list").is_empty(), "it suspends as any other");
        let text = place.clinic(&["review", "K17"]).split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(text.contains("while the clock of the patient's device was wrong: one session and one rating."), "{text}");
        assert!(text.contains(": the device's clock was wrong then"), "{text}");
    }
}

#[test]
fn a_summary_that_was_made_years_ahead_adds_no_days_and_is_named() {
    let expected = as_if_it_never_happened();
    let place = Place::prepared();
    place.done(&patient(&["record", "runs.jsonl"]));
    place.write("ahead.jsonl", session("2030-03-01"));
    let ahead = "2030-03-01T16:00:00+01:00";
    place.done(&at(ahead, &["record", "ahead.jsonl"]));
    place.done(&at(ahead, &["summary", "--until", "2030-03-01", "--out", "ahead.age"]));
    let said = place.clinic(&["receive", "ahead.age"]);
    assert!(said.contains("no new day") && said.contains("1190 days ahead"), "{said}");
    let told = review(&place);
    assert_eq!((&told["clock"]["ahead_days"], &told["adherence"][0]["done"]), (&1190.into(), &Value::Null), "{told}");
    assert_eq!(told["alarms"][0]["wrong_clock"], true);
    place.done(&at("2026-11-27T08:00:00+01:00", &["summary", "--until", "2026-11-27", "--out", "right.age"]));
    assert_eq!(place.clinic(&["receive", "right.age"]), "right.age: K17, 3 new days.\n");
    let told = review(&place);
    for key in ["until", "adherence", "pain", "during", "balance"] {
        assert_eq!(told[key], expected[key], "{key}");
    }
    assert_eq!(told["clock"]["ahead_days"], Value::Null, "the newest summary was made by a clock that is right");
}

/// Nothing on such a device contradicts anything: only the clinic's own date tells.
#[test]
fn a_device_that_is_always_a_year_ahead_is_named_at_the_clinic() {
    let place = Place::prepared();
    let year = |arguments: &[&str]| {
        let all = [&["--home", "ahead", "--at", "2027-11-26T16:00:00+01:00", "patient"][..], arguments].concat();
        place.done(&all)
    };
    place.done(&["--home", "ahead", "--at", "2027-11-25T08:40:00+01:00", "patient", "accept", "card/card.bin"]);
    place.write("year.jsonl", session("2027-11-26"));
    year(&["record", "year.jsonl"]);
    year(&["summary", "--until", "2027-11-26", "--out", "year.age"]);
    let said = place.clinic(&["receive", "year.age"]);
    assert!(said.contains("364 days ahead"), "{said}");
    let told = review(&place);
    assert_eq!((&told["until"], &told["clock"]["ahead_days"]), (&2.into(), &364.into()));
    assert_eq!(told["clock"]["entries"].as_array().map(Vec::len), Some(2), "{}", told["clock"]);
    assert_eq!((&told["adherence"][0]["done"], &told["alarms"][0]["kind"]), (&Value::Null, &"fell".into()));
}

#[test]
fn after_a_card_was_taken_by_a_clock_that_was_ahead_the_plan_is_followed() {
    let place = Place::prepared();
    place.done(&["--home", "late", "--at", "2031-01-01T00:00:00Z", "patient", "accept", "card/card.bin"]);
    place.write("first.jsonl", r#"{"do":"opened","at":"2026-11-25T08:50:00+01:00"}"#);
    place.done(&["--home", "late", "--at", "2026-11-25T08:50:00+01:00", "patient", "record", "first.jsonl"]);
    let now = place.done(&["--home", "late", "--at", "2026-11-26T09:05:00+01:00", "patient", "now"]);
    assert!(now.contains("09:00 "), "{now}");
}

#[test]
fn a_flight_over_the_date_line_and_the_end_of_summer_time_are_no_wrong_clock() {
    let place = Place::prepared();
    let flight = [
        r#"{"do":"opened","at":"2026-11-26T09:30:00+14:00"}"#,
        r#"{"do":"opened","at":"2026-11-25T09:30:00-11:00"}"#,
        r#"{"do":"pain","at":"2026-11-25T21:30:00-11:00","complaint":1,"score":2}"#,
    ];
    for (number, line) in flight.iter().enumerate() {
        let file = format!("flight{number}.jsonl");
        place.write(&file, line);
        place.done(&patient(&["record", &file]));
    }
    let listed = place.done(&at("2026-11-26T21:00:00+01:00", &["correct"]));
    assert!(listed.contains("2 of 10") && !listed.contains("clock"), "{listed}");
}
