//! Renewing the clinic's keys: plans go on, and nothing that was made before is lost.

use crate::people::{PASSPHRASE, Patient, at, clinic, example, issue};
use crate::receiving::unlocked;
use actions::DataFolder;
use actions::clinic::{issuing, lock, passphrase, patients, receiving, renewing, reviewing, saved_keys};
use actions::patient::{plans, sealing, taking};
use std::path::Path;
use store::Home;
use store::table::keys;
use vault::{Keys, Passphrase};
use wire::Failure;
use wire::app::LockState;
use wire::clinic::{AddPatientRequest, IssueRequest, IssuedCard, StoreNotice};
use wire::patient::{CardPreview, CardSource, SealRequest, TakeCardRequest};
use wire::receiving::{Outcome, ReceiptNotice};

const KEPT: &str = "eight brown wrens in a kettle";

fn renew(folder: &mut DataFolder, moment: &str) {
    renewing::renew(folder, &at(moment), &PASSPHRASE.into()).expect("it is the passphrase");
}

fn try_next(folder: &mut DataFolder, code: &str, moment: &str, dir: &Path) -> Result<IssuedCard<String>, Failure> {
    let mut prescription = example();
    prescription.confirmed = Some(at(moment).now.date());
    let request = IssueRequest { code: code.into(), prescription };
    issuing::issue(folder, &at(moment), &request, Some(&dir.join(format!("card-{moment}"))))
}

/// The next card of K17, issued on that day.
fn next(folder: &mut DataFolder, moment: &str, dir: &Path) -> IssuedCard<String> {
    try_next(folder, "K17", moment, dir).expect("a plan that may be issued")
}

fn preview(patient: &Patient, card: &str) -> Result<CardPreview, Failure> {
    taking::preview(&patient.folder, &CardSource::Text(card.to_owned()))
}

fn take(patient: &mut Patient, card: &str, moment: &str) {
    let request = TakeCardRequest { source: CardSource::Text(card.to_owned()), agreed: Vec::new() };
    taking::take(&mut patient.folder, &at(moment), &request).expect("a card of the clinic");
    patient.plan = plans::one(&patient.folder, None).expect("taken").plan().header.id;
}

fn with_card(card: &str, moment: &str) -> Patient {
    let mut patient = Patient::without_card();
    take(&mut patient, card, moment);
    patient
}

fn summary(patient: &mut Patient, moment: &str) -> Vec<u8> {
    let seal = SealRequest { plan: patient.plan, from: None, until: at(moment).now.date(), note: None };
    let out = patient.dir.path().join(format!("{moment}.age"));
    sealing::seal(&mut patient.folder, &at(moment), &seal, Some(&out)).expect("a day to hand over");
    std::fs::read(out).expect("written")
}

fn receive(folder: &mut DataFolder, moment: &str, sealed: Vec<u8>) -> (Outcome, Vec<ReceiptNotice>) {
    let mut receipts = receiving::receive(folder, &at(moment), vec![("a.age".into(), Ok(sealed))]).expect("unlocked");
    let receipt = receipts.remove(0);
    (receipt.outcome, receipt.notices)
}

fn fingerprint(folder: &DataFolder) -> String {
    match lock::state(folder).expect("readable") {
        LockState::Open { fingerprint, .. } => fingerprint,
        other => panic!("{other:?}"),
    }
}

/// The keys as they are stored; the folder must be closed.
fn stored(dir: &Path) -> Vec<u8> {
    let home = Home::open(&dir.join("clinic"), false).expect("the folder opens");
    home.store().read(keys::get).expect("readable").expect("there are keys")
}

fn stored_keys(dir: &Path) -> Keys {
    vault::keys::open(&stored(dir), &Passphrase::new(PASSPHRASE.to_owned())).expect("the passphrase")
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).expect("a folder");
    for file in std::fs::read_dir(from).expect("the folder") {
        let file = file.expect("a file");
        std::fs::copy(file.path(), to.join(file.file_name())).expect("copied");
    }
}

