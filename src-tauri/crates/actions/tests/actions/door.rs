//! The clinic's passphrase, its lock, and its saved keys.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::idle::{self, Clocks, IdleWatch};
use actions::clinic::{lock, passphrase, patients, receiving, saved_keys};
use actions::patient::{plans, sealing, taking};
use std::path::Path;
use store::Home;
use store::table::keys;
use wire::Failure;
use wire::app::{LockState, Role};
use wire::clinic::PassphraseStrength;
use wire::patient::{CardSource, SealRequest, TakeCardRequest};
use wire::receiving::Outcome;

const NEW: &str = "eight brown wrens in a kettle";

fn reopened(dir: &Path) -> DataFolder {
    DataFolder::open(&dir.join("clinic"), false).expect("the folder opens")
}

/// The keys as they are stored; the folder must be closed.
fn stored(dir: &Path) -> Vec<u8> {
    let home = Home::open(&dir.join("clinic"), false).expect("the folder opens");
    home.store().read(keys::get).expect("readable").expect("there are keys")
}

/// Whether any file of the clinic's folder contains these bytes.
fn is_in_a_file(dir: &Path, bytes: &[u8]) -> bool {
    let files = std::fs::read_dir(dir.join("clinic")).expect("a folder").map(|entry| entry.expect("an entry").path());
    files
        .filter(|path| path.is_file())
        .any(|path| std::fs::read(path).expect("readable").windows(bytes.len()).any(|window| window == bytes))
}

#[test]
fn a_passphrase_that_is_easy_to_guess_is_refused() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = DataFolder::open(&dir.path().join("new"), true).expect("a new folder");
    let mut start = |typed: &str| lock::start(&mut folder, "Linden Lane Practice", Some("01 555 0100"), typed.into());
    for guessable in ["            ", "aaaaaaaaaaaa", "qwertyuiopas", "Linden Lane Practice", "lindenlanepractice1"] {
        assert_eq!(start(guessable), Err(Failure::GuessablePassphrase), "{guessable:?}");
    }
    assert_eq!(start("kQ7#vz!"), Err(Failure::WeakPassphrase { least: 12 }));
    assert_eq!(start(PASSPHRASE), Ok(()));
    let strength = |typed: &str| passphrase::strength_here(&folder, &typed.into(), None).expect("readable");
    assert_eq!(strength("Linden Lane Practice"), PassphraseStrength::Guessable, "the name of this clinic");
    assert_eq!(strength("short"), PassphraseStrength::TooShort);
    assert_eq!(strength(NEW), PassphraseStrength::Strong);
}

#[test]
fn keys_of_an_older_program_are_sealed_anew_when_they_are_unlocked() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    // The same keys with less work for each try.
    let passphrase = vault::Passphrase::new(PASSPHRASE.to_owned());
    let opened = vault::keys::open(&stored(dir.path()), &passphrase).expect("the passphrase");
    let old = vault::keys::seal(&opened, &passphrase, vault::Cost::new(10).expect("a cost"));
    let mut home = Home::open(&dir.path().join("clinic"), false).expect("the folder opens");
    home.store_mut().transaction(|tx| keys::replace(tx, &old)).expect("room");
    drop(home);
    let secret = &old[old.len() - 60..];
    assert!(is_in_a_file(dir.path(), secret));
    let mut folder = reopened(dir.path());
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert!(!is_in_a_file(dir.path(), secret), "also not while the folder is still open");
    drop(folder);
    let renewed = stored(dir.path());
    assert_ne!(renewed, old);
    lock::unlock(&mut reopened(dir.path()), PASSPHRASE.into()).expect("it is the same passphrase");
    assert_eq!(stored(dir.path()), renewed, "once is enough");
}

