//! A patient's case, the plans that were issued, and several clinicians on one store, in the window.

use end_to_end::{Desktop, until};

const FIRST: &str = "2027-03-01T08:30:00+01:00";
const SECOND: &str = "2027-03-15T08:30:00+01:00";
const OTHERS: &str = "eight brown wrens in a kettle";

const PLAN: &str = r#"
review = 2027-04-12

[[item]]
number = 1
exercise = "walk"
go = { minutes = 15, effort = 3 }
at = ["12:30"]
days = "every-day"
"#;

#[test]
fn a_case_is_closed_found_again_and_its_plans_are_shown() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(PLAN, FIRST);
    let longer = PLAN.replace("minutes = 15", "minutes = 20");
    std::fs::write(desktop.path("longer.toml"), longer).expect("written");
    let [plan, out] = ["longer.toml", "second"].map(|name| desktop.path(name).to_string_lossy().into_owned());
    made.clinic_at("2027-03-08T08:30:00+01:00", &["issue", "K17", &plan, "--out", &out]);
    let clinic = desktop.unlocked_clinic(SECOND);
    clinic.press("Case of K17");
    clinic.see("Plan 2: issued on 8 March 2027");
    clinic.see("Before: 15 minutes");
    clinic.look_at_desk_and_phones("cases-plans");
    clinic.press("Show or save plan 1");
    clinic.see("Security code");
    clinic.press("Close");
    clinic.press("Case of K17");
    clinic.type_into("Name (optional)", "Ottoline Marsh");
    clinic.press("Save code and name");
    clinic.see("Ottoline Marsh");
    clinic.choose("Why", "other");
    assert!(!clinic.can_press("Close the case"), "other has to be said in words");
    clinic.type_into("In other words", "moved away");
    clinic.press("Close the case");
    clinic.see("Closed on 15 March 2027: moved away.");
    clinic.look_at_desk_and_phones("cases-closed");
    clinic.press("Patients");
    clinic.see("Closed: 1");
    clinic.see_no_more("Ottoline Marsh");
    clinic.press("Closed: 1");
    clinic.see("Ottoline Marsh");
    clinic.look_at_desk_and_phones("cases-list");
    clinic.press("Case of K17");
    clinic.press("Open the case again");
    clinic.see("The case is open.");
    clinic.press("Remove patient");
    clinic.see("2 issued plans");
    clinic.look_at_desk_and_phones("cases-remove");
    clinic.close();
}

#[test]
fn a_closed_case_ends_with_a_letter() {
    let desktop = Desktop::new();
    desktop.prescribe(PLAN, FIRST);
    let files = desktop.with_file_manager();
    let clinic = desktop.unlocked_clinic(SECOND);
    clinic.press("Case of K17");
    clinic.press("Close the case");
    clinic.see("Closed on 15 March 2027: treatment is finished.");
    clinic.type_into("What you add (optional)", &"x".repeat(2_001));
    clinic.see("These are 2001 characters. Up to 2000 fit.");
    assert!(!clinic.can_press("Save the letter (PDF)"), "there is no room for so much");
    clinic.type_into("What you add (optional)", "Walks without pain.\u{E007}May be called in autumn.");
    clinic.press("Save the letter (PDF)");
    clinic.see("Saved as letter-2027-03-15.pdf in your home folder.");
    clinic.look_at_desk_and_phones("cases-letter");
    let letter = desktop.path("letter-2027-03-15.pdf");
    let read = std::process::Command::new("pdftotext").arg(&letter).arg("-").output().expect("poppler-utils");
    let read = String::from_utf8_lossy(&read.stdout);
    for said in ["Letter at the end of treatment", "Walks without pain.", "May be called in autumn.", "Walk: 15 minutes"] {
        assert!(read.contains(said), "{said} is not in the letter: {read}");
    }
    clinic.press("Show in folder: letter-2027-03-15.pdf");
    let address = format!("file://{}", letter.display());
    assert!(until(|| (files.shown() == [address.clone()]).then_some(())).is_some(), "{:?}", files.shown());
    clinic.close();
}

#[test]
fn another_clinician_unlocks_with_a_name_and_is_removed_again() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let clinic = desktop.unlocked_clinic(SECOND);
    clinic.press("Passphrase and keys");
    clinic.press_part("Add a clinician");
    clinic.type_into("Clinician's name", "Ash Lindqvist");
    clinic.type_into("Your own name", "Rowan Hale");
    clinic.type_into("Their first passphrase", OTHERS);
    clinic.type_into("Your passphrase, to confirm it", passphrase);
    clinic.press("Add this clinician");
    clinic.see("Ash Lindqvist was added.");
    clinic.look_at_desk_and_phones("cases-clinicians");
    clinic.press("Lock");
    clinic.see("Clinician's name");
    clinic.look_at_desk_and_phones("cases-unlock");
    clinic.type_into("Clinician's name", "Rowan Hale");
    clinic.type_into("Passphrase", OTHERS);
    clinic.press("Unlock");
    clinic.see("The passphrase is wrong.");
    clinic.type_into("Clinician's name", "ash lindqvist");
    clinic.press("Unlock");
    clinic.see("Secret key for other programs");
    clinic.press_part("Patients");
    clinic.press("Visit: K17");
    clinic.type_into("What else matters", "Will move house in May.");
    clinic.press("Note: Note");
    clinic.see("Noted by Ash Lindqvist.");
    clinic.look_at_desk_and_phones("cases-noted-by");
    clinic.press_part("Patients");
    clinic.press("Passphrase and keys");
    clinic.press_part("Remove a clinician");
    clinic.type_into("Your passphrase, to confirm the removal", OTHERS);
    clinic.press("Remove Rowan Hale");
    clinic.see("Rowan Hale was removed.");
    clinic.press("Lock");
    clinic.see("Unlock this clinic");
    clinic.see_no_more("Clinician's name");
    clinic.type_into("Passphrase", OTHERS);
    clinic.press("Unlock");
    clinic.see("Secret key for other programs");
    clinic.close();
}