#[test]
fn a_plan_goes_on_after_the_keys_were_renewed_and_summaries_of_both_cards_are_received() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let first = next(&mut folder, "11-25T08:00", dir.path());
    let [mut one, mut other] = [(); 2].map(|()| with_card(&first.text, "11-25T08:40"));
    renew(&mut folder, "11-26T07:00");
    assert_ne!(fingerprint(&folder), first.fingerprint);
    let second = next(&mut folder, "11-26T08:00", dir.path());
    assert_eq!((second.fingerprint.as_str(), second.plan.header.revision), (fingerprint(&folder).as_str(), 2));
    let shown = preview(&one, &second.text).expect("a card of the clinic");
    assert!(shown.renewed && shown.known_clinic && !shown.other_keys);
    assert_eq!(shown.fingerprint, second.fingerprint, "the new code, to be compared");
    assert!(!preview(&Patient::without_card(), &second.text).expect("also as a first card").renewed);
    take(&mut one, &second.text, "11-26T08:40");
    let mut one = one.restarted();
    let pinned = plans::one(&one.folder, None).expect("followed").verify_key;
    let bytes = format::card::from_text(&second.text).expect("a card");
    let key = format::card::open(&bytes).expect("a card").claimed_key();
    assert_eq!(pinned, key, "the new key is pinned, also after a restart");

    // One device goes on with the first card, the other with the second.
    let of_first = receive(&mut folder, "11-27T08:00", summary(&mut other, "11-26T20:00"));
    assert!(matches!(of_first.0, Outcome::New { .. }), "{of_first:?}");
    let of_second = receive(&mut folder, "11-27T08:00", summary(&mut one, "11-26T20:00"));
    assert!(!matches!(of_second.0, Outcome::Refused(_)), "{of_second:?}");
    let page = reviewing::page(&folder, &at("11-27T09:00"), "K17").expect("a page");
    assert_eq!(page.devices.len(), 2);
    let third = next(&mut folder, "11-27T10:00", dir.path());
    let shown = preview(&one, &third.text).expect("signed with the pinned key");
    assert!(!shown.renewed && shown.known_clinic, "it is said once");
    assert!(preview(&other, &third.text).expect("also from the first card").renewed);
    assert_eq!(patients::notices(&folder), Ok(Vec::new()));
}

#[test]
fn a_card_of_the_former_keys_is_refused_once_the_new_ones_are_pinned() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut patient = with_card(&next(&mut folder, "11-25T08:00", dir.path()).text, "11-25T08:40");
    drop(folder);
    copy(&dir.path().join("clinic"), &dir.path().join("stolen/clinic"));
    let mut folder = unlocked(dir.path());
    renew(&mut folder, "11-26T07:00");
    take(&mut patient, &next(&mut folder, "11-26T08:00", dir.path()).text, "11-26T08:40");
    // Whoever has the former keys issues further cards with them.
    let mut stolen = unlocked(&dir.path().join("stolen"));
    next(&mut stolen, "11-26T09:00", dir.path());
    let forged = next(&mut stolen, "11-26T10:00", dir.path());
    assert_eq!(forged.plan.header.revision, 3);
    let before = patient.bytes();
    assert_eq!(preview(&patient, &forged.text), Err(Failure::CardOtherClinic));
    let request = TakeCardRequest { source: CardSource::Text(forged.text), agreed: Vec::new() };
    let taken = taking::take(&mut patient.folder, &at("11-26T10:40"), &request).map(drop);
    assert_eq!(taken, Err(Failure::CardOtherClinic));
    assert!(before == patient.bytes(), "not a byte");
}

#[test]
fn the_keys_are_renewed_only_by_whoever_types_the_passphrase_and_the_old_file_is_gone() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    let old = stored(dir.path());
    let is_in_a_file = || {
        let files = std::fs::read_dir(dir.path().join("clinic")).expect("a folder").flatten().map(|file| file.path());
        let tail = &old[old.len() - 60..];
        files
            .filter(|path| path.is_file())
            .any(|path| std::fs::read(path).expect("readable").windows(tail.len()).any(|window| window == tail))
    };
    let mut folder = unlocked(dir.path());
    let before = fingerprint(&folder);
    let wrong = renewing::renew(&mut folder, &at("11-26T07:00"), &KEPT.into());
    assert_eq!((wrong, fingerprint(&folder)), (Err(Failure::WrongPassphrase), before.clone()));
    assert!(is_in_a_file());
    renew(&mut folder, "11-26T07:00");
    assert!(!is_in_a_file(), "also not while the folder is still open");
    let renewed = fingerprint(&folder);
    lock::lock(&mut folder);
    assert_eq!(renewing::renew(&mut folder, &at("11-26T07:00"), &PASSPHRASE.into()), Err(Failure::ClinicLocked));
    drop(folder);
    let keys = stored_keys(dir.path());
    assert_eq!((keys.fingerprint(), keys.former()[0].fingerprint()), (renewed.clone(), before));
    let mut folder = unlocked(dir.path());
    passphrase::change(&mut folder, &PASSPHRASE.into(), &KEPT.into()).expect("a good one");
    lock::lock(&mut folder);
    lock::unlock(&mut folder, KEPT.into()).expect("the new passphrase");
    assert_eq!(fingerprint(&folder), renewed);
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).map(|all| all.lines.len()), Ok(1), "its rows open as before");
}

