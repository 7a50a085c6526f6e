//! Summaries of two devices in the review, and one of them left out of it.

use end_to_end::scenes::{HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, carryover_in};

const DONE: &str = "2027-03-04T20:00:00+01:00";
const VISIT: &str = "2027-03-05T09:00:00+01:00";

/// The holds of four days in these hours.
fn holds(hours: std::ops::RangeInclusive<u32>) -> String {
    let hold = |day, hour| {
        format!("{{\"do\":\"run\",\"at\":\"2027-03-{day:02}T{hour:02}:02:00+01:00\",\"item\":1,\"held\":[10,10,10]}}\n")
    };
    (1..=4).flat_map(|day| hours.clone().map(move |hour| hold(day, hour))).collect()
}

#[test]
fn a_device_that_the_patient_does_not_know_is_left_out_of_the_review() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(HOLD, TAKEN);
    let path = |name: &str| desktop.path(name).to_string_lossy().into_owned();
    for (home, hours) in [("mine", 9..=12), ("other", 13..=17)] {
        carryover_in(ZONE, &["--home", &path(home), "--at", TAKEN, "patient", "accept", &path("card/card.bin")]);
        std::fs::write(desktop.path("said.jsonl"), holds(hours)).expect("room");
        let patient = |arguments: &[&str]| {
            carryover_in(ZONE, &[&["--home", &path(home), "--at", DONE, "patient"], arguments].concat());
        };
        patient(&["record", &path("said.jsonl")]);
        let summary = format!("{home}.age");
        patient(&["summary", "--until", "2027-03-04", "--out", &path(&summary)]);
        made.clinic_at(VISIT, &["receive", &path(&summary)]);
    }
    let window = desktop.open("clinic").at(VISIT).zone(ZONE).size(1280, 800).start();
    window.type_into("Passphrase", "plumb line and lantern");
    window.press("Unlock");
    window.press_part("K17");
    window.see("36 of 36");
    window.see("If the patient does not know one of them");
    window.see("Device 1: used from 1 March to 4 March, 16 sessions.");
    window.see("Device 2: used from 1 March to 4 March, 20 sessions.");
    let number = window.ask("return document.querySelector('.device .small').textContent.split(': ').pop()", &[]);
    window.ask("document.querySelector('.devices').scrollIntoView({block: 'end'}); return true", &[]);
    window.screenshot("devices-1280x800");
    let second = "const lines = document.querySelectorAll('.device button'); lines[1].click(); return lines.length";
    assert_eq!(window.ask(second, &[]), serde_json::json!(2));
    window.see("left out");
    window.see_no_more("36 of 36");
    window.see(" of 36");
    window.look_at_phone_sizes("devices-left-out");
    window.press_part("Count again");
    window.see("36 of 36");
    window.close();
    let patient = desktop.open("mine").at(VISIT).zone(ZONE).start();
    patient.press("Record");
    patient.press("Your data");
    patient.see(&format!("Number of this device: {}.", number.as_str().expect("a number")));
    patient.look_at_phone_sizes("devices-own-number");
    patient.close();
}
