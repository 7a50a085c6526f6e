//! The rows of the clinic's store: what is changed from outside is found, and nothing of it is shown as somebody else's.

use crate::people::{PASSPHRASE, at, example, issue};
use crate::receiving::{K17, K18, receive, summary, two_patients, unlocked};
use actions::DataFolder;
use actions::clinic::{devices, drafting, lock, norms, patients, reviewing};
use rusqlite::Connection;
use rusqlite::types::Value;
use std::path::{Path, PathBuf};
use wire::Failure;
use wire::clinic::{AskKeep, StoreNotice};
use wire::receiving::Outcome;

/// A clinic with two patients, who have cards, summaries, devices and drafts; the first one has a second card.
pub fn full(dir: &Path) {
    let cards = two_patients(dir);
    let mut folder = unlocked(dir);
    for (name, card) in [("a", &cards[0]), ("b", &cards[1])] {
        let outcome = receive(&mut folder, &summary(&dir.join(name), card));
        assert!(matches!(outcome, Outcome::New { .. }), "{outcome:?}");
    }
    issue(&mut folder, &at("11-26T08:00"), example(), &dir.join("K17-2"));
    ["K17", "K18"].into_iter().for_each(|code| keep_draft(&mut folder, code, "11-27T08:00"));
    norms::save(&mut folder, "norms.toml", format::norms_file::EXAMPLE.as_bytes()).expect("the example");
    assert_eq!(patients::notices(&folder), Ok(Vec::new()));
}

pub fn keep_draft(folder: &mut DataFolder, code: &str, when: &str) {
    let draft = drafting::draft(folder, &at(when), code).expect("the last plan carried over");
    let keep = AskKeep {
        code: code.into(),
        draft: draft.draft,
        replaces: draft.replaces,
        unread: draft.unread,
        facts: draft.facts,
    };
    drafting::keep(folder, &at(when), keep).expect("kept");
}

/// A copy of the clinic's folder, to be changed.
pub fn copy(dir: &Path, name: &str) -> PathBuf {
    let (from, to) = (dir.join("clinic"), dir.join(name).join("clinic"));
    std::fs::create_dir_all(&to).expect("a folder");
    for file in std::fs::read_dir(from).expect("the folder") {
        let file = file.expect("a file");
        std::fs::copy(file.path(), to.join(file.file_name())).expect("copied");
    }
    dir.join(name)
}

pub fn database(dir: &Path) -> Connection {
    let connection = Connection::open(dir.join("clinic").join("carryover.db")).expect("a database");
    connection.execute_batch("PRAGMA foreign_keys = OFF").expect("known");
    connection
}

/// The notices when the store is unlocked; the list and everybody's page that is not concerned must open.
fn found(dir: &Path, case: &str) -> Vec<StoreNotice> {
    found_in(&unlocked(dir), case)
}

fn found_in(folder: &DataFolder, case: &str) -> Vec<StoreNotice> {
    let notices = patients::notices(folder).expect("unlocked");
    patients::list(folder, &at("12-02T08:00")).unwrap_or_else(|failure| panic!("{case}: {failure:?}"));
    notices
}

#[track_caller]
fn changed(dir: &Path, case: &str, expected_rows: u32, expected_codes: &[&str]) -> DataFolder {
    let folder = unlocked(dir);
    match found_in(&folder, case).as_slice() {
        [StoreNotice::ChangedOutside { rows, codes }] => {
            let codes: Vec<&str> = codes.iter().map(String::as_str).collect();
            assert_eq!((*rows, codes.as_slice()), (expected_rows, expected_codes), "{case}");
        }
        other => panic!("{case}: {other:?}"),
    }
    folder
}

#[test]
fn a_store_that_only_this_program_wrote_has_nothing_to_be_said_about() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let mut folder = unlocked(dir.path());
    assert_eq!(found_in(&folder, "unlocked again"), []);
    drafting::discard(&mut folder, &at("11-28T08:00"), "K17").expect("discarded");
    norms::remove(&mut folder).expect("removed");
    let device = devices::list(&folder, "K18").expect("one").remove(0).device;
    devices::leave_out(&mut folder, "K18", device, true).expect("known");
    patients::remove(&mut folder, "K17", "k17").expect("confirmed");
    drop(folder);
    assert_eq!(found(dir.path(), "after more changes"), []);
}

