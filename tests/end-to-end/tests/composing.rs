//! Editing a plan: what is typed is what is issued, and a draft is not lost.

use end_to_end::{Desktop, Window};
use exercises::catalogue::{Dose, Exercise, Lang};
use exercises::plan::{Pattern, Plan};
use std::path::Path;

const AT: &str = "2027-03-01T08:30:00+01:00";
const ENTER: &str = "\u{E007}";
const HEEL: &str = "Heel raise";

/// The draft of K17's first plan with a heel raise in it, its times visible.
fn compose(desktop: &Desktop) -> Window {
    desktop.with_a_clinic();
    let clinic = desktop.unlocked_clinic(AT);
    clinic.press("First plan: K17");
    clinic.press(&format!("Add {HEEL}"));
    clinic.press_part("Times, limits, note");
    clinic.see("Ready to issue.");
    clinic
}

fn stands_in(clinic: &Window, label: &str, text: &str) {
    clinic.wait_for(&format!(
        "const label = [...document.querySelectorAll('label.text')].find((one) => one.querySelector('span').textContent === '{label}');
         return label?.querySelector('input').value === '{text}'"
    ));
}

/// The plan on the card that the program wrote.
fn issued(card: &Path) -> Plan {
    let picture = std::fs::read(card.join("card.png")).expect("the card is written");
    let text = pictures::qr::read(&picture).expect("its code is readable");
    let bytes = format::card::from_text(&text).expect("the card's text");
    format::card::open(&bytes).expect("a card").into_card_after_checking_the_signature().plan
}

fn times(plan: &Plan) -> Vec<u16> {
    match &plan.prescription.items[0].schedule.pattern {
        Pattern::At { times } => times.clone(),
        other => panic!("a list of times is expected, not {other:?}"),
    }
}

#[test]
fn the_times_on_the_card_are_the_times_on_the_screen() {
    let desktop = Desktop::new();
    let clinic = compose(&desktop);
    for (typed, shown) in [("8am, 7pm", "08:00, 19:00"), ("19.00", "19:00"), ("0800, 1900", "08:00, 19:00")] {
        clinic.type_into("Times", &format!("{typed}{ENTER}"));
        stands_in(&clinic, "Times", shown);
    }
    clinic.see("every day, at 08:00 and 19:00");
    for typed in ["8am, 7pn", "25:00", "8:00, 19:0"] {
        clinic.type_into("Times", &format!("{typed}{ENTER}"));
        clinic.see(&format!("{HEEL}: The times “{typed}” cannot be read"));
        assert!(!clinic.can_press("Issue plan card"), "{typed:?} must not be issued");
        stands_in(&clinic, "Times", typed);
    }
    clinic.screenshot("composing-times-unread");
    clinic.type_into("Times", &format!("0800, 7 pm{ENTER}"));
    clinic.press("Issue plan card");
    clinic.see("Plan card for K17");
    assert_eq!(times(&issued(&desktop.path("plan-card-2027-03-01"))), [480, 1140]);
}

/// Replaces the content of the field of times, and stays in the field.
fn half_type(clinic: &Window, text: &str) {
    clinic.ask(
        "const labels = [...document.querySelectorAll('label.text')];
         const field = labels.find((one) => one.querySelector('span').textContent === 'Times').querySelector('input');
         field.focus(); field.select(); return true",
        &[],
    );
    clinic.type_here(text);
}

/// A screen reader presses a button without leaving the field first.
#[test]
fn issuing_reads_what_is_half_typed_first() {
    let desktop = Desktop::new();
    let clinic = compose(&desktop);
    let issue = "[...document.querySelectorAll('button.main')].find((one) => one.textContent === 'Issue plan card').click(); return true";
    half_type(&clinic, "8am, 7pn");
    clinic.ask(issue, &[]);
    clinic.see("cannot be read");
    clinic.type_into("Times", &format!("8am{ENTER}"));
    clinic.see("Ready to issue.");
    half_type(&clinic, "8am, 7pm");
    clinic.ask(issue, &[]);
    clinic.see("Plan card for K17");
    assert_eq!(times(&issued(&desktop.path("plan-card-2027-03-01"))), [480, 1140]);
}

