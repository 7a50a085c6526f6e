//! Several clinicians of one clinic, each under a name and a passphrase of their own.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{cases, clinicians, devices, lock, paper_diary, passphrase, patients, renewing, saved_keys, visiting};
use exercises::closing::CloseReason;
use exercises::id::ItemId;
use exercises::summary::PaperDay;
use exercises::visit::Finding;
use std::path::Path;
use wire::Failure;
use wire::app::LockState;
use wire::cases::CloseRequest;
use wire::clinic::{AddClinicianRequest, ClinicianLine, MAX_CLINICIANS, RemoveClinicianRequest};
use wire::visiting::{DiaryRequest, NoteRequest};

const OTHERS: &str = "eight brown wrens in a kettle";
const THIRD: &str = "two slow snails on a garden wall";

fn add(folder: &mut DataFolder, name: &str, own: Option<&str>, first: &str) -> Result<Vec<ClinicianLine>, Failure> {
    let (name, own_name) = (name.to_owned(), own.map(str::to_owned));
    clinicians::add(folder, &AddClinicianRequest { name, own_name, first: first.into(), confirmed: PASSPHRASE.into() })
}

fn remove(folder: &mut DataFolder, name: &str, confirmed: &str) -> Result<Vec<ClinicianLine>, Failure> {
    clinicians::remove(folder, &RemoveClinicianRequest { name: name.into(), confirmed: confirmed.into() })
}

fn names(lines: &[ClinicianLine]) -> Vec<(&str, bool)> {
    lines.iter().map(|line| (line.name.as_str(), line.is_you)).collect()
}

/// A clinic of two, locked.
fn of_two(dir: &Path) -> DataFolder {
    let mut folder = clinic(dir);
    add(&mut folder, "Ash Lindqvist", Some("Rowan Hale"), OTHERS).expect("a second one");
    lock::lock(&mut folder);
    folder
}

#[test]
fn each_unlocks_with_the_own_name_and_passphrase_alone() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = of_two(dir.path());
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: true }));
    let mut unlock = |name: Option<&str>, passphrase: &str| lock::unlock_as(&mut folder, name, passphrase.into());
    assert_eq!(unlock(None, PASSPHRASE), Err(Failure::ClinicianNameMissing));
    assert_eq!(unlock(Some("  "), PASSPHRASE), Err(Failure::ClinicianNameMissing));
    assert_eq!(unlock(Some("Ash"), OTHERS), Err(Failure::NoSuchClinician { name: "Ash".into() }));
    assert_eq!(unlock(Some("Ash Lindqvist"), PASSPHRASE), Err(Failure::WrongPassphrase));
    assert_eq!(unlock(Some("Rowan Hale"), OTHERS), Err(Failure::WrongPassphrase));
    assert_eq!(unlock(Some(" ash LINDQVIST "), OTHERS), Ok(()));
    let list = patients::list(&folder, &at("11-26T08:00")).expect("unlocked");
    assert_eq!((list.lines.len(), list.notices.len()), (1, 0), "the same patients");
    assert_eq!(names(&clinicians::list(&folder).expect("unlocked")), [("Rowan Hale", false), ("Ash Lindqvist", true)]);
    let wrong = lock::unlock_as(&mut folder, Some("Rowan Hale"), OTHERS.into());
    assert_eq!(wrong, Err(Failure::WrongPassphrase));
    assert_eq!(passphrase::confirm(&folder, &OTHERS.into()), Ok(()), "who was in is in");
    assert_eq!(passphrase::confirm(&folder, &PASSPHRASE.into()), Err(Failure::WrongPassphrase));
}

#[test]
fn each_changes_the_own_passphrase_and_nobody_elses() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = of_two(dir.path());
    lock::unlock_as(&mut folder, Some("Ash Lindqvist"), OTHERS.into()).expect("the first passphrase");
    assert_eq!(passphrase::change(&mut folder, &PASSPHRASE.into(), &THIRD.into()), Err(Failure::WrongPassphrase));
    passphrase::change(&mut folder, &OTHERS.into(), &THIRD.into()).expect("the own one");
    drop(folder);
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder");
    let mut unlock = |name, passphrase: &str| lock::unlock_as(&mut folder, Some(name), passphrase.into());
    assert_eq!(unlock("Ash Lindqvist", OTHERS), Err(Failure::WrongPassphrase));
    assert_eq!((unlock("Ash Lindqvist", THIRD), unlock("Rowan Hale", PASSPHRASE)), (Ok(()), Ok(())));
}

