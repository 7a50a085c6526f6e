//! The clinic's store from a backup, from what could be read of a damaged database, and with saved keys: the manifest says what is missing,
//! and complains of nothing else.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use crate::receiving::unlocked;
use crate::sealed_rows::{copy, database, full, keep_draft, of_first_sealing};
use actions::clinic::{lock, norms, patients, reviewing, saved_keys};
use actions::{DataFolder, backup, platform};
use std::path::{Path, PathBuf};
use wire::Failure;
use wire::app::BackupSource;
use wire::clinic::{AddPatientRequest, RemovePatientRequest, StoreNotice};

const NEW: &str = "eight brown wrens in a kettle";
const PAGE: usize = 4096;

/// The codes of all patients, in order. The list itself has those first of whom there is news.
fn codes(folder: &DataFolder) -> Vec<String> {
    let lines = patients::list(folder, &at("12-02T08:00")).expect("unlocked").lines;
    let mut codes: Vec<String> = lines.into_iter().map(|line| line.code).collect();
    codes.sort();
    codes
}

fn add(folder: &mut DataFolder, code: &str) {
    patients::add(folder, &at("11-25T08:00"), &AddPatientRequest { code: code.into(), name: None }).expect("a new code");
}

#[test]
fn a_backup_that_was_restored_opens_without_complaint() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let mut folder = unlocked(dir.path());
    let file = dir.path().join("backup.db");
    backup::save(&folder, &at("11-28T08:00"), Some(&file)).expect("room");
    keep_draft(&mut folder, "K17", "11-29T08:00");
    patients::remove(&mut folder, "K18", "K18").expect("confirmed");
    norms::remove(&mut folder).expect("removed");
    drop(folder);
    let (mut folder, _) = backup::restore(&dir.path().join("clinic"), &file, &at("11-30T08:00"), None).expect("a backup");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!(patients::notices(&folder), Ok(Vec::new()));
    assert_eq!(codes(&folder), ["K17", "K18"]);
}

#[test]
fn an_automatic_backup_that_could_not_be_written_is_told_until_one_is() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let mut folder = unlocked(dir.path());
    let backups = dir.path().join("clinic").join("backups");
    std::fs::write(&backups, "no folder").expect("nothing is there yet");
    let failure = backup::daily(&mut folder, &at("11-28T08:00")).expect_err("its folder cannot be made");
    let told = backup::show(&folder, &at("11-28T09:00")).expect("told with its reason");
    assert_eq!((told.last, told.fault), (None, Some(failure)));
    std::fs::remove_file(&backups).expect("there");
    backup::daily(&mut folder, &at("11-28T10:00")).expect("room");
    let told = backup::show(&folder, &at("11-28T11:00")).expect("readable");
    assert_eq!((told.last.map(|(day, _)| day.to_string()), told.fault), (Some("2026-11-28".into()), None));
}

/// The bytes of each file in the data folder and its folder of backups, by name.
fn files(home: &Path) -> Vec<(String, Vec<u8>)> {
    let in_folder = |dir: &Path| -> Vec<PathBuf> {
        std::fs::read_dir(dir).into_iter().flatten().map(|found| found.expect("a name").path()).collect()
    };
    let all = in_folder(home).into_iter().chain(in_folder(&home.join("backups"))).filter(|path| path.is_file());
    all.map(|path| (path.display().to_string(), std::fs::read(&path).expect("readable"))).collect()
}

