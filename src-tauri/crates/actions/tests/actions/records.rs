//! Reviews for records: who is in them, and when none is written.

use crate::people::{at, clinic, example, issue};
use crate::receiving::{K18, damage, receive, summary, tamper, two_patients, unlocked};
use actions::clinic::records::{Asked, RecordForm, make, save};
use actions::clinic::{devices, lock, patients, visiting};
use actions::{ActionResult, DataFolder};
use exercises::visit::Finding;
use std::path::Path;
use wire::Failure;
use wire::clinic::AddPatientRequest;
use wire::visiting::NoteRequest;
use words::{Locale, Words};

const FORMS: [RecordForm; 3] = [RecordForm::Csv, RecordForm::Collection, RecordForm::Transaction];

fn written(folder: &DataFolder, code: Option<&str>, form: RecordForm) -> ActionResult<String> {
    let asked = Asked { code, form, with_names: false };
    let bytes = make(folder, &at("12-02T08:00"), Words::new(Locale::En), asked)?;
    Ok(String::from_utf8(bytes).expect("text"))
}

/// A clinic that has received a summary of K17 and of K18.
fn received(dir: &Path) -> DataFolder {
    let cards = two_patients(dir);
    let summaries = [("a", &cards[0]), ("b", &cards[1])].map(|(name, card)| summary(&dir.join(name), card));
    let mut folder = unlocked(dir);
    summaries.iter().for_each(|sealed| drop(receive(&mut folder, sealed)));
    folder
}

#[test]
fn nothing_is_written_that_leaves_a_patient_out_unseen() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(received(dir.path()));
    tamper(dir.path(), |tx| damage(tx, K18));
    let folder = unlocked(dir.path());
    let damaged = || Failure::RecordDamaged { code: "K18".into() };
    for form in FORMS {
        assert!(written(&folder, Some("K17"), form).is_ok(), "{form:?}: another's rows are whole");
        assert_eq!(written(&folder, Some("K18"), form).err(), Some(damaged()), "{form:?}");
        assert_eq!(written(&folder, None, form).err(), Some(damaged()), "{form:?}");
    }
}

#[test]
fn who_has_neither_a_plan_nor_a_visit_is_left_out_and_refused_alone() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    for form in FORMS {
        assert_eq!(written(&folder, Some("K17"), form).err(), Some(Failure::NothingToExport), "{form:?}");
        assert_eq!(written(&folder, None, form).err(), Some(Failure::NothingToExport), "{form:?}");
    }
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K18".into(), name: None }).expect("new");
    let asked = NoteRequest { code: "K18".into(), replaces: None, finding: Some(Finding::Note("Treated once.".into())) };
    visiting::note(&mut folder, &at("11-25T09:00"), &asked).expect("a note");
    for form in FORMS {
        let all = written(&folder, None, form).expect("a visit");
        assert!(all.contains("Treated once.") && !all.contains("K17"), "{all}");
        assert_eq!(written(&folder, Some("K17"), form).err(), Some(Failure::NothingToExport), "{form:?}");
    }
}

#[test]
fn a_locked_clinic_writes_nothing() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    lock::lock(&mut folder);
    for form in FORMS {
        assert_eq!(written(&folder, Some("K17"), form).err(), Some(Failure::ClinicLocked));
        assert_eq!(written(&folder, None, form).err(), Some(Failure::ClinicLocked));
    }
}

#[test]
fn a_device_that_is_left_out_is_no_source() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    let device = devices::list(&folder, "K17").expect("one")[0].device;
    let source = format!("summary/{device}/1/sha256/");
    assert!(written(&folder, Some("K17"), RecordForm::Collection).expect("whole").contains(&source));
    devices::leave_out(&mut folder, "K17", device, true).expect("known");
    let without = written(&folder, Some("K17"), RecordForm::Collection).expect("the plan");
    assert!(!without.contains(&source) && !without.contains("\"Observation\"") && without.contains("\"CarePlan\""));
}

#[test]
fn two_clinics_codes_are_not_one_patient_and_a_clinics_code_stays_one() {
    let system = |folder: &DataFolder| {
        let text = written(folder, Some("K17"), RecordForm::Collection).expect("a plan");
        let (_, rest) = text.split_once("\"system\": \"").expect("the patient comes first");
        rest.split('"').next().expect("a system").to_owned()
    };
    let of_new = |dir: &Path| {
        let mut folder = clinic(dir);
        issue(&mut folder, &at("11-25T08:00"), example(), &dir.join("card"));
        folder
    };
    let (one, other) = (tempfile::tempdir().expect("a folder"), tempfile::tempdir().expect("a folder"));
    let (first, second) = (of_new(one.path()), of_new(other.path()));
    assert_ne!(system(&first), system(&second));
    let before = system(&first);
    drop(first);
    assert_eq!(system(&unlocked(one.path())), before);
}

#[test]
fn a_file_is_written_whole_where_it_is_asked_for_or_not_at_all() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let folder = received(dir.path());
    let out = dir.path().join("mine.json");
    let asked = Asked { code: Some("K17"), form: RecordForm::Collection, with_names: false };
    let saved = save(&folder, &at("12-02T08:00"), Words::new(Locale::En), asked, Some(&out)).expect("written");
    assert_eq!((saved.path.as_str(), saved.bytes), (out.to_str().expect("text"), out.metadata().expect("there").len()));
    let nowhere = dir.path().join("no/such/folder/file");
    let refused = save(&folder, &at("12-02T08:00"), Words::new(Locale::En), asked, Some(&nowhere));
    assert!(refused.is_err() && !nowhere.exists(), "{refused:?}");
}
