//! What can be read of a damaged database is saved, row by row, and the damaged file is kept as it was.

mod support;

use std::fs;
use std::path::Path;
use store::table::{entry, issued, patient, setting};
use store::{Home, Salvaged, StoreError};
use support::{append, database, payload, place};

const PAGE: usize = 4096;

#[test]
fn child() {
    support::act();
}

/// A log of 600 entries on many pages, and the clinic's rows beside it.
fn filled(home: &Path) {
    let mut open = Home::open(home, true).expect("a new folder");
    for _ in 0..600 {
        append(&mut open).expect("room");
    }
    for n in 0..20 {
        let id = open.store_mut().transaction(|tx| patient::insert(tx, |_| Ok::<_, StoreError>(vec![7; 2_000])));
        let id = id.expect("room");
        let card = |tx: &store::Tx<'_>| issued::insert(tx, id, 1, |_| Ok::<_, StoreError>(vec![n; 1_500]));
        open.store_mut().transaction(card).expect("room");
    }
}

fn saved(salvaged: &Salvaged, table: &str) -> (u64, u64) {
    let found = salvaged.tables.iter().find(|one| one.name == table);
    found.map_or((0, 0), |one| (one.saved, one.lost))
}

/// Salvages the folder, and checks that every entry that is there is complete, and that the damaged file is kept.
#[track_caller]
fn salvaged(home: &Path) -> (Home, Salvaged) {
    let damaged = fs::read(database(home)).expect("there");
    let (open, salvaged) = Home::salvage(home, "a day", None).expect("something can be read");
    assert_eq!(fs::read(&salvaged.kept).expect("kept"), damaged);
    let entries = open.store().read(entry::all).expect("readable");
    for entry in &entries {
        assert_eq!(entry.payload, payload(entry.n), "an entry is complete or not there");
    }
    assert_eq!(saved(&salvaged, "entry").0, entries.len() as u64);
    (open, salvaged)
}

#[test]
fn what_is_whole_is_saved_without_a_loss() {
    let (_dir, home) = place();
    filled(&home);
    let (open, report) = salvaged(&home);
    assert!(report.tables.iter().all(|table| table.is_whole && table.lost == 0), "{report:?}");
    assert_eq!((saved(&report, "entry"), saved(&report, "patient"), saved(&report, "issued")), ((600, 0), (20, 0), (20, 0)));
    assert_eq!(open.store().read(|view| setting::get(view, "last")), Ok::<_, StoreError>(Some("600".into())));
}

/// Every fifth page in turn, once with zeros and once with noise.
#[test]
fn of_a_page_that_is_lost_the_others_are_saved() {
    let (_dir, whole) = place();
    filled(&whole);
    let bytes = fs::read(database(&whole)).expect("closed in order");
    let pages = bytes.len() / PAGE;
    assert!(pages > 40, "{pages}");
    let noise = |at: usize| (at.wrapping_mul(2_654_435_761) >> 7) as u8;
    let mut losses = 0;
    for (round, page) in (1..pages).step_by(5).enumerate() {
        let (_dir, home) = place();
        fs::create_dir(&home).expect("the test owns it");
        let mut damaged = bytes.clone();
        for (at, byte) in damaged[page * PAGE..(page + 1) * PAGE].iter_mut().enumerate() {
            *byte = if round % 2 == 0 { 0 } else { noise(page * PAGE + at) };
        }
        fs::write(database(&home), &damaged).expect("the test owns it");
        let (mut open, report) = salvaged(&home);
        let (kept, lost) = saved(&report, "entry");
        assert!(kept > 450, "page {page}: {report:?}");
        losses += u64::from(kept < 600);
        assert!(kept + lost >= 600 - 60, "page {page}: {report:?}");
        append(&mut open).expect("and it goes on");
    }
    assert!(losses > 0, "some pages had entries");
}

#[test]
fn of_a_file_that_was_cut_the_beginning_is_saved() {
    for (part, of) in [(2, 3), (3, 5), (7, 9)] {
        let (_dir, home) = place();
        filled(&home);
        let bytes = fs::read(database(&home)).expect("closed in order");
        fs::write(database(&home), &bytes[..bytes.len() * part / of]).expect("the test owns it");
        let (_open, report) = salvaged(&home);
        assert!(saved(&report, "entry").0 > 200, "{report:?}");
    }
}

/// The root page of a table, which holds its only rows as long as they are few.
fn without_the_page_of(home: &Path, table: &str) {
    let root = |connection: rusqlite::Connection| {
        let root = connection.query_row("SELECT rootpage FROM sqlite_schema WHERE name = ?1", [table], |row| row.get(0));
        root.map(|root: u32| root as usize).expect("there")
    };
    let page = root(rusqlite::Connection::open(database(home)).expect("whole"));
    let mut bytes = fs::read(database(home)).expect("closed in order");
    bytes[(page - 1) * PAGE..page * PAGE].fill(0);
    fs::write(database(home), bytes).expect("the test owns it");
}

#[test]
fn a_row_that_comes_later_never_gets_the_number_of_a_lost_one() {
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    let add = |open: &mut Home| {
        let added = open.store_mut().transaction(|tx| patient::insert(tx, |_| Ok::<_, StoreError>(vec![7; 20])));
        added.expect("room")
    };
    assert_eq!([add(&mut open), add(&mut open)], [1, 2]);
    drop(open);
    without_the_page_of(&home, "patient");
    let (mut open, report) = salvaged(&home);
    assert_eq!(saved(&report, "patient"), (0, 0));
    assert_eq!(add(&mut open), 3);
}

#[test]
fn a_lost_log_loses_what_was_in_it_alone() {
    let (dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    append(&mut open).expect("room");
    open.store().settle().expect("free");
    append(&mut open).expect("room");
    let copied = dir.path().join("copied");
    fs::create_dir(&copied).expect("the test owns it");
    fs::copy(database(&home), database(&copied)).expect("copied without its log");
    let (_open, report) = salvaged(&copied);
    assert_eq!(saved(&report, "entry"), (1, 0));
}

#[test]
fn without_the_first_page_nothing_can_be_saved_and_nothing_is_lost() {
    let (_dir, home) = place();
    filled(&home);
    let mut bytes = fs::read(database(&home)).expect("closed in order");
    bytes[..PAGE].fill(0xA5);
    fs::write(database(&home), &bytes).expect("the test owns it");
    let error = Home::salvage(&home, "a day", None).expect_err("nothing can be read");
    assert!(matches!(error, StoreError::Damaged { .. }), "{error:?}");
    assert_eq!(fs::read(database(&home)).expect("there"), bytes);
}
