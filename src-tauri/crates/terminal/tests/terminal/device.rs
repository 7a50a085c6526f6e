//! Reminders and the person's own data.

use crate::place::{DONE, Place, patient};
use serde_json::Value;

/// A command of the patient on the next morning, five minutes before nine.
fn morning<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "patient", "--at", "2026-11-27T08:55:00+01:00", "patient"][..], arguments].concat()
}

fn objects(said: &str) -> Vec<Value> {
    said.lines().map(|line| serde_json::from_str(line).expect("one JSON object a line")).collect()
}

/// A prepared patient with the example runs recorded.
fn recorded() -> Place {
    let place = Place::prepared();
    place.done(&patient(&["record", "runs.jsonl"]));
    place
}

#[test]
fn everything_is_saved_unencrypted_into_a_new_folder() {
    let place = recorded();
    let saved = objects(&place.done(&[&["--json"][..], &patient(&["export", "--out", "mine"])].concat()));
    let paths: Vec<&str> = saved.iter().filter_map(|one| one["path"].as_str()).collect();
    assert_eq!(
        paths,
        [
            "mine/everything.json",
            "mine/runs.csv",
            "mine/answers.csv",
            "mine/days.csv",
            "mine/alarms.csv",
            "mine/corrections.csv"
        ]
    );
    let whole: Value = serde_json::from_slice(&place.read("mine/everything.json")).expect("JSON");
    // The clock that was set goes on.
    assert!(whole["made"].as_str().is_some_and(|made| made.starts_with(&DONE[..17])), "{}", whole["made"]);
    let runs = whole["entries"].as_array().expect("a list").iter().filter(|entry| entry["what"] == "run");
    assert!(runs.count() >= 9, "each as often as it was logged");
    assert!(place.text("mine/runs.csv").lines().any(|line| line.contains(",balance,1,left,")));
    place
        .refused(&patient(&["export", "--out", "mine"]), &["The folder mine is not empty.", "a new folder or an empty one"]);
    place.refused(&patient(&["export", "--out", "pw"]), &["Could not write pw."]);
}

#[test]
fn the_times_to_come_are_saved_for_another_calendar() {
    let place = recorded();
    place.done(&patient(&["calendar", "--out", "times.ics"]));
    let text = place.text("times.ics");
    assert!(text.starts_with("BEGIN:VCALENDAR\r\n") && text.ends_with("END:VCALENDAR\r\n"));
    assert!(text.contains("DTSTART:20261127T090000\r\n"), "{text}");
    assert!(text.contains("T193000"), "one near fall pauses nothing");
    for word in ["Sit tall", "chin", "Linden", "exercise"] {
        assert!(!text.contains(word), "somebody else may see the calendar: {word}");
    }
    place.refused(&patient(&["calendar", "--out", "nowhere/times.ics"]), &["Could not write nowhere/times.ics."]);
    let late = ["--home", "patient", "--at", "2027-01-07T08:00:00+01:00", "patient", "calendar", "--out", "late.ics"];
    place.refused(&late, &["No session is due from now until the next visit.", "new card"]);
}

#[test]
fn quiet_times_and_meetings_are_chosen_shown_and_taken_back() {
    let place = Place::prepared();
    let said = place.done(&morning(&["reminders", "--quiet", "22:00-07:00", "--quiet", "12:00-13:00", "--meeting", "120"]));
    assert_eq!(
        said,
        "Hours without reminders, every day: 12:00 to 13:00, 22:00 to 07:00\nIn a meeting until 10:55.\n\
         Next reminder: Friday 27 November, 10:55.\n"
    );
    let stands = objects(&place.done(&[&["--json"][..], &morning(&["reminders"])].concat()));
    assert_eq!(stands[0]["meeting_until"], "2026-11-27T10:55:00+01:00");
    place.done(&morning(&["reminders", "--meeting", "0"]));
    let said = place.done(&morning(&["reminders", "--quiet", "none"]));
    let now = "Hours without reminders, every day: None.\nNext reminder: Friday 27 November, 08:55.\n";
    assert_eq!(said, now, "eight o'clock is open still, and was not announced");
}