#[test]
fn every_plain_column_that_is_exchanged_between_rows_is_found() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let both: &'static [&'static str] = &["K17", "K18"];
    // Table, column, the rows, how many are found, and of whom.
    type Case = (&'static str, &'static str, [i64; 2], u32, &'static [&'static str]);
    let cases: [Case; 10] = [
        ("patient", "id", [K17, K18], 2, &[]),
        ("issued", "id", [1, 2], 2, both),
        ("issued", "patient", [1, 2], 2, both),
        ("issued", "revision", [1, 3], 2, &["K17"]),
        ("received", "id", [1, 2], 2, both),
        ("received", "patient", [1, 2], 2, both),
        ("received", "log", [1, 2], 2, both),
        ("received", "counter", [1, 2], 2, both),
        ("draft", "patient", [K17, K18], 2, both),
        ("device", "patient", [K17, K18], 2, both),
    ];
    for (table, column, rows, number, codes) in cases {
        let case = format!("{table}.{column}");
        let place = copy(dir.path(), &case);
        exchange(&place, table, column, rows);
        let folder = changed(&place, &case, number, codes);
        for code in both {
            // Whatever still opens is this patient's own.
            if let Ok(page) = reviewing::page(&folder, &at("11-28T08:00"), code) {
                assert_eq!(page.code, *code, "{case}");
            }
        }
    }
}

/// Exchanges the values of a column in two rows; where they are alike, both get another one, so that something has changed.
fn exchange(dir: &Path, table: &str, column: &str, rows: [i64; 2]) {
    let connection = database(dir);
    let value = |row: i64| -> Value {
        connection
            .query_row(&format!("SELECT {column} FROM {table} WHERE rowid = ?1"), [row], |row| row.get(0))
            .expect("there")
    };
    let [one, two] = rows.map(value);
    let put = |row: i64, value: &Value| {
        let sql = format!("UPDATE {table} SET {column} = ?2 WHERE rowid = ?1");
        assert_eq!(connection.execute(&sql, (row, value)).expect("allowed"), 1);
    };
    // The rowid moves with an id that is its name.
    let is_id = column == "id" || table == "draft" || table == "device";
    put(rows[1], &if column == "log" { Value::Blob(vec![9]) } else { Value::Integer(99) });
    put(rows[0], &two);
    put(if is_id { 99 } else { rows[1] }, &one);
    if one == two {
        rows.into_iter().for_each(|row| put(row, &Value::Integer(41)));
    }
}

#[test]
fn a_row_that_is_removed_is_found() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let cases: [(&str, u32, &[&str]); 7] = [
        ("DELETE FROM issued WHERE id = 3", 1, &["K17"]),
        ("DELETE FROM received WHERE id = 2", 1, &["K18"]),
        ("DELETE FROM draft WHERE patient = 1", 1, &["K17"]),
        ("DELETE FROM device WHERE patient = 2", 1, &["K18"]),
        ("DELETE FROM norms", 1, &[]),
        ("DELETE FROM patient WHERE id = 2", 1, &[]),
        ("DELETE FROM received; DELETE FROM issued WHERE id = 1", 3, &["K17", "K18"]),
    ];
    for (place, (sql, rows, codes)) in cases.into_iter().enumerate() {
        let place = copy(dir.path(), &place.to_string());
        database(&place).execute_batch(sql).expect("allowed");
        changed(&place, sql, rows, codes);
    }
}

