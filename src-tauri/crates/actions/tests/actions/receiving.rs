//! Damaged data of one patient does not affect the others.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{drafting, issuing, lock, patients, receiving};
use actions::patient::{plans, sealing, taking};
use exercises::id::LogId;
use std::path::Path;
use store::{Home, StoreError, Tx, table};
use wire::Failure;
use wire::app::Role;
use wire::clinic::{AddPatientRequest, IssueRequest, Outcome};
use wire::patient::{CardSource, SealRequest, TakeCardRequest};

/// The rows of the two patients of [`two_patients`].
const K17: i64 = 1;
const K18: i64 = 2;

/// A clinic with two patients, and the texts of their cards.
fn two_patients(dir: &Path) -> [String; 2] {
    let mut folder = clinic(dir);
    let first = issue(&mut folder, &at("11-25T08:00"), example(), &dir.join("K17"));
    patients::add(&mut folder, &AddPatientRequest { code: "K18".into(), name: None }).expect("a new code");
    let request = IssueRequest { code: "K18".into(), prescription: example() };
    let second = issuing::issue(&mut folder, &at("11-25T08:00"), &request, Some(&dir.join("K18"))).expect("a valid plan");
    [first, second.text]
}

/// A summary made on the evening of 25 November with the card.
fn summary(dir: &Path, card: &str) -> Vec<u8> {
    let mut folder = DataFolder::open(dir, true).expect("a new folder");
    folder.choose_role(Role::Patient).expect("free to choose");
    let request = TakeCardRequest { source: CardSource::Text(card.into()), agreed: Vec::new() };
    taking::take(&mut folder, &at("11-25T08:40"), &request).expect("a valid card");
    let plan = plans::one(&folder, None).expect("taken").plan().header.id;
    let seal = SealRequest { plan, from: None, until: at("11-25T20:00").now.date(), note: None };
    let out = dir.join("summary.age");
    sealing::seal(&mut folder, &at("11-25T20:00"), &seal, Some(&out)).expect("a day to hand over");
    std::fs::read(out).expect("written")
}

/// Changes the clinic's rows directly in the database.
fn tamper(dir: &Path, work: impl FnOnce(&Tx<'_>) -> Result<(), StoreError>) {
    let mut home = Home::open(&dir.join("clinic"), false).expect("the folder opens");
    home.store_mut().transaction(work).expect("written");
}

/// Adds a card and a summary that cannot be decrypted.
fn damage(tx: &Tx<'_>, patient: i64) -> Result<(), StoreError> {
    table::issued::insert(tx, patient, 9, |_| Ok::<_, StoreError>(b"damaged".to_vec()))?;
    table::received::insert(tx, patient, &LogId([9; 8]).0, 1, |_| Ok::<_, StoreError>(b"damaged".to_vec()))?;
    Ok(())
}

fn unlocked(dir: &Path) -> DataFolder {
    let mut folder = DataFolder::open(&dir.join("clinic"), false).expect("the folder opens");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    folder
}

fn receive(folder: &mut DataFolder, sealed: &[u8]) -> Outcome {
    let receipts = receiving::receive(folder, vec![("summary".into(), Ok(sealed.to_vec()))]).expect("open");
    receipts.into_iter().next().expect("one receipt").outcome
}

#[test]
fn damaged_rows_of_one_patient_do_not_keep_anothers_summary_or_draft_from_being_used() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let summaries = [("a", &cards[0]), ("b", &cards[1])].map(|(name, card)| summary(&dir.path().join(name), card));
    tamper(dir.path(), |tx| {
        damage(tx, K18)?;
        table::patient::update(tx, K18, b"damaged")
    });
    let mut folder = unlocked(dir.path());
    assert!(matches!(patients::list(&folder), Err(Failure::HomeDamaged { .. })), "the damage is there");
    assert_eq!(receive(&mut folder, &summaries[0]), Outcome::New { code: "K17".into(), days: 1 });
    assert_eq!(receive(&mut folder, &summaries[0]), Outcome::Known { code: "K17".into() });
    let draft = drafting::draft(&folder, &at("12-02T08:00"), "K17").expect("the last plan carried over");
    drafting::problems(&folder, &at("12-02T08:00"), "k17", &draft.draft.prescription).expect("checked");
    assert!(matches!(receive(&mut folder, &summaries[1]), Outcome::Refused(Failure::HomeDamaged { .. })));
    assert!(matches!(drafting::draft(&folder, &at("12-02T08:00"), "K18"), Err(Failure::HomeDamaged { .. })));
}

#[test]
fn no_summary_is_opened_to_check_a_draft() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    tamper(dir.path(), |tx| {
        table::received::insert(tx, K17, &LogId([9; 8]).0, 1, |_| Ok::<_, StoreError>(b"damaged".to_vec())).map(drop)
    });
    let folder = unlocked(dir.path());
    let problems = drafting::problems(&folder, &at("12-02T08:00"), "K17", &example());
    assert!(problems.is_ok(), "{problems:?}");
    assert!(matches!(drafting::draft(&folder, &at("12-02T08:00"), "K17"), Err(Failure::HomeDamaged { .. })));
}

#[test]
fn a_patient_whose_first_card_comes_later_is_found_as_well() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let first = summary(&dir.path().join("a"), &cards[0]);
    assert_eq!(receive(&mut folder, &first), Outcome::New { code: "K17".into(), days: 1 });
    patients::add(&mut folder, &AddPatientRequest { code: "K19".into(), name: None }).expect("a new code");
    let request = IssueRequest { code: "K19".into(), prescription: example() };
    let card =
        issuing::issue(&mut folder, &at("11-25T08:10"), &request, Some(&dir.path().join("K19"))).expect("a valid plan");
    let third = summary(&dir.path().join("c"), &card.text);
    assert_eq!(receive(&mut folder, &third), Outcome::New { code: "K19".into(), days: 1 });
    let second = summary(&dir.path().join("b"), &cards[1]);
    assert_eq!(receive(&mut folder, &second), Outcome::New { code: "K18".into(), days: 1 });
    let elsewhere = tempfile::tempdir().expect("a temporary folder");
    let foreign = summary(&elsewhere.path().join("d"), &two_patients(elsewhere.path())[0]);
    assert!(matches!(receive(&mut folder, &foreign), Outcome::Refused(Failure::SummaryOtherClinic)));
}
