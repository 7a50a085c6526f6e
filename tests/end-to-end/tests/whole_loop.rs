//! One patient through the whole loop, in the real windows of two copies: prescribe, take the card, be reminded, be
//! guided, hand over the summary, read the review, issue the next card and take it.

use end_to_end::{Desktop, Window, carryover, write_secret};
use exercises::plan::Risk;
use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::Command;
use words::{Locale, Words};

const ZONE: &str = "Europe/Vienna";
const PASSPHRASE: &str = "plumb line and lantern";

#[test]
fn prescribe_do_hand_over_review_and_prescribe_again() {
    let desktop = Desktop::new();

    let clinic = desktop.open("clinic").at("2027-03-01T08:30:00+01:00").zone(ZONE).size(1280, 900).start();
    start_the_clinic(&clinic);
    add_patient(&clinic, "K17");
    compose(&clinic);
    clinic.screenshot("loop-plan");
    let first = issue(&clinic, &desktop, "plan-card-2027-03-01");
    clinic.screenshot("loop-card");
    clinic.close();
    another_reader_agrees(&first);

    let patient = desktop.open("patient").at("2027-03-01T08:50:00+01:00").zone(ZONE).start();
    patient.welcomed();
    patient.press("I do exercises");
    take(&patient, &first);
    patient.screenshot("loop-taken");
    patient.close();

    let patient = desktop.open("patient").at("2027-03-01T08:59:50+01:00").zone(ZONE).start();
    be_reminded(&desktop, &patient);
    hold(&patient);
    repeat(&patient);
    balance(&patient);
    let summary = hand_over(&patient, &desktop, "summary-2027-03-01.age");
    patient.close();

    let clinic = desktop.open("clinic").at("2027-03-01T18:00:00+01:00").zone(ZONE).size(1280, 900).start();
    unlock(&clinic);
    clinic.choose_file("Choose files", &summary);
    clinic.see("1 new day");
    clinic.press_part("K17");
    clinic.see("Adherence, by time of day");
    clinic.screenshot("loop-review");
    clinic.press("Next plan");
    prescribe_again(&clinic);
    let second = issue(&clinic, &desktop, "plan-card-2027-03-01-2");
    clinic.close();
    the_review_shows_exactly_what_was_done(&desktop);

    let patient = desktop.open("patient").at("2027-03-01T18:20:00+01:00").zone(ZONE).start();
    patient.press("Plan");
    patient.press("Add a new card");
    take(&patient, &second);
    patient.press("Plan");
    patient.see("Version 2.");
    patient.press("Record");
    patient.see("Sit tall, chin back");
    patient.see("1 of");
    patient.screenshot("loop-history-goes-on");
}

fn start_the_clinic(clinic: &Window) {
    clinic.welcomed();
    clinic.press("I prescribe exercises");
    clinic.type_into("Clinic's name", "Ropewalk Practice");
    clinic.type_into("Passphrase", PASSPHRASE);
    clinic.type_into("Passphrase again", PASSPHRASE);
    clinic.press("Set up the clinic");
    clinic.see("No patients yet");
}

fn unlock(clinic: &Window) {
    clinic.type_into("Passphrase", PASSPHRASE);
    clinic.press("Unlock");
    clinic.see("Receive summaries");
}

fn add_patient(clinic: &Window, code: &str) {
    clinic.type_into("Code", code);
    clinic.press("Add patient");
    clinic.press_part(&format!("First plan: {code}"));
    clinic.see("Issue plan card");
}

/// Three items, short enough to be done in the test: one hold of five seconds, two repetitions, one balance trial on the left leg.
fn compose(clinic: &Window) {
    for name in ["Sit tall, chin back", "Heel raise", "Stand on one leg"] {
        clinic.press(&format!("Add {name}"));
    }
    for (number, times) in [("Holds", 2), ("Seconds each", 1), ("Sets", 1), ("Repetitions", 8), ("Attempts", 2)] {
        clinic.press_part(&format!("{number}: "));
        press_times(clinic, &format!("{number}: less"), times);
    }
    clinic.choose("Side", "left");
    the_gate(clinic, "12.4");
    clinic.press_part("Complaints");
    clinic.press("Add complaint");
    clinic.type_into("What hurts", "upper back");
    clinic.choose("Pain today", "6");
}

/// Enters what balance at home requires: the age, the list of risks, and today's seconds.
fn the_gate(clinic: &Window, seconds: &str) {
    clinic.choose("Age group", "40 to 49");
    let words = Words::new(Locale::En);
    for risk in Risk::ALL.into_iter().filter(|risk| *risk != Risk::SevereVisualLoss) {
        clinic.press(words.risk(risk));
    }
    clinic.type_into("left leg", seconds);
}

fn press_times(window: &Window, words: &str, times: usize) {
    (0..times).for_each(|_| window.press(words));
}

fn issue(clinic: &Window, desktop: &Desktop, folder: &str) -> PathBuf {
    clinic.see("Ready to issue.");
    clinic.press("Issue plan card");
    clinic.see("Plan card for K17");
    let folder = desktop.path(folder);
    assert_eq!(std::fs::read_dir(&folder).expect("the card's folder").count(), 1, "only the picture");
    clinic.press("Save as SVG, text and file too");
    clinic.see("card.svg");
    for name in ["card.png", "card.svg", "card.txt", "card.bin"] {
        assert!(folder.join(name).is_file(), "{name} is written to {}", folder.display());
    }
    folder
}