#[test]
fn invalid_quiet_times_and_meetings_are_refused() {
    let place = Place::prepared();
    for wrong in ["12:00", "12:00-12:00", "noon-13:00", "0:00-24:00", "12:00-25:00", ""] {
        place.refused(
            &morning(&["reminders", "--quiet", "11:00-12:00", "--quiet", wrong]),
            &["such as 12:00-13:00", "up to 8 of them"],
        );
    }
    for wrong in ["721", "65535"] {
        place.refused(&morning(&["reminders", "--quiet", "12:00-13:00", "--meeting", wrong]), &["from 1 to 720"]);
    }
    assert!(place.done(&morning(&["reminders"])).contains("every day: None.\n"), "not by half");
}

#[test]
fn the_reminders_ahead_respect_the_settings() {
    let place = Place::prepared();
    place.done(&morning(&["reminders", "--quiet", "12:00-13:00", "--meeting", "60"]));
    let coming = objects(&place.done(&[&["--json"][..], &morning(&["ahead", "--hours", "8"])].concat()));
    let at: Vec<&str> = coming.iter().filter_map(|one| one["at"].as_str()?.get(11..16)).collect();
    assert_eq!(at, ["09:55", "10:00", "11:00", "13:00", "14:00", "15:00", "16:00"]);
    let first = &coming[0];
    assert_eq!((&first["title_key"], &first["body_key"]), (&"reminder-title".into(), &"reminder-body".into()));
    assert_eq!(
        (&first["title"], &first["body"]),
        (&"09:00: about 50 seconds".into(), &"Open Carryover when you are ready.".into())
    );
    assert_eq!((&first["until"], &first["until_ms"]), (&"2026-11-27T10:00:00+01:00".into(), &1_795_770_000_000_i64.into()));
    let fortnight = place.done(&[&["--json"][..], &morning(&["ahead", "--hours", "336"])].concat());
    assert_eq!(fortnight.lines().count(), 64, "no more than a phone's system accepts");
    assert_eq!(place.run(&morning(&["ahead", "--hours", "337"])).code, Some(2));
}

#[test]
fn erasing_needs_confirmation_and_leaves_a_folder_like_new() {
    let place = recorded();
    place.write("patient/letter.txt", "not ours");
    place.refused(&patient(&["erase"]), &["permanently erase what is in patient", "plans", "--yes"]);
    assert_eq!(place.done(&patient(&["erase", "--yes"])), "Everything is erased.\n");
    let names: Vec<String> = std::fs::read_dir(place.path("patient"))
        .expect("the folder stays")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .filter(|name| !name.ends_with("-shm") && !name.ends_with("-wal"))
        .collect();
    assert_eq!(names.iter().filter(|name| *name != "lock").count(), 2, "{names:?}");
    assert_eq!(place.text("patient/letter.txt"), "not ours");
    let held = place.read("patient/carryover.db");
    for word in ["upper back", "sit-tall-chin-back", "role"] {
        let there = held.windows(word.len()).any(|part| part == word.as_bytes());
        assert!(!there, "{word} is still in the file");
    }
    place.refused(&patient(&["now"]), &["No role has been chosen for this data folder."]);
    place.refused(&patient(&["erase", "--yes"]), &["No role has been chosen for this data folder."]);
    place.done(&patient(&["accept", "card/card.png"]));
    assert!(place.done(&patient(&["export", "--out", "new"])).contains("everything.json"));
    assert!(!place.text("new/everything.json").contains("\"what\": \"run\""), "nothing of before");
}

#[test]
fn without_a_plan_there_is_nothing_to_hand_over() {
    let place = recorded();
    for ask in [
        &["export", "--out", "mine"][..],
        &["calendar", "--out", "times.ics"],
        &["erase", "--yes"],
        &["ahead", "--hours", "8"],
        &["reminders"],
    ] {
        let as_clinic = [&["--home", "clinic", "patient"][..], ask].concat();
        place.refused(&as_clinic, &["set up for the other role"]);
        let nowhere = [&["--home", "nowhere", "patient"][..], ask].concat();
        place.refused(&nowhere, &["nowhere"]);
    }
}