#[test]
fn a_backup_that_is_chosen_in_the_window_is_restored_from_its_day_or_its_bytes() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let home = dir.path().join("clinic");
    let mut folder = unlocked(dir.path());
    backup::daily(&mut folder, &at("11-28T08:00")).expect("room");
    let file = dir.path().join("backup.db");
    backup::save(&folder, &at("11-28T08:00"), Some(&file)).expect("room");
    add(&mut folder, "K99");
    drop(folder);
    let days = backup::days_in(&home).expect("readable");
    assert_eq!(days.iter().map(ToString::to_string).collect::<Vec<_>>(), ["2026-11-28"]);
    let bytes = |bytes: Vec<u8>| BackupSource::File { name: "mine.db".into(), bytes: platform::to_base64(&bytes) };
    let chosen = [BackupSource::Day(days[0]), bytes(std::fs::read(&file).expect("there"))];
    for chosen in chosen {
        let (mut folder, restored) = backup::restore_chosen(&home, &chosen, &at("11-30T08:00"), None).expect("a backup");
        assert!(restored.before.is_some_and(|before| Path::new(&before).exists()), "what was there is kept");
        lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
        assert_eq!(codes(&folder), ["K17", "K18"]);
        add(&mut folder, "K99");
    }
    let before = files(&home);
    for foreign in [b"no database".to_vec(), Vec::new(), std::fs::read(&file).expect("there")[..8000].to_vec()] {
        let refused = backup::restore_chosen(&home, &bytes(foreign), &at("11-30T08:00"), None).err();
        assert_eq!(refused, Some(Failure::NotABackup { file: "mine.db".into() }));
    }
    assert_eq!(files(&home), before, "a file that is no backup changes nothing and leaves nothing");
}

#[test]
fn a_patient_who_is_removed_with_the_backups_is_in_no_copy_of_the_data_folder() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let home = dir.path().join("clinic");
    let mut folder = unlocked(dir.path());
    backup::daily(&mut folder, &at("11-27T08:00")).expect("room");
    drop(folder);
    let day = BackupSource::Day("2026-11-27".parse().expect("a day"));
    let (mut folder, _) = backup::restore_chosen(&home, &day, &at("11-28T08:00"), None).expect("a backup");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    let request = |typed: &str| RemovePatientRequest { code: "K18".into(), typed: typed.into(), also_backups: true };
    let refused = patients::remove_from_window(&mut folder, &at("11-28T09:00"), &request("K17"));
    assert_eq!(refused, Err(Failure::RemovalNotConfirmed { code: "K18".into() }));
    let copies = |home: &Path| files(home).len();
    let before = copies(&home);
    patients::remove_from_window(&mut folder, &at("11-28T09:00"), &request("k18")).expect("confirmed");
    assert!(copies(&home) < before, "older copies are gone");
    assert_eq!(backup::days_in(&home).map(|days| days.len()), Ok(1));
    drop(folder);
    // The only copy that is left, and the data themselves, have K17 alone.
    let today = BackupSource::Day("2026-11-28".parse().expect("a day"));
    let (mut folder, _) = backup::restore_chosen(&home, &today, &at("11-28T10:00"), None).expect("a backup");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!((codes(&folder), patients::notices(&folder)), (vec!["K17".to_owned()], Ok(Vec::new())));
}

/// What is saved of the clinic's folder once the first page of `table`, which holds its rows or leads to them, is lost.
fn salvaged(dir: &Path, table: &str) -> (PathBuf, DataFolder) {
    let place = copy(dir, table);
    let file = place.join("clinic").join("carryover.db");
    let connection = database(&place);
    connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).expect("free");
    let root = connection.query_row("SELECT rootpage FROM sqlite_schema WHERE name = ?1", [table], |row| row.get(0));
    let root: u32 = root.expect("there");
    drop(connection);
    let mut bytes = std::fs::read(&file).expect("there");
    bytes[(root as usize - 1) * PAGE..root as usize * PAGE].fill(0);
    std::fs::write(&file, bytes).expect("written");
    let (folder, _) = backup::salvage(&place.join("clinic"), &at("11-30T08:00"), None).expect("the rest can be read");
    (place, folder)
}