#[test]
fn a_plan_outlasts_three_renewals_and_after_the_fourth_a_new_one_is_asked_for() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut patient = with_card(&next(&mut folder, "11-25T08:00", dir.path()).text, "11-25T08:40");
    let mut late =
        with_card(&std::fs::read_to_string(dir.path().join("card-11-25T08:00/card.txt")).expect("written"), "11-25T09:00");
    let mut versions = Vec::new();
    for day in ["11-26", "11-27", "11-28"] {
        renew(&mut folder, &format!("{day}T07:00"));
        let card = next(&mut folder, &format!("{day}T08:00"), dir.path());
        assert!(preview(&patient, &card.text).expect("from one to the next").renewed);
        take(&mut patient, &card.text, &format!("{day}T08:40"));
        versions.push(card.version.expect("it fits a code"));
        if day == "11-28" {
            assert!(preview(&late, &card.text).expect("two cards were missed").renewed);
            take(&mut late, &card.text, "11-28T09:00");
        }
    }
    println!("versions of the code with one, two and three former keys: {versions:?}");
    for patient in [&mut patient, &mut late] {
        let outcome = receive(&mut folder, "11-29T08:00", summary(patient, "11-28T20:00")).0;
        assert!(!matches!(outcome, Outcome::Refused(_)), "{outcome:?}");
    }
    renew(&mut folder, "11-29T07:00");
    let many = Failure::PlanOfManyKeys { code: "K17".into(), most: 3 };
    assert_eq!(try_next(&mut folder, "K17", "11-29T08:00", dir.path()), Err(many));
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K17-2".into(), name: None })
        .expect("a new code");
    let new = try_next(&mut folder, "K17-2", "11-29T09:00", dir.path()).expect("a first card");
    assert!(
        preview(&patient, &new.text).expect("another plan").other_keys,
        "a plan of its own, whose code is to be compared"
    );
}

#[test]
fn a_backup_from_before_the_renewal_goes_on_with_the_keys_that_were_saved_since() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut patient = with_card(&next(&mut folder, "11-25T08:00", dir.path()).text, "11-25T08:40");
    let mut behind =
        with_card(&std::fs::read_to_string(dir.path().join("card-11-25T08:00/card.txt")).expect("written"), "11-25T09:00");
    drop(folder);
    copy(&dir.path().join("clinic"), &dir.path().join("backup"));
    let mut folder = unlocked(dir.path());
    renew(&mut folder, "11-26T07:00");
    let saved = saved_keys::make(&folder, &at("11-26T07:10"), &KEPT.into()).expect("a good passphrase").file;
    take(&mut patient, &next(&mut folder, "11-26T08:00", dir.path()).text, "11-26T08:40");
    drop(folder);
    std::fs::remove_dir_all(dir.path().join("clinic")).expect("removed");
    copy(&dir.path().join("backup"), &dir.path().join("clinic"));

    let mut folder = unlocked(dir.path());
    let sealed = summary(&mut patient, "11-26T20:00");
    assert_eq!(receive(&mut folder, "11-27T08:00", sealed.clone()).0, Outcome::Refused(Failure::SummaryOtherClinic));
    saved_keys::recover(&mut folder, None, &saved, &KEPT.into()).expect("of the same clinic");
    assert_eq!(patients::notices(&folder), Ok(Vec::new()));
    let (outcome, notices) = receive(&mut folder, "11-27T08:00", sealed);
    assert!(matches!(outcome, Outcome::New { .. }), "{outcome:?}");
    assert_eq!(notices, [ReceiptNotice::StoreBehind { revision: 2, next: 3 }]);
    let third = next(&mut folder, "11-27T09:00", dir.path());
    assert_eq!(third.plan.header.revision, 3);
    for (device, renewed) in [(&mut patient, false), (&mut behind, true)] {
        assert_eq!(preview(device, &third.text).expect("of the clinic").renewed, renewed);
        take(device, &third.text, "11-27T09:30");
    }
}

