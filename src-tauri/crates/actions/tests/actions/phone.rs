//! The clinic's telephone number: what is refused, and how it reaches the patient.

use crate::people::{PASSPHRASE, Patient, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::lock;
use actions::patient::{taking, today};
use exercises::plan::{MAX_PHONE, Prescription};
use wire::Failure;
use wire::app::LockState;
use wire::patient::{CardSource, TakeCardRequest};

fn unfit() -> Failure {
    Failure::PhoneUnfit { most: MAX_PHONE as u16 }
}

fn phone(folder: &DataFolder) -> Option<String> {
    match lock::state(folder) {
        Ok(LockState::Open { phone, .. }) => phone,
        other => panic!("{other:?}"),
    }
}

/// The numbers that the patient sees after taking a card.
fn seen_after(patient: &mut Patient, moment: &str, text: String) -> Vec<Option<String>> {
    let request = TakeCardRequest { source: CardSource::Text(text), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at(moment), &request).expect("a valid card");
    let page = today::page(&patient.folder, &at(moment)).expect("a page");
    page.clinics.into_iter().map(|clinic| clinic.phone).collect()
}

#[test]
fn a_number_is_on_the_next_card_and_on_the_patients_page() {
    let mut patient = Patient::without_card();
    let dir = patient.dir.path().to_owned();
    let mut folder = clinic(&dir);
    let text = issue(&mut folder, &at("11-25T08:00"), example(), &dir.join("one"));
    assert_eq!(seen_after(&mut patient, "11-25T08:40", text), [None]);
    lock::set_phone(&mut folder, "  (01) 555-0134 ").expect("a number");
    assert_eq!(phone(&folder).as_deref(), Some("(01) 555-0134"));
    let next = || Prescription { confirmed: None, ..example() };
    let text = issue(&mut folder, &at("12-02T08:00"), next(), &dir.join("two"));
    assert_eq!(seen_after(&mut patient, "12-02T08:40", text), [Some("(01) 555-0134".to_owned())]);
    lock::set_phone(&mut folder, " ").expect("none");
    assert_eq!(phone(&folder), None);
    let text = issue(&mut folder, &at("12-03T08:00"), next(), &dir.join("three"));
    assert_eq!(seen_after(&mut patient, "12-03T08:40", text), [None], "an empty one removes it");
}

#[test]
fn a_text_that_is_no_number_is_refused_and_the_number_stays() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    lock::set_phone(&mut folder, "555 0134").expect("a number");
    let too_long = "5".repeat(MAX_PHONE + 1);
    for text in ["ask at the desk", "12", "555 0134 ext 2", "555\n0134", too_long.as_str()] {
        assert_eq!(lock::set_phone(&mut folder, text), Err(unfit()), "{text}");
    }
    assert_eq!(phone(&folder).as_deref(), Some("555 0134"));
    lock::set_phone(&mut folder, &"5".repeat(MAX_PHONE)).expect("just short enough");
    drop(folder);
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder opens");
    assert_eq!(lock::set_phone(&mut folder, "555 0134"), Err(Failure::ClinicLocked));
}

#[test]
fn a_clinic_does_not_start_with_a_text_that_is_no_number() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = DataFolder::open(&dir.path().join("new"), true).expect("a new folder");
    let start = |folder: &mut DataFolder, phone| lock::start(folder, "Linden Lane Practice", Some(phone), PASSPHRASE.into());
    assert_eq!(start(&mut folder, "ask at the desk"), Err(unfit()));
    assert_eq!(folder.role(), None, "a refusal leaves the side free");
    start(&mut folder, " 555 0134 ").expect("a number");
    assert_eq!(phone(&folder).as_deref(), Some("555 0134"));
}
