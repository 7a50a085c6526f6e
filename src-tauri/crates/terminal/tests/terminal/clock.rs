//! Clocks that are wrong, go backwards or change their offset: records stay intact.

use crate::place::{DONE, Place, TAKEN, patient};
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
    place.clinic(&["receive", "owl.age"]);
    let review = place.clinic(&["review", "N1"]);
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