#[test]
fn the_passphrase_can_be_changed_and_the_old_form_is_gone() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    drop(clinic(dir.path()));
    let old = stored(dir.path());
    let mut folder = reopened(dir.path());
    assert_eq!(passphrase::change(&mut folder, &PASSPHRASE.into(), &NEW.into()), Err(Failure::ClinicLocked));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!(passphrase::change(&mut folder, &NEW.into(), &NEW.into()), Err(Failure::WrongPassphrase));
    let weak = passphrase::change(&mut folder, &PASSPHRASE.into(), &"            ".into());
    assert_eq!(weak, Err(Failure::GuessablePassphrase));
    assert!(is_in_a_file(dir.path(), &old[old.len() - 60..]), "nothing has changed");
    passphrase::change(&mut folder, &PASSPHRASE.into(), &NEW.into()).expect("a good one");
    assert!(!is_in_a_file(dir.path(), &old[old.len() - 60..]));
    lock::lock(&mut folder);
    assert_eq!(lock::unlock(&mut folder, PASSPHRASE.into()), Err(Failure::WrongPassphrase));
    lock::unlock(&mut folder, NEW.into()).expect("the new one");
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).map(|all| all.lines.len()), Ok(1));
}

#[test]
fn locking_closes_everything_until_the_passphrase_is_typed_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).map(|all| all.lines.len()), Ok(1));
    lock::lock(&mut folder);
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: false }));
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).err(), Some(Failure::ClinicLocked));
    assert_eq!(saved_keys::identity(&folder).err(), Some(Failure::ClinicLocked));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).map(|all| all.lines.len()), Ok(1));
}

fn clocks(ms: i64) -> Clocks {
    Clocks { wall_ms: 1_795_600_000_000 + ms, awake_ms: ms }
}

#[test]
fn an_idle_clinic_locks_after_the_chosen_minutes() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let minute = 60_000;
    let mut watch = IdleWatch::new(clocks(0));
    let mut check = |folder: &mut DataFolder, ms| idle::lock_if_over(folder, &mut watch, clocks(ms));
    assert_eq!(check(&mut folder, 10 * minute - 1), Ok(false), "ten minutes unless others are chosen");
    for never in [0, 1, 60, 255] {
        assert_eq!(idle::choose(&mut folder, never), Err(Failure::OutOfRange { least: 2, most: 30 }), "{never}");
    }
    idle::choose(&mut folder, 30).expect("a choice");
    assert_eq!(check(&mut folder, 30 * minute - 1), Ok(false));
    assert_eq!(check(&mut folder, 30 * minute), Ok(true));
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: false }));
    assert_eq!(check(&mut folder, 40 * minute), Ok(false), "it is locked already");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert!(matches!(lock::state(&folder), Ok(LockState::Open { idle_minutes: 30, .. })), "it is remembered");
    assert_eq!(check(&mut folder, 69 * minute), Ok(false), "the time locked does not count");
    assert_eq!(check(&mut folder, 70 * minute), Ok(true));
}

/// A summary by a patient who took this card.
fn summary(dir: &Path, card: String) -> Vec<u8> {
    let mut folder = DataFolder::open(dir, true).expect("a new folder");
    folder.choose_role(Role::Patient).expect("free to choose");
    let request = TakeCardRequest { source: CardSource::Text(card), agreed: Vec::new() };
    taking::take(&mut folder, &at("11-25T08:40"), &request).expect("a valid card");
    let plan = plans::one(&folder, None).expect("taken").plan().header.id;
    let seal = SealRequest { plan, from: None, until: at("11-25T20:00").now.date(), note: None };
    let out = dir.join("summary.age");
    sealing::seal(&mut folder, &at("11-25T20:00"), &seal, Some(&out)).expect("a day to hand over");
    std::fs::read(out).expect("written")
}