#[test]
fn a_name_or_first_passphrase_that_is_not_good_adds_nobody() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    assert_eq!(add(&mut folder, "Ash Lindqvist", None, OTHERS), Err(Failure::ClinicianNameMissing));
    assert_eq!(add(&mut folder, " ", Some("Rowan Hale"), OTHERS), Err(Failure::ClinicianNameMissing));
    let taken = Err(Failure::ClinicianNameTaken { name: "rowan hale".into() });
    assert_eq!(add(&mut folder, "rowan hale", Some("Rowan Hale"), OTHERS), taken);
    assert!(matches!(add(&mut folder, "Ash\u{202e}", Some("Rowan Hale"), OTHERS), Err(Failure::TextUnfit { .. })));
    assert!(matches!(add(&mut folder, "Ash", Some(&"x".repeat(500)), OTHERS), Err(Failure::TextUnfit { .. })));
    assert!(matches!(add(&mut folder, "Ash", Some("Rowan Hale"), "short"), Err(Failure::WeakPassphrase { .. })));
    let wrong = AddClinicianRequest {
        name: "Ash".into(),
        own_name: Some("Rowan Hale".into()),
        first: OTHERS.into(),
        confirmed: OTHERS.into(),
    };
    assert_eq!(clinicians::add(&mut folder, &wrong), Err(Failure::WrongPassphrase));
    assert_eq!(names(&clinicians::list(&folder).expect("unlocked")), [("", true)]);
    assert_eq!(remove(&mut folder, "Rowan Hale", PASSPHRASE), Err(Failure::LastClinician));
    lock::lock(&mut folder);
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: false }));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("nobody asks for a name");
    for n in 1..MAX_CLINICIANS {
        add(&mut folder, &format!("Ash {n}"), Some("Rowan Hale"), OTHERS)
            .unwrap_or_else(|failure| panic!("{n}: {failure:?}"));
    }
    let most = MAX_CLINICIANS as u8;
    assert_eq!(add(&mut folder, "one more", None, OTHERS), Err(Failure::TooManyClinicians { most }));
}

#[test]
fn who_was_removed_opens_nothing_and_is_in_none_of_the_files() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = of_two(dir.path());
    lock::unlock_as(&mut folder, Some("Ash Lindqvist"), OTHERS.into()).expect("the first passphrase");
    assert_eq!(remove(&mut folder, "Ash Lindqvist", OTHERS), Err(Failure::ClinicianIsYou));
    assert_eq!(remove(&mut folder, "Nobody", OTHERS), Err(Failure::NoSuchClinician { name: "Nobody".into() }));
    assert_eq!(remove(&mut folder, "Rowan Hale", PASSPHRASE), Err(Failure::WrongPassphrase));
    // Even the first one, whose place the other takes.
    let left = remove(&mut folder, "rowan hale", OTHERS).expect("another one");
    assert_eq!(names(&left), [("Ash Lindqvist", true)]);
    passphrase::change(&mut folder, &OTHERS.into(), &THIRD.into()).expect("still in");
    drop(folder);
    let files = ["carryover.db", "carryover.db-wal"].map(|name| std::fs::read(dir.path().join("clinic").join(name)));
    let bytes: Vec<u8> = files.into_iter().flat_map(|file| file.unwrap_or_default()).collect();
    assert!(!bytes.windows(10).any(|part| part == b"Rowan Hale"), "not even the name");
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder");
    assert_eq!(lock::unlock(&mut folder, PASSPHRASE.into()), Err(Failure::WrongPassphrase));
    assert_eq!(lock::unlock(&mut folder, THIRD.into()), Ok(()), "one alone is asked for no name");
}

#[test]
fn renewing_the_keys_leaves_whoever_did_it_and_the_others_are_added_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = of_two(dir.path());
    lock::unlock_as(&mut folder, Some("Ash Lindqvist"), OTHERS.into()).expect("the first passphrase");
    renewing::renew(&mut folder, &at("11-26T08:00"), &OTHERS.into()).expect("confirmed");
    assert_eq!(names(&clinicians::list(&folder).expect("unlocked")), [("Ash Lindqvist", true)]);
    let again =
        AddClinicianRequest { name: "Rowan Hale".into(), own_name: None, first: THIRD.into(), confirmed: OTHERS.into() };
    clinicians::add(&mut folder, &again).expect("added again");
    drop(folder);
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder");
    let old = lock::unlock_as(&mut folder, Some("Rowan Hale"), PASSPHRASE.into());
    assert_eq!(old, Err(Failure::WrongPassphrase));
    lock::unlock_as(&mut folder, Some("Rowan Hale"), THIRD.into()).expect("the first passphrase");
    assert_eq!(patients::notices(&folder), Ok(Vec::new()), "with the renewed keys");
}