#[test]
fn implausible_seconds_dates_and_windows_are_reported() {
    let desktop = Desktop::new();
    let clinic = compose(&desktop);
    clinic.press("Add Stand on one leg");
    for typed in ["abc", "900"] {
        clinic.type_into("left leg", &format!("{typed}{ENTER}"));
        clinic.see(&format!("Left leg: “{typed}” is not a number of seconds from 0 to 600"));
    }
    clinic.screenshot("composing-seconds-unread");
    clinic.type_into("left leg", &format!("12,46 s{ENTER}"));
    stands_in(&clinic, "left leg", "12.5");
    clinic.see_no_more("is not a number of seconds");
    clinic.set("Date", "");
    clinic.see("The date of the next visit is missing.");
    clinic.press("2 weeks");
    clinic.see_no_more("The date of the next visit is missing.");
    clinic.press("Add Sit tall, chin back");
    clinic.ask("document.querySelectorAll('.item details').forEach((fold) => { fold.open = true; }); return true", &[]);
    clinic.choose("From", "17:00");
    clinic.choose("To", "09:00");
    clinic.see("Sit tall, chin back: This goes through the night: from 17:00 to 09:00 on the next day.");
    clinic.screenshot("composing-through-the-night");
}

#[test]
fn a_code_that_is_too_long_is_refused_and_not_truncated() {
    let desktop = Desktop::new();
    desktop.with_a_clinic();
    let clinic = desktop.unlocked_clinic(AT);
    clinic.type_into("Code", "ABCDEFGHIJKLM");
    clinic.press("Add patient");
    clinic.see("A code has 1 to 12 letters, digits or hyphens.");
    assert!(!clinic.sees("ABCDEFGHIJKL"), "no patient under the first twelve");
}

#[test]
fn a_draft_is_resumed_until_its_card_is_issued() {
    let desktop = Desktop::new();
    let clinic = compose(&desktop);
    clinic.type_into("Times", &format!("8am, 7pn{ENTER}"));
    clinic.see("cannot be read");
    clinic.press("Patients");
    clinic.press("First plan: K17");
    clinic.see("Draft of 1 March resumed.");
    clinic.see(&format!("{HEEL}: The times “8am, 7pn” cannot be read"));
    clinic.screenshot("composing-draft");
    clinic.close();

    let clinic = desktop.unlocked_clinic("2027-03-01T10:00:00+01:00");
    clinic.press("First plan: K17");
    clinic.see("Draft of 1 March resumed.");
    clinic.press("Discard draft");
    clinic.see("Discard everything that you changed in this draft?");
    clinic.screenshot("composing-discard");
    clinic.press("No, keep it");
    clinic.press("Discard draft");
    clinic.press("Yes, discard it");
    clinic.see("The plan is empty.");
    clinic.press("Patients");
    clinic.press("First plan: K17");
    clinic.see("The plan is empty.");
    assert!(!clinic.sees("resumed"), "looking begins no draft");

    clinic.press(&format!("Add {HEEL}"));
    clinic.press("Issue plan card");
    clinic.see("Plan card for K17");
    clinic.press("Close");
    clinic.press("Next plan: K17");
    clinic.see("Plan 2 for K17");
    assert!(!clinic.sees("resumed"), "the card ended the draft");
    clinic.press("Remove: Heel raise");
    clinic.press("Review");
    clinic.press("Next plan");
    clinic.see("Draft of 1 March resumed.");
    clinic.see("The plan is empty.");
}

#[test]
fn a_double_press_adds_once_and_a_thirteenth_item_is_reported() {
    let desktop = Desktop::new();
    desktop.with_a_clinic();
    let clinic = desktop.unlocked_clinic(AT);
    clinic.press("First plan: K17");
    let count = |clinic: &Window| clinic.ask("return document.querySelectorAll('.item').length", &[]);
    clinic.press_twice(&format!("Add {HEEL}"));
    clinic.see("Times, limits, note");
    assert_eq!(count(&clinic), 1, "who presses twice means it once");
    // At alternating places, because two presses at one place could count as a double click.
    let others = ["Add Sit tall, chin back", "Add Heel raise"].into_iter().cycle();
    for (n, add) in (2..=12).zip(others) {
        clinic.press(add);
        clinic.wait_for(&format!("return document.querySelectorAll('.item').length === {n}"));
    }
    clinic.see("A plan holds up to 12 exercises. Remove one to add another.");
    clinic.press("Add Stand on one leg");
    assert_eq!(count(&clinic), 12);
    clinic.screenshot("composing-full");
}