#[test]
fn a_backup_on_a_new_computer_opens_with_saved_keys_and_receives_summaries() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let card = issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let saved = saved_keys::make(&folder, &at("11-25T08:00"), &NEW.into()).expect("a good passphrase").file;
    drop(folder);
    let sealed = summary(&dir.path().join("patient"), card);
    let new = dir.path().join("new-computer");
    std::fs::create_dir(&new).expect("the test owns it");
    std::fs::copy(dir.path().join("clinic/carryover.db"), new.join("carryover.db")).expect("copied");
    let mut folder = DataFolder::open(&new, false).expect("the backup opens");
    saved_keys::recover(&mut folder, None, &saved, &NEW.into()).expect("its own keys");
    let receipts =
        receiving::receive(&mut folder, &at("11-26T08:00"), vec![("summary".into(), Ok(sealed))]).expect("unlocked");
    assert_eq!(receipts[0].outcome, Outcome::New { code: "K17".into(), days: 1 });
    assert!(patients::list(&folder, &at("12-02T08:00")).expect("unlocked").lines[0].plan.is_some(), "its cards open");
}

#[test]
fn saved_keys_set_the_same_clinic_up_again() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let weak = saved_keys::make(&folder, &at("11-25T08:00"), &"            ".into());
    assert_eq!(weak.err(), Some(Failure::GuessablePassphrase));
    let saved = saved_keys::make(&folder, &at("11-25T08:00"), &NEW.into()).expect("a good passphrase");
    let LockState::Open { fingerprint, .. } = lock::state(&folder).expect("readable") else { panic!("it is unlocked") };
    for part in ["Linden Lane Practice", &fingerprint, "<svg", "BEGIN AGE ENCRYPTED FILE"] {
        assert!(saved.sheet.contains(part), "{part}");
    }
    assert!(!saved.sheet.contains("AGE-SECRET-KEY"));
    let plain = saved_keys::plain_sheet(&folder, &at("11-25T08:00")).expect("unlocked");
    assert!(plain.contains("AGE-SECRET-KEY-1"));
    let text = saved.sheet.split_once("<pre>").and_then(|(_, rest)| rest.split_once("</pre>")).expect("the text").0;
    let picture = pictures::qr::Code::of(text).expect("it fits").png(8);
    for (nth, kept) in [saved.file.as_slice(), text.as_bytes(), &picture].into_iter().enumerate() {
        let mut other = DataFolder::open(&dir.path().join(format!("other-{nth}")), true).expect("a new folder");
        let mut start = |typed: &str, kept: &[u8]| {
            lock::start_with_saved_keys(&mut other, "Linden Lane Practice", None, typed.into(), kept)
        };
        assert_eq!(start(PASSPHRASE, kept), Err(Failure::WrongPassphrase));
        assert_eq!(start(NEW, b"a shopping list"), Err(Failure::NotSavedKeys));
        start(NEW, kept).expect("the passphrase of the saved keys");
        let state = lock::state(&other).expect("readable");
        assert!(matches!(state, LockState::Open { fingerprint: ref same, .. } if *same == fingerprint), "{nth}");
    }
}

#[test]
fn saved_keys_replace_a_forgotten_passphrase_of_their_own_clinic_alone() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let folder = clinic(dir.path());
    let saved = saved_keys::make(&folder, &at("11-25T08:00"), &NEW.into()).expect("a good passphrase").file;
    drop(folder);
    let elsewhere = tempfile::tempdir().expect("a temporary folder");
    let foreign = saved_keys::make(&clinic(elsewhere.path()), &at("11-25T08:00"), &NEW.into()).expect("keys").file;
    let mut folder = reopened(dir.path());
    assert_eq!(saved_keys::recover(&mut folder, None, &foreign, &NEW.into()), Err(Failure::OtherClinicsKeys));
    assert_eq!(saved_keys::recover(&mut folder, None, &saved, &PASSPHRASE.into()), Err(Failure::WrongPassphrase));
    assert_eq!(lock::state(&folder), Ok(LockState::Locked { several: false }), "a refusal changes nothing");
    saved_keys::recover(&mut folder, None, &saved, &NEW.into()).expect("its own keys");
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).map(|all| all.lines.len()), Ok(1));
    drop(folder);
    let mut folder = reopened(dir.path());
    assert_eq!(lock::unlock(&mut folder, PASSPHRASE.into()), Err(Failure::WrongPassphrase));
    lock::unlock(&mut folder, NEW.into()).expect("the passphrase of the saved keys");
}
