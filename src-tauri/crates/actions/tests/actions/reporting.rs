//! Reports and letters about a patient: when there is none.

use crate::people::{at, clinic, example, issue};
use actions::clinic::reporting::{self, MAX_OWN_TEXT};
use actions::clinic::{lock, patients};
use exercises::visit::VisitFault;
use wire::Failure;
use wire::clinic::AddPatientRequest;

#[test]
fn there_is_no_report_without_a_plan_nor_of_a_locked_clinic_and_a_letter_has_room_for_so_much() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let now = at("11-25T08:00");
    issue(&mut folder, &now, example(), &dir.path().join("card"));
    patients::add(&mut folder, &now, &AddPatientRequest { code: "K18".into(), name: None }).expect("a new code");
    let out = dir.path().join("letter.pdf");
    let letter = |folder: &_, code, lines: &[String]| reporting::save_letter(folder, &now, (code, lines, false), Some(&out));
    let no_plan = || Failure::NoCardIssued { code: "K18".into() };
    assert_eq!(letter(&folder, "K18", &[]).err(), Some(no_plan()));
    let long = [String::from("a"), "ñ".repeat(MAX_OWN_TEXT)];
    let unfit = Failure::VisitUnfit(VisitFault::Text { most: MAX_OWN_TEXT as u16 });
    assert_eq!(letter(&folder, "K17", &long).err(), Some(unfit));
    assert!(!out.exists(), "a refusal leaves nothing behind");
    letter(&folder, "K17", &["ñ".repeat(MAX_OWN_TEXT)]).expect("a letter");
    assert!(std::fs::read(&out).expect("it is there").starts_with(b"%PDF-"));
    lock::lock(&mut folder);
    assert_eq!(letter(&folder, "K17", &[]).err(), Some(Failure::ClinicLocked));
}
