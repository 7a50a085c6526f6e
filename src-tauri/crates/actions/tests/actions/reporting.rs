//! Reports and letters about a patient: when there is none.

use crate::people::{at, clinic, example, issue};
use actions::clinic::reporting::{self, MAX_OWN_TEXT};
use actions::clinic::{lock, patients, visiting};
use exercises::visit::{Finding, VisitFault};
use paper::Paper;
use wire::Failure;
use wire::clinic::AddPatientRequest;
use wire::visiting::NoteRequest;

#[test]
fn there_is_none_without_a_plan_and_a_visit_nor_of_a_locked_clinic_and_a_letter_has_room_for_so_much() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let now = at("11-25T08:00");
    issue(&mut folder, &now, example(), &dir.path().join("card"));
    patients::add(&mut folder, &now, &AddPatientRequest { code: "K18".into(), name: None }).expect("a new code");
    let out = dir.path().join("letter.pdf");
    let letter = |folder: &_, code, lines: &[String]| reporting::save_letter(folder, &now, (code, lines, false), Some(&out));
    assert_eq!(letter(&folder, "K18", &[]).err(), Some(Failure::NothingToExport));
    assert_eq!(reporting::report(&folder, &now, "K18", Paper::A4).err(), Some(Failure::NothingToExport));
    let long = [String::from("a"), "ñ".repeat(MAX_OWN_TEXT)];
    let unfit = Failure::VisitUnfit(VisitFault::Text { most: MAX_OWN_TEXT as u16 });
    assert_eq!(letter(&folder, "K17", &long).err(), Some(unfit));
    assert!(!out.exists(), "a refusal leaves nothing behind");
    letter(&folder, "K17", &["ñ".repeat(MAX_OWN_TEXT)]).expect("a letter");
    assert!(std::fs::read(&out).expect("it is there").starts_with(b"%PDF-"));
    lock::lock(&mut folder);
    assert_eq!(letter(&folder, "K17", &[]).err(), Some(Failure::ClinicLocked));
}

#[test]
fn who_was_treated_and_has_no_plan_gets_both_until_everything_is_taken_back() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let now = at("11-25T08:00");
    let note = |folder: &mut _, replaces, finding| {
        visiting::note(folder, &now, &NoteRequest { code: "K17".into(), replaces, finding }).expect("it is noted")
    };
    let page = note(&mut folder, None, Some(Finding::Note("Treated once.".into())));
    let out = dir.path().join("letter.pdf");
    let letter = |folder: &_| reporting::save_letter(folder, &now, ("K17", &[], true), Some(&out));
    assert!(reporting::report(&folder, &now, "K17", Paper::A4).expect("a report").starts_with(b"%PDF-"));
    letter(&folder).expect("a letter");
    assert!(std::fs::read(&out).expect("it is there").starts_with(b"%PDF-"));
    let n = page.visits[0].found[0].n;
    note(&mut folder, Some(n), None);
    assert_eq!(reporting::report(&folder, &now, "K17", Paper::A4).err(), Some(Failure::NothingToExport));
    assert_eq!(letter(&folder).err(), Some(Failure::NothingToExport));
}
