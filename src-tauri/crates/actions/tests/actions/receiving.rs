//! Damaged data of one patient does not affect the others.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{drafting, issuing, lock, patients, receiving, reviewing};
use actions::patient::{plans, sealing, taking};
use exercises::id::LogId;
use std::path::Path;
use store::{Home, StoreError, Tx, table};
use wire::Failure;
use wire::app::Role;
use wire::clinic::{AddPatientRequest, IssueRequest, StoreNotice};
use wire::patient::{CardSource, SealRequest, TakeCardRequest};
use wire::receiving::{MAX_FILES, Outcome};

/// The rows of the two patients of [`two_patients`].
pub const K17: i64 = 1;
pub const K18: i64 = 2;

/// A clinic with two patients, and the texts of their cards.
pub fn two_patients(dir: &Path) -> [String; 2] {
    let mut folder = clinic(dir);
    let first = issue(&mut folder, &at("11-25T08:00"), example(), &dir.join("K17"));
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K18".into(), name: None })
        .expect("a new code");
    let request = IssueRequest { code: "K18".into(), prescription: example() };
    let second = issuing::issue(&mut folder, &at("11-25T08:00"), &request, Some(&dir.join("K18"))).expect("a valid plan");
    [first, second.text]
}

/// A summary made on the evening of 25 November with the card.
pub fn summary(dir: &Path, card: &str) -> Vec<u8> {
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
pub fn tamper(dir: &Path, work: impl FnOnce(&Tx<'_>) -> Result<(), StoreError>) {
    let mut home = Home::open(&dir.join("clinic"), false).expect("the folder opens");
    home.store_mut().transaction(work).expect("written");
}

/// Adds a card and a summary that cannot be decrypted.
pub fn damage(tx: &Tx<'_>, patient: i64) -> Result<(), StoreError> {
    table::issued::insert(tx, patient, 9, |_| Ok::<_, StoreError>(b"damaged".to_vec()))?;
    table::received::insert(tx, patient, &LogId([9; 8]).0, 1, |_| Ok::<_, StoreError>(b"damaged".to_vec()))?;
    Ok(())
}

pub fn unlocked(dir: &Path) -> DataFolder {
    let mut folder = DataFolder::open(&dir.join("clinic"), false).expect("the folder opens");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    folder
}

pub fn receive(folder: &mut DataFolder, sealed: &[u8]) -> Outcome {
    let receipts =
        receiving::receive(folder, &at("11-25T20:00"), vec![("summary".into(), Ok(sealed.to_vec()))]).expect("open");
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
    let list = patients::list(&folder, &at("12-02T08:00")).expect("the others are there");
    assert_eq!(list.lines.iter().map(|line| (line.code.as_str(), line.damaged)).collect::<Vec<_>>(), [("K17", false)]);
    assert!(list.notices.contains(&StoreNotice::DamagedRecords { n: 1 }), "{:?}", list.notices);
    assert_eq!(receive(&mut folder, &summaries[0]), Outcome::New { code: "K17".into(), days: 1 });
    assert_eq!(receive(&mut folder, &summaries[0]), Outcome::Known { code: "K17".into() });
    let draft = drafting::draft(&folder, &at("12-02T08:00"), "K17").expect("the last plan carried over");
    drafting::check(&folder, &at("12-02T08:00"), "k17", &draft.draft.prescription).expect("checked");
    assert!(matches!(receive(&mut folder, &summaries[1]), Outcome::Refused(Failure::RecordsDamaged { n: 1 })));
    assert_eq!(drafting::draft(&folder, &at("12-02T08:00"), "K18").err(), Some(Failure::RecordsDamaged { n: 1 }));
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K19".into(), name: None })
        .expect("a new code");
}

#[test]
fn a_damaged_card_or_summary_is_one_line_of_the_list_and_closes_one_page() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    tamper(dir.path(), |tx| damage(tx, K18));
    let mut folder = unlocked(dir.path());
    let damaged = |folder: &DataFolder| {
        let list = patients::list(folder, &at("12-02T08:00")).expect("the others are there");
        list.lines.into_iter().map(|line| (line.code, line.damaged)).collect::<Vec<_>>()
    };
    assert_eq!(damaged(&folder), [("K17".to_owned(), false), ("K18".to_owned(), true)]);
    let page = |folder: &DataFolder, code| reviewing::page(folder, &at("12-02T08:00"), code).map(|page| page.code);
    assert_eq!(page(&folder, "K17"), Ok("K17".to_owned()));
    assert_eq!(page(&folder, "K18"), Err(Failure::RecordDamaged { code: "K18".into() }));
    let nobody = Err(Failure::NoSuchPatient { code: "K99".into() });
    assert_eq!(page(&folder, "K99"), nobody, "every code is known");
    patients::remove(&mut folder, "K18", "K18").expect("also a damaged one");
    assert_eq!(damaged(&folder), [("K17".to_owned(), false)]);
}

#[test]
fn no_summary_is_opened_to_check_a_draft() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    two_patients(dir.path());
    tamper(dir.path(), |tx| {
        table::received::insert(tx, K17, &LogId([9; 8]).0, 1, |_| Ok::<_, StoreError>(b"damaged".to_vec())).map(drop)
    });
    let folder = unlocked(dir.path());
    let checked = drafting::check(&folder, &at("12-02T08:00"), "K17", &example());
    assert!(checked.is_ok(), "{checked:?}");
    let draft = drafting::draft(&folder, &at("12-02T08:00"), "K17");
    assert_eq!(draft.err(), Some(Failure::RecordDamaged { code: "K17".into() }));
}

#[test]
fn a_patient_whose_first_card_comes_later_is_found_as_well() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let mut folder = unlocked(dir.path());
    let first = summary(&dir.path().join("a"), &cards[0]);
    assert_eq!(receive(&mut folder, &first), Outcome::New { code: "K17".into(), days: 1 });
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K19".into(), name: None })
        .expect("a new code");
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

/// The header of a PNG of 9000 times 9000 pixels.
const TOO_LARGE: &str = "iVBORw0KGgoAAAANSUhEUgAAIygAACMoCAAAAABIvi1m";

#[test]
fn a_picture_with_too_many_pixels_is_refused_as_such_on_both_sides() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let too_big = Failure::PictureTooBig { most: 64 };
    let picture = actions::platform::from_base64(TOO_LARGE).expect("Base64");
    assert_eq!(receive(&mut folder, &picture), Outcome::Refused(too_big.clone()));
    assert_eq!(taking::find(CardSource::File(TOO_LARGE.into())), Err(too_big));
}

#[test]
fn files_beyond_the_limit_of_the_window_are_refused_and_the_others_received() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let files: Vec<_> = (0..MAX_FILES + 2).map(|place| (place.to_string(), "bm8gc3VtbWFyeQ==".to_owned())).collect();
    let receipts = receiving::receive(&mut folder, &at("11-26T08:00"), receiving::from_window(files)).expect("open");
    let too_many = Outcome::Refused(Failure::TooManyFiles { most: MAX_FILES as u32 });
    let (read, beyond) = receipts.split_at(MAX_FILES);
    assert!(read.iter().all(|receipt| receipt.outcome == Outcome::Refused(Failure::SummaryForeign)));
    assert_eq!(beyond.iter().map(|receipt| &receipt.outcome).collect::<Vec<_>>(), [&too_many; 2]);
}