#[test]
fn a_row_that_is_put_back_as_it_was_is_found() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let older: Vec<u8> =
        database(dir.path()).query_row("SELECT sealed FROM draft WHERE patient = 1", [], |row| row.get(0)).expect("there");
    let manifest: Vec<u8> =
        database(dir.path()).query_row("SELECT sealed FROM manifest", [], |row| row.get(0)).expect("there");
    let mut folder = unlocked(dir.path());
    keep_draft(&mut folder, "K17", "11-28T08:00");
    drop(folder);
    let place = copy(dir.path(), "draft");
    database(&place).execute("UPDATE draft SET sealed = ?1 WHERE patient = 1", [&older]).expect("allowed");
    changed(&place, "an older draft", 1, &["K17"]);
    let place = copy(dir.path(), "manifest");
    database(&place).execute("UPDATE manifest SET sealed = ?1", [&manifest]).expect("allowed");
    changed(&place, "an older manifest", 1, &["K17"]);
    for (sql, name) in [("DELETE FROM manifest", "gone"), ("UPDATE manifest SET sealed = x'02'", "damaged")] {
        let place = copy(dir.path(), name);
        database(&place).execute_batch(sql).expect("allowed");
        let mut folder = unlocked(&place);
        assert_eq!(found_in(&folder, name), [StoreNotice::ManifestChanged]);
        drafting::discard(&mut folder, &at("11-28T08:00"), "K17").expect("the store is not closed");
        drop(folder);
        assert_eq!(found(&place, name), [StoreNotice::ManifestChanged], "and it is not forgotten with the next write");
    }
}

/// The store of a clinic as the program before the second sealing wrote it: two patients with a card each, a summary and norms.
pub fn of_first_sealing(dir: &Path) {
    std::fs::create_dir_all(dir.join("clinic")).expect("a folder");
    std::fs::write(dir.join("clinic").join("carryover.db"), include_bytes!("../samples/rows-1.db")).expect("written");
}

fn versions(dir: &Path) -> Vec<u8> {
    let connection = database(dir);
    let tables = ["patient", "issued", "received", "norms"];
    let of = |table: &str| -> Vec<u8> {
        let mut query = connection.prepare(&format!("SELECT sealed FROM {table}")).expect("known");
        let rows = query.query_map([], |row| row.get::<_, Vec<u8>>(0)).expect("readable");
        rows.map(|row| row.expect("readable")[0]).collect()
    };
    tables.into_iter().flat_map(of).collect()
}

#[test]
fn rows_of_the_first_sealing_are_sealed_anew_once_and_refused_afterwards() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    of_first_sealing(dir.path());
    let old: Vec<u8> =
        database(dir.path()).query_row("SELECT sealed FROM issued WHERE id = 1", [], |row| row.get(0)).expect("there");
    assert_eq!(versions(dir.path()), [1; 6]);
    let folder = unlocked(dir.path());
    let page = reviewing::page(&folder, &at("11-28T08:00"), "K17").expect("whole");
    assert!(page.review.is_some() && page.plan.is_some() && norms::load(&folder).expect("whole").is_some());
    let line = devices::list(&folder, "K17").expect("whole").remove(0);
    assert_eq!((line.first_seen, line.summaries), (None, 1), "devices were not noted then");
    drop(folder);
    assert_eq!((versions(dir.path()), found(dir.path(), "sealed anew")), (vec![2; 6], Vec::new()));
    database(dir.path()).execute("UPDATE issued SET sealed = ?1 WHERE id = 1", [&old]).expect("allowed");
    let folder = changed(dir.path(), "a row of the first sealing", 1, &["K17"]);
    let page = reviewing::page(&folder, &at("11-28T08:00"), "K17");
    assert_eq!(page.err(), Some(Failure::RecordDamaged { code: "K17".into() }));
}

/// A sample that is never written again: two patients, one summary, norms, and keys that were renewed once. A clinic has such a file.
#[test]
fn rows_of_the_second_sealing_are_opened_as_they_are() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    std::fs::create_dir_all(dir.path().join("clinic")).expect("a folder");
    std::fs::write(dir.path().join("clinic").join("carryover.db"), include_bytes!("../samples/rows-2.db")).expect("written");
    assert_eq!(versions(dir.path()), [2; 6]);
    assert_eq!(found(dir.path(), "the sample"), Vec::new());
    let folder = unlocked(dir.path());
    let page = reviewing::page(&folder, &at("11-28T08:00"), "K17").expect("whole");
    let covered = page.review.and_then(|review| review.covered).map(|(from, until)| (from.to_string(), until.to_string()));
    assert_eq!(covered, Some(("2026-11-25".to_owned(), "2026-11-26".to_owned())));
    assert_eq!(page.plan.map(|plan| plan.prescription.items.len()), Some(3));
    assert!(norms::load(&folder).expect("whole").is_some());
    let line = devices::list(&folder, "K17").expect("whole").remove(0);
    assert_eq!((line.first_seen.map(|day| day.to_string()), line.summaries), (Some("2026-11-27".to_owned()), 1));
    let keys =
        vault::keys::open(&stored_keys(dir.path()), &vault::Passphrase::new(PASSPHRASE.to_owned())).expect("its keys");
    assert_eq!(keys.former().len(), 1, "the keys from before the renewal");
    drop(folder);
    assert_eq!(versions(dir.path()), [2; 6]);
}

