//! Days of the patient's choice, phases, loads, and what is done as needed: written by the clinician, and shown to the patient.

use end_to_end::scenes::{TAKEN, ZONE};
use end_to_end::{Desktop, Window};

#[test]
fn the_clinician_chooses_days_load_and_phase() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let clinic = desktop.open("clinic").at("2027-03-01T08:30:00+01:00").zone("Europe/Vienna").size(1280, 800).start();
    clinic.type_into("Passphrase", passphrase);
    clinic.press("Unlock");
    clinic.press("First plan: K17");
    clinic.type_into("Find an exercise", "heel raise");
    clinic.key("Enter");
    clinic.see("Ready to issue.");
    clinic.ask("document.querySelectorAll('.item details').forEach((fold) => { fold.open = true; }); return true", &[]);
    clinic.choose("On which days", "So many times a week");
    clinic.choose("Load", "a weight");
    clinic.choose("Effort aimed at, 0 to 10", "4");
    assert_eq!(dates(&clinic), 0, "no date is shown that nobody chose");
    clinic.choose("Last day", "another day");
    clinic.see("no day chosen");
    clinic.set("Last day, as a date", "2027-03-13");
    clinic.see("13 March 2027");
    clinic.set("Last day, as a date", "");
    clinic.see_no_more("13 March 2027");
    clinic.see("no day chosen");
    clinic.choose("Last day", "the next visit");
    assert_eq!(dates(&clinic), 0, "the plan's own end again");
    clinic.choose("First day", "week 2, 8 March");
    assert_eq!(dates(&clinic), 0, "a week needs no date");
    clinic.choose("First day", "the beginning");
    clinic.choose("Last day", "another day");
    clinic.set("Last day, as a date", "2027-03-13");
    clinic.see("13 March 2027");
    clinic.see("Ready to issue.");
    for (width, height) in [(1280, 800), (390, 844), (360, 640)] {
        clinic.resize(width, height);
        clinic.fits();
        clinic.ask("document.querySelector('.item details').scrollIntoView(); return true", &[]);
        clinic.screenshot(&format!("schedules-clinic-{width}x{height}"));
    }
}

/// How many fields for a day of an exercise there are.
fn dates(clinic: &Window) -> u64 {
    clinic.ask("return document.querySelectorAll('.when input[type=date]').length", &[]).as_u64().expect("a number")
}

const PLAN: &str = r#"
review = 2027-04-12

[[item]]
number = 1
exercise = "walk"
go = { minutes = 15, effort = 3 }
at = ["12:30"]
days = { times_a_week = 3 }

[[item]]
number = 2
exercise = "band-row"
load = { band = "light" }
reps = { sets = 2, repetitions = 10, rest = 45, tempo = [2, 1, 3] }
at = ["18:30"]
days = { every = 2 }
first = 8

[[item]]
number = 3
exercise = "warm-pack"
care = { minutes = 10 }
as_needed = true
"#;

#[test]
fn the_patient_sees_the_week_what_comes_later_and_what_is_there_when_needed() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, TAKEN);
    let patient = desktop.open("patient").at("2027-03-01T09:00:30+01:00").zone(ZONE).size(390, 844).start();
    patient.see("Warm pack");
    patient.look_at_phone_sizes("schedules-now");
    patient.press("Plan");
    patient.see("Rowing with a band");
    patient.look_at_phone_sizes("schedules-plan");
}
