//! Levels that differ from their exercise: what the clinician chooses and what the patient reads is the level's own.

use end_to_end::Desktop;
use exercises::catalogue::Dose;
use exercises::plan::Side;

const AT: &str = "2027-03-01T08:30:00+01:00";
const ZONE: &str = "Europe/Vienna";

/// An exercise whose level is done standing, although the exercise is done sitting.
const PLAN: &str = r#"
review = 2027-04-12

[[item]]
number = 1
exercise = "sit-tall-chin-back"
rung = "wall"
hold = { repetitions = 3, seconds = 10, rest = 10 }
at = ["09:00"]
days = "every-day"
"#;

#[test]
fn a_level_on_one_leg_brings_its_sides_and_its_dose() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let clinic = desktop.open("clinic").at(AT).zone(ZONE).size(1280, 800).start();
    clinic.type_into("Passphrase", passphrase);
    clinic.press("Unlock");
    clinic.see("Receive summaries");
    clinic.press("First plan: K17");
    clinic.press("Add Heel raise");
    clinic.see("Ready to issue.");
    let has_side = "return [...document.querySelectorAll('label.choice span')].some((one) => one.textContent === 'Side')";
    clinic.wait_for(&has_side.replace("return ", "return !"));
    clinic.set("Level", "one-leg-both-hands");
    clinic.wait_for(has_side);
    clinic.see("Ready to issue.");
    clinic.fits();
    clinic.screenshot("levels-chosen");
    clinic.set("Level", "fingertips");
    clinic.wait_for(&has_side.replace("return ", "return !"));
    clinic.set("Level", "one-leg-both-hands");
    clinic.choose("Side", "left");
    clinic.press("Issue plan card");
    clinic.see("Plan card for K17");
    let picture = std::fs::read(desktop.path("plan-card-2027-03-01").join("card.png")).expect("the card is written");
    let text = pictures::qr::read(&picture).expect("its code is readable");
    let bytes = format::card::from_text(&text).expect("the card's text");
    let card = format::card::open(&bytes).expect("a card").into_card_after_checking_the_signature();
    let item = &card.plan.prescription.items[0];
    assert_eq!((item.rung.as_ref().map(|rung| rung.as_str()), item.side), (Some("one-leg-both-hands"), Side::Left));
    assert!(matches!(item.dose, Dose::Reps { sets: 2, repetitions: 6, .. }), "{:?}", item.dose);
}

#[test]
fn the_patient_reads_what_to_do_at_the_level_of_the_plan() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, AT);
    let window = desktop.open("patient").at("2027-03-01T09:05:00+01:00").zone(ZONE).size(390, 844).start();
    window.see("Sit tall, chin back");
    window.press("How to do it");
    let at_the_wall = || {
        window.see("Stand with your back against a wall");
        window.see("It need not touch.");
        window.see("You need: a free stretch of wall.");
        assert!(!window.sees("Sit toward the front of a steady chair"), "what is done standing does not ask to sit");
        window.fits();
    };
    at_the_wall();
    window.screenshot("levels-how-to");
    window.press("Back");
    window.press("Start");
    window.see("Before you start");
    at_the_wall();
    window.screenshot("levels-before");
}
