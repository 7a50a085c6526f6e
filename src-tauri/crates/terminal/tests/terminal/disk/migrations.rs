//! Databases of every former schema: upgraded with all that is in them or, if that is interrupted at any call, not at all.

use super::calls::{How, Run};
use super::held::{Held, Rows, held, rows};
use super::replay::calls;
use crate::place::Place;
use std::fs;
use std::path::{Path, PathBuf};
use store::LATEST;

const NOW: [&str; 4] = ["--home", "old", "patient", "now"];

fn sample(version: u32) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../store/tests/samples/v{version}.db"))
}

/// A place with the sample of a version as a data folder.
fn place(version: u32) -> Place {
    let place = Place::empty();
    fs::create_dir(place.path("old")).expect("the test owns it");
    fs::copy(sample(version), place.path("old/carryover.db")).expect("one sample a version");
    place
}

/// The rows of a copy of the database with its log, so that reading changes nothing.
fn as_it_is(place: &Place) -> Rows {
    let dir = tempfile::tempdir().expect("a temporary folder");
    for ending in ["", "-wal", "-journal"] {
        let from = place.path(&format!("old/carryover.db{ending}"));
        if from.exists() {
            fs::copy(from, dir.path().join(format!("carryover.db{ending}"))).expect("copied");
        }
    }
    rows(&dir.path().join("carryover.db")).expect("sound")
}

fn upgraded(place: &Place) -> Rows {
    match held(&place.path("old")) {
        Ok(Held::Rows(rows)) => rows,
        other => panic!("{other:?}"),
    }
}

#[test]
fn an_upgrade_keeps_every_row_and_adds_none() {
    for version in 1..LATEST {
        let place = place(version);
        let before = as_it_is(&place);
        let after = upgraded(&place);
        assert!(
            before["entry"].len() > 2 && before.keys().len() < after.keys().len(),
            "version {version}: the sample is an older one"
        );
        for (table, rows) in &after {
            let Some(were) = before.get(table) else {
                assert!(rows.is_empty(), "version {version}: {table} is new");
                continue;
            };
            assert_eq!(rows.len(), were.len(), "version {version}: {table}");
            for (row, was) in rows.iter().zip(were) {
                assert_eq!(row[..was.len()], was[..], "version {version}: {table}");
            }
        }
        assert!(before.keys().all(|table| after.contains_key(table)), "version {version}");
    }
}

/// The command itself may refuse what is in a sample; the database is upgraded before.
#[test]
fn an_interrupted_upgrade_leaves_the_old_schema_or_the_new_one() {
    let step = if std::env::var_os("DISK_ALL").is_some() { 1 } else { 11 };
    let mut count = 0;
    for version in 1..LATEST {
        let whole = place(version);
        let old = as_it_is(&whole);
        let log = tempfile::NamedTempFile::new().expect("a file");
        Run { arguments: &NOW, remembers: false, disturbance: None, log: Some(log.path()) }.in_place(&whole);
        let new = as_it_is(&whole);
        let calls = calls(&fs::read(log.path()).expect("the log")).len();
        assert!(calls > 10 && new == upgraded(&place(version)), "version {version}: the command upgrades");
        for call in (1 + version as usize..=calls).step_by(step) {
            for how in [How::Before, How::Half, How::Eio, How::Enospc]
                .into_iter()
                .skip(if step == 1 { 0 } else { call % 4 })
                .step_by(step)
            {
                let place = place(version);
                let said =
                    Run { arguments: &NOW, remembers: false, disturbance: Some((call, how)), log: None }.in_place(&place);
                assert!(!said.err.contains("panicked"), "version {version}, call {call}, {how:?}: {said:?}");
                let left = as_it_is(&place);
                assert!(left == old || left == new, "version {version}, call {call}, {how:?}: between the two: {said:?}");
                assert_eq!(upgraded(&place), new, "version {version}, call {call}, {how:?}: at the next start");
                count += 1;
            }
        }
    }
    println!("{count} interrupted upgrades");
}