#[test]
fn saved_keys_replace_the_forgotten_passphrase_of_the_clinician_who_is_named() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = of_two(dir.path());
    lock::unlock_as(&mut folder, Some("Rowan Hale"), PASSPHRASE.into()).expect("the passphrase");
    let saved = saved_keys::make(&folder, &at("11-26T08:00"), &THIRD.into()).expect("unlocked").file;
    lock::lock(&mut folder);
    let nobody = saved_keys::recover(&mut folder, None, &saved, &THIRD.into());
    assert_eq!(nobody, Err(Failure::ClinicianNameMissing));
    saved_keys::recover(&mut folder, Some("Ash Lindqvist"), &saved, &THIRD.into()).expect("this clinic's keys");
    lock::lock(&mut folder);
    let mut unlock = |name, passphrase: &str| lock::unlock_as(&mut folder, Some(name), passphrase.into());
    assert_eq!((unlock("Ash Lindqvist", THIRD), unlock("Rowan Hale", PASSPHRASE)), (Ok(()), Ok(())));
}

/// Notes this at a visit of K17, in place of the entry with the number `replaces`.
fn note(folder: &mut DataFolder, text: &str, replaces: Option<u32>) {
    let asked = NoteRequest { code: "K17".into(), replaces, finding: Some(Finding::Note(text.into())) };
    visiting::note(folder, &at("11-27T09:00"), &asked).expect("a note");
}

/// Enters the first day of K17's plan from paper, and closes the case.
fn enter_and_close(folder: &mut DataFolder) {
    let now = at("11-27T09:00");
    let days = vec![PaperDay { day: at("11-25T08:00").now.date(), done: vec![(ItemId(1), 1)], mornings: Vec::new() }];
    paper_diary::enter(folder, &now, &DiaryRequest { code: "K17".into(), days }).expect("a day of the plan");
    let asked = CloseRequest { code: "K17".into(), reason: CloseReason::Finished, words: String::new() };
    cases::close(folder, &now, &asked).expect("an open case");
}

#[test]
fn what_several_clinicians_do_bears_their_names() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = of_two(dir.path());
    lock::unlock_as(&mut folder, Some("Rowan Hale"), PASSPHRASE.into()).expect("the first one");
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    note(&mut folder, "first", None);
    lock::lock(&mut folder);
    lock::unlock_as(&mut folder, Some("Ash Lindqvist"), OTHERS.into()).expect("the second one");
    note(&mut folder, "second", None);
    let first = visiting::page(&folder, &at("11-27T09:00"), "K17").expect("the patient").visits[0].found[0].n;
    note(&mut folder, "first, put right", Some(first));
    enter_and_close(&mut folder);
    let visit = visiting::page(&folder, &at("11-28T09:00"), "K17").expect("the patient").visits.remove(0);
    assert_eq!(visit.by(), ["Rowan Hale", "Ash Lindqvist"]);
    assert_eq!(visit.found[0].corrected_by.as_deref(), Some("Ash Lindqvist"));
    let page = cases::page(&folder, &at("11-28T09:00"), "K17").expect("the patient");
    assert_eq!(page.issued_by, [(1, "Rowan Hale".to_owned())].into());
    assert_eq!(page.closings[0].by.as_deref(), Some("Ash Lindqvist"));
    let paper = devices::list(&folder, "K17").expect("the patient").remove(0);
    assert_eq!(paper.by.as_deref(), Some("Ash Lindqvist"));
}

#[test]
fn what_an_only_clinician_without_a_name_does_bears_none() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    note(&mut folder, "first", None);
    enter_and_close(&mut folder);
    let page = cases::page(&folder, &at("11-28T09:00"), "K17").expect("the patient");
    assert_eq!((page.issued_by.len(), page.closings[0].by.as_ref()), (0, None));
    let visits = visiting::page(&folder, &at("11-28T09:00"), "K17").expect("the patient").visits;
    assert_eq!(visits[0].by(), Vec::<String>::new());
    assert_eq!(devices::list(&folder, "K17").expect("the patient")[0].by, None);
}