#[test]
fn what_a_damaged_database_has_lost_is_named_and_the_rest_opens() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    // Table, rows that are missing, the codes of whom, and of whom the list still is.
    type Case = (&'static str, u32, &'static [&'static str], &'static [&'static str]);
    let both: &[&str] = &["K17", "K18"];
    let cases: [Case; 5] = [
        ("issued", 3, both, both),
        ("received", 2, both, both),
        ("device", 2, both, both),
        ("norms", 1, &[], both),
        // Cards, summaries and drafts without their patient are lost with them.
        ("patient", 11, &[], &[]),
    ];
    for (table, rows, named, listed) in cases {
        let (place, mut folder) = salvaged(dir.path(), table);
        lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
        let named: Vec<String> = named.iter().map(|code| (*code).to_owned()).collect();
        let lost = StoreNotice::ChangedOutside { rows, codes: named };
        assert_eq!(patients::notices(&folder).as_deref(), Ok(&[lost.clone()][..]), "{table}");
        assert_eq!(codes(&folder), listed, "{table}");
        add(&mut folder, "K19");
        drop(folder);
        let folder = unlocked(&place);
        assert_eq!(patients::notices(&folder), Ok(vec![lost]), "{table}: nobody who came later is named");
        assert!(reviewing::page(&folder, &at("11-30T08:00"), "K19").is_ok(), "{table}");
    }
    let (_, mut folder) = salvaged(dir.path(), "manifest");
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert_eq!(patients::notices(&folder), Ok(vec![StoreNotice::ManifestChanged]));
    assert_eq!(codes(&folder), both);
}

#[test]
fn saved_keys_open_what_was_saved_of_a_database_that_lost_its_keys() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let saved = saved_keys::make(&unlocked(dir.path()), &at("11-28T08:00"), &NEW.into()).expect("a good passphrase").file;
    let (place, mut folder) = salvaged(dir.path(), "keys");
    lock::start_with_saved_keys(&mut folder, "Linden Lane Practice", None, NEW.into(), &saved).expect("no keys are there");
    assert_eq!((patients::notices(&folder), codes(&folder).len()), (Ok(Vec::new()), 2));
    add(&mut folder, "K19");
    drop(folder);
    let mut folder = DataFolder::open(&place.join("clinic"), false).expect("the folder opens");
    lock::unlock(&mut folder, NEW.into()).expect("the passphrase of the saved keys");
    assert_eq!((patients::notices(&folder), codes(&folder).len()), (Ok(Vec::new()), 3));
}

#[test]
fn a_clinic_that_is_set_up_with_saved_keys_has_a_manifest() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    let saved = saved_keys::make(&folder, &at("11-25T08:00"), &NEW.into()).expect("a good passphrase").file;
    let again = dir.path().join("again");
    let mut folder = DataFolder::open(&again, true).expect("a new folder");
    lock::start_with_saved_keys(&mut folder, "Linden Lane Practice", None, NEW.into(), &saved).expect("its own keys");
    drop(folder);
    let connection = rusqlite::Connection::open(again.join("carryover.db")).expect("a database");
    let manifests = connection.query_row("SELECT count(*) FROM manifest", [], |row| row.get::<_, u32>(0));
    assert_eq!(manifests.expect("readable"), 1);
}

#[test]
fn saved_keys_recover_a_store_of_the_first_sealing() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    of_first_sealing(dir.path());
    let saved = saved_keys::make(&unlocked(dir.path()), &at("11-28T08:00"), &NEW.into()).expect("a good passphrase").file;
    let foreign = tempfile::tempdir().expect("a temporary folder");
    let others = saved_keys::make(&clinic(foreign.path()), &at("11-28T08:00"), &NEW.into()).expect("keys").file;
    of_first_sealing(dir.path());
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder opens");
    assert_eq!(saved_keys::recover(&mut folder, None, &others, &NEW.into()), Err(Failure::OtherClinicsKeys));
    saved_keys::recover(&mut folder, None, &saved, &NEW.into()).expect("its own keys");
    assert_eq!((patients::notices(&folder), codes(&folder).len()), (Ok(Vec::new()), 2));
    assert!(reviewing::page(&folder, &at("11-28T08:00"), "K17").is_ok_and(|page| page.review.is_some()));
}

#[test]
fn what_was_found_is_dropped_with_the_keys() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    issue(&mut folder, &at("11-25T08:00"), example(), &dir.path().join("card"));
    drop(folder);
    database(dir.path()).execute_batch("DELETE FROM issued").expect("allowed");
    let mut folder = unlocked(dir.path());
    assert!(matches!(patients::notices(&folder).as_deref(), Ok([StoreNotice::ChangedOutside { rows: 1, .. }])));
    lock::lock(&mut folder);
    assert_eq!(patients::notices(&folder), Err(Failure::ClinicLocked));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert!(
        matches!(patients::notices(&folder).as_deref(), Ok([StoreNotice::ChangedOutside { rows: 1, .. }])),
        "found anew"
    );
}