#[test]
fn a_window_opens_in_the_size_of_its_side_and_as_it_was_left() {
    let desktop = Desktop::new();
    desktop.with_a_clinic();
    let size = |window: &Window| {
        let size = window.ask("return [innerWidth, innerHeight]", &[]);
        (size[0].as_u64().unwrap_or_default(), size[1].as_u64().unwrap_or_default())
    };
    let clinic = desktop.open("clinic").at(AT).in_its_own_size().start();
    clinic.see("Passphrase");
    assert_eq!(size(&clinic), (1280, 800));
    let other = desktop.open("somebody").at(AT).in_its_own_size().start();
    other.welcomed();
    assert_eq!(size(&other), (460, 844));
    other.press("I prescribe exercises");
    other.type_into("Clinic's name", "Sluice Lane Practice");
    other.type_into("Passphrase", "eleven grey herons wade");
    other.type_into("Passphrase again", "eleven grey herons wade");
    other.press("Set up the clinic");
    other.wait_for("return innerWidth === 1280 && innerHeight === 800");
    other.close();
    clinic.resize(1000, 700);
    kept(&desktop.path("clinic"), "1000 700");
    clinic.close();
    let clinic = desktop.open("clinic").at(AT).in_its_own_size().start();
    clinic.see("Passphrase");
    assert_eq!(size(&clinic), (1000, 700));
}

/// Waits until the data folder contains this size of its window.
fn kept(home: &Path, size: &str) {
    let database = std::fs::read_dir(home).expect("the home").filter_map(|file| Some(file.ok()?.path()));
    let database = database.into_iter().find(|path| path.extension().is_some_and(|kind| kind == "db")).expect("a database");
    let connection = rusqlite::Connection::open_with_flags(database, rusqlite::OpenFlags::SQLITE_OPEN_READ_ONLY);
    let connection = connection.expect("it can be looked at");
    let look = || connection.query_row("SELECT value FROM setting WHERE name = 'window'", [], |row| row.get::<_, String>(0));
    let is_kept = end_to_end::until(|| look().ok().filter(|value| value.starts_with(size)));
    assert!(is_kept.is_some(), "the folder has {:?}", look());
}

#[test]
fn a_number_of_the_dose_is_changed_in_place_and_is_on_the_card() {
    let desktop = Desktop::new();
    let clinic = compose(&desktop);
    for (number, step) in [("Sets", "more"), ("Repetitions", "less"), ("Hold, seconds", "more"), ("Pain limit", "more")] {
        clinic.press_part(&format!("{number}: "));
        clinic.press(&format!("{number}: {step}"));
    }
    assert!(!clinic.can_press("Sets: more"), "of a sentence one number is open");
    clinic.fits();
    clinic.screenshot("composing-number-open");
    clinic.resize(390, 844);
    clinic.fits();
    clinic.screenshot("composing-number-open-390");
    clinic.resize(1280, 800);
    let before = exercise(HEEL);
    clinic.press("Issue plan card");
    clinic.see("Plan card for K17");
    let item = &issued(&desktop.path("plan-card-2027-03-01")).prescription.items[0];
    let (Dose::Reps { sets, repetitions, tempo, .. }, Dose::Reps { sets: s, repetitions: n, tempo: t, .. }) =
        (item.dose, before.dose)
    else {
        panic!("a heel raise is counted");
    };
    assert_eq!((sets, repetitions, tempo.hold_s), (s + 1, n - 1, t.hold_s + 1));
}

/// An exercise of the catalogue.
fn exercise(name: &str) -> Exercise {
    let all = format::catalogue::embedded().expect("the catalogue is sound").exercises;
    let found = all.into_iter().find(|one| one.text(Lang::En).is_some_and(|text| text.name == name));
    found.expect("it is in the catalogue")
}