#[test]
fn keys_that_were_saved_before_the_renewal_open_the_store_and_say_that_they_are_older() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    next(&mut folder, "11-25T08:00", dir.path());
    patients::add(&mut folder, &at("11-25T08:00"), &AddPatientRequest { code: "K18".into(), name: None })
        .expect("a new code");
    let older = saved_keys::make(&folder, &at("11-25T09:00"), &KEPT.into()).expect("a good passphrase").file;
    renew(&mut folder, "11-26T07:00");
    let newer = saved_keys::make(&folder, &at("11-26T07:10"), &KEPT.into()).expect("a good passphrase").file;
    let mut patient = with_card(&next(&mut folder, "11-26T08:00", dir.path()).text, "11-26T08:40");
    let sealed = summary(&mut patient, "11-26T20:00");
    saved_keys::recover(&mut folder, None, &older, &KEPT.into()).expect("of the same clinic");
    let renewed = at("11-26T07:00").now.date();
    let said = vec![StoreNotice::KeysOlder { renewed }];
    assert_eq!(patients::notices(&folder), Ok(said.clone()));
    let text = words::Words::new(words::Locale::En).store_notice(&said[0]);
    assert!(text.contains("before it renewed its keys on 26 November 2026"), "{text}");
    lock::lock(&mut folder);
    lock::unlock(&mut folder, KEPT.into()).expect("the passphrase of the saved keys");
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).expect("every row opens").notices, said, "each time");
    assert_eq!(receive(&mut folder, "11-27T08:00", sealed.clone()).0, Outcome::Refused(Failure::SummaryOtherClinic));
    let missing = Failure::PlanOfMissingKeys { code: "K17".into() };
    assert_eq!(try_next(&mut folder, "K17", "11-27T08:00", dir.path()), Err(missing));
    assert!(try_next(&mut folder, "K18", "11-27T08:30", dir.path()).is_ok(), "whoever has no card of the later keys");
    saved_keys::recover(&mut folder, None, &newer, &KEPT.into()).expect("of the same clinic");
    assert_eq!(patients::notices(&folder), Ok(Vec::new()));
    assert!(matches!(receive(&mut folder, "11-27T09:00", sealed).0, Outcome::New { .. }));
    next(&mut folder, "11-27T10:00", dir.path());
}

#[test]
fn the_sheets_hold_all_keys_in_a_code_as_often_as_they_can_be_renewed() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    // Four renewals, without the work that each passphrase costs.
    let mut renewed = stored_keys(dir.path());
    for day in 1..=4 {
        renewed = vault::keys::renew(&renewed, at(&format!("12-0{day}T08:00")).now.date()).expect("not too often");
    }
    let file = vault::keys::seal(&renewed, &Passphrase::new(PASSPHRASE.to_owned()), vault::Cost::new(10).expect("a cost"));
    let mut home = Home::open(&dir.path().join("clinic"), false).expect("the folder opens");
    home.store_mut().transaction(|tx| keys::replace(tx, &file)).expect("room");
    drop(home);
    let mut folder = unlocked(dir.path());
    renew(&mut folder, "12-05T08:00");
    let often = renewing::renew(&mut folder, &at("12-06T08:00"), &PASSPHRASE.into());
    assert_eq!(often, Err(Failure::KeysRenewedTooOften { most: 5 }));
    let saved = saved_keys::make(&folder, &at("12-06T09:00"), &KEPT.into()).expect("a good passphrase");
    let text = saved.sheet.split_once("<pre>").and_then(|(_, rest)| rest.split_once("</pre>")).expect("the text").0;
    let picture = pictures::qr::Code::of(text).expect("it fits a code");
    println!("version of the code with five former generations: {}", picture.version());
    let later = words::Words::new(folder.locale()).text(words::Key::KeySheetLater);
    // The sheet is HTML, in which some characters are written otherwise.
    let is_said = later.split(['&', '<', '>', '"', '\'']).all(|part| saved.sheet.contains(part));
    assert!(saved.sheet.contains("<svg") && is_said, "{later}");
    let plain = saved_keys::plain_sheet(&folder, &at("12-06T09:00")).expect("unlocked");
    assert_eq!(plain.matches("AGE-SECRET-KEY-1").count(), 6);
    assert!(plain.contains("<svg") && plain.contains("# cards until 2026-12-01"));
    let mut other = DataFolder::open(&dir.path().join("other"), true).expect("a new folder");
    lock::start_with_saved_keys(&mut other, "Linden Lane Practice", None, KEPT.into(), &picture.png(8))
        .expect("the same clinic");
    assert_eq!(fingerprint(&other), fingerprint(&folder));
}

#[test]
fn a_card_whose_files_were_not_written_is_issued_anew_once_the_keys_were_renewed() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let first = issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("one"));
    let patient = with_card(&first, "11-25T08:40");
    // A file in the way of one of the card's own.
    std::fs::create_dir_all(dir.path().join("card-11-26T08:00/card.bin")).expect("the test owns it");
    let failed = try_next(&mut folder, "K17", "11-26T08:00", dir.path());
    assert!(matches!(failed, Err(Failure::CardNotSaved { revision: 2, .. })), "{failed:?}");
    renew(&mut folder, "11-26T09:00");
    let again = next(&mut folder, "11-26T10:00", dir.path());
    assert_eq!((again.plan.header.revision, again.fingerprint), (3, fingerprint(&folder)));
    assert!(preview(&patient, &again.text).expect("of the clinic").renewed);
}