fn stored_keys(dir: &Path) -> Vec<u8> {
    database(dir).query_row("SELECT sealed FROM keys", [], |row| row.get(0)).expect("there")
}

#[test]
fn cards_that_were_exchanged_before_the_second_sealing_are_not_shown_as_somebody_elses() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    of_first_sealing(dir.path());
    database(dir.path()).execute_batch("UPDATE received SET patient = 2").expect("allowed");
    let folder = unlocked(dir.path());
    let page = |code| reviewing::page(&folder, &at("11-28T08:00"), code);
    assert_eq!(page("K18").err(), Some(Failure::RecordDamaged { code: "K18".into() }), "it is about another plan");
    assert!(page("K17").is_ok_and(|page| page.review.is_none()));
}

#[test]
fn an_unlocking_that_fails_to_seal_anew_leaves_the_store_locked_and_as_it_was() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    of_first_sealing(dir.path());
    let mut folder = DataFolder::open(&dir.path().join("clinic"), false).expect("the folder opens");
    assert_eq!(lock::unlock(&mut folder, "seven grey herons".into()), Err(Failure::WrongPassphrase));
    drop(folder);
    assert_eq!(versions(dir.path()), [1; 6]);
    assert_eq!(PASSPHRASE, "seven grey herons wade", "the sample's passphrase");
}

/// All sealed bytes of a patient.
fn sealed_bytes(dir: &Path, patient: i64) -> Vec<Vec<u8>> {
    let connection = database(dir);
    let all =
        [("patient", "id"), ("issued", "patient"), ("received", "patient"), ("draft", "patient"), ("device", "patient")];
    let of = |(table, column): (&str, &str)| -> Vec<Vec<u8>> {
        let mut query = connection.prepare(&format!("SELECT sealed FROM {table} WHERE {column} = ?1")).expect("known");
        let rows = query.query_map([patient], |row| row.get(0)).expect("readable");
        rows.map(|row| row.expect("readable")).collect()
    };
    all.into_iter().flat_map(of).collect()
}

#[test]
fn nothing_of_a_removed_patient_is_left_in_the_files() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    full(dir.path());
    let (gone, kept) = (sealed_bytes(dir.path(), K18), sealed_bytes(dir.path(), K17));
    assert_eq!((gone.len(), kept.len()), (5, 6));
    let mut folder = unlocked(dir.path());
    keep_draft(&mut folder, "K18", "11-28T08:00");
    assert_eq!(patients::remove(&mut folder, "K18", "K17"), Err(Failure::RemovalNotConfirmed { code: "K18".into() }));
    assert_eq!(patients::list(&folder, &at("12-02T08:00")).expect("unlocked").lines.len(), 2);
    patients::remove(&mut folder, "k18", " k18 ").expect("confirmed");
    let list = patients::list(&folder, &at("12-02T08:00")).expect("unlocked");
    assert_eq!(list.lines.iter().map(|line| line.code.as_str()).collect::<Vec<_>>(), ["K17"]);
    let files = ["carryover.db", "carryover.db-wal"].map(|name| std::fs::read(dir.path().join("clinic").join(name)));
    let bytes: Vec<u8> = files.into_iter().flat_map(|file| file.unwrap_or_default()).collect();
    // A row may lie in several pages, so its beginning is looked for, which holds version and nonce.
    let has = |row: &Vec<u8>| bytes.windows(24).any(|window| window == &row[..24]);
    assert!(kept.iter().all(has), "the others are there");
    assert!(!gone.iter().any(has), "and nothing of the removed one");
    drop(folder);
    assert_eq!(found(dir.path(), "removed"), []);
}