fn another_reader_agrees(folder: &Path) {
    let read = Command::new("zbarimg").args(["--quiet", "--raw"]).arg(folder.join("card.png")).output();
    let read = read.expect("zbarimg is installed (tests/packages.txt)");
    let text = std::fs::read_to_string(folder.join("card.txt")).expect("the card's text");
    assert_eq!(String::from_utf8_lossy(&read.stdout).trim(), text.trim(), "another QR reader reads the same card");
}

fn take(patient: &Window, folder: &Path) {
    patient.choose_file("Card picture or file", &folder.join("card.png"));
    patient.see("Ropewalk Practice");
    patient.see("1 hold of 5 seconds");
    patient.press("Start this plan");
    patient.see("After the visit");
}

/// The reminder really arrives at the notification service, and its action opens the slot's page.
fn be_reminded(desktop: &Desktop, patient: &Window) {
    let note = desktop.notified("Open Carryover when you are ready.");
    for medical in ["chin", "back", "pain", "exercise"] {
        assert!(!note.contains(medical), "a bystander reads {note:?}");
    }
    patient.press("Record");
    desktop.click_notification();
    patient.see("Start");
    patient.screenshot("loop-due");
}

fn hold(patient: &Window) {
    patient.press("Start");
    patient.press("I have read this. Start");
    patient.see("Hold 1 of 1");
    patient.screenshot("loop-hold");
    patient.see("1 of 1 hold completed.");
    patient.press("Continue");
    patient.see("done");
}

fn repeat(patient: &Window) {
    patient.press("Do one now");
    patient.press_part("Heel raise");
    patient.press("I have read this. Start");
    patient.see("Set 1 of 1");
    patient.screenshot("loop-repetitions");
    patient.see("2 of 2 repetitions done.");
    patient.press("Continue");
    patient.see("Pain while doing it: Heel raise");
    patient.press("4");
}

fn balance(patient: &Window) {
    patient.press("Do one now");
    patient.press_part("Stand on one leg");
    patient.press("I have read this. Start");
    patient.see("A worktop or a sturdy chair is within reach");
    patient.screenshot("loop-set-up");
    patient.press("Start countdown");
    patient.see("Press any key or touch the screen when your foot comes down");
    patient.wait_for("return [...document.querySelectorAll('[role=timer]')].some((timer) => Number(timer.textContent.match(/\\d+/)) >= 2)");
    patient.screenshot("loop-balance");
    patient.touch_anywhere();
    patient.see("1 of 1 attempt done.");
    patient.press("Continue");
    patient.see("Pain while doing it: Stand on one leg");
    patient.press("2");
    patient.see("Do one now");
}

fn hand_over(patient: &Window, desktop: &Desktop, name: &str) -> PathBuf {
    patient.press("Record");
    patient.press("For the visit");
    patient.see("What you share");
    patient.screenshot("loop-visit");
    patient.press("Save encrypted summary");
    patient.see("Nobody else can read it.");
    let summary = desktop.path(name);
    assert!(summary.is_file(), "the summary is at {}", summary.display());
    summary
}

/// Prescribes the same items again; what belongs to the visit has to be entered again.
fn prescribe_again(clinic: &Window) {
    clinic.see("Plan 2 for K17");
    // On the day of the first card, everything entered at that visit is still valid.
    clinic.see("Ready to issue.");
}

fn the_review_shows_exactly_what_was_done(desktop: &Desktop) {
    let home = desktop.path("clinic");
    let file = desktop.path("passphrase");
    write_secret(&file, PASSPHRASE);
    let home = home.to_str().expect("plain paths");
    let file = file.to_str().expect("plain paths");
    let at = "2027-03-01T18:10:00+01:00";
    let text =
        carryover(&["--home", home, "--at", at, "clinic", "--passphrase-file", file, "review", "K17", "--as", "json"]);
    let review: Value = serde_json::from_str(&text).expect("one JSON object");
    let dose = |item: usize| {
        (review["adherence"][item]["dose"]["done"].clone(), review["adherence"][item]["extra"]["runs"].clone())
    };
    assert_eq!(dose(0).0, 5, "five seconds held: {}", review["adherence"][0]);
    assert_eq!(review["adherence"][0]["slots"]["done"], 1, "one slot done: {}", review["adherence"][0]);
    for (item, of) in [(1, "repetitions"), (2, "balance")] {
        let adherence = &review["adherence"][item];
        assert_eq!(
            (&adherence["slots"]["done"], dose(item).1),
            (&1.into(), 0.into()),
            "{of}, in its part of the day: {adherence}"
        );
    }
    let days = &review["balance"][0]["days"];
    assert_eq!(days[0]["trials"], 1, "one try: {}", review["balance"]);
    let best = days[0]["best_s"].as_f64().expect("a number");
    assert!((1.5..60.0).contains(&best), "ended by a touch after two seconds and before the target: {best}");
    assert_eq!(review["during"][1]["last"], serde_json::json!([4]), "{}", review["during"]);
    assert_eq!(review["alarms"], serde_json::json!([]));
}
