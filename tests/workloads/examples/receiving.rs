//! `receiving FILES PATIENTS [TIMES]` receives so many summaries from a folder at a clinic with so many patients, and compares it with
//! what cannot be done without: opening the same files with the age library, and inserting rows of the same size with plain SQLite, as
//! durably, in transactions of as many rows. Prints the best of several times, each time one after the other; the goal is at most 1.5 times.
//!
//! The summaries are a week's each, of an exercise each hour and two others; a patient's are spread over the folder.

use actions::DataFolder;
use actions::clinic::{lock, patients, receiving};
use clinic::{PASSPHRASE, evening, fill, keys, log_of, plan_of};
use exercises::summary::Summary;
use receiving::{Listing, MAX_BATCH, by_name};
use rusqlite::Connection;
use std::io::Read;
use std::path::{Path, PathBuf};
use std::time::Instant;
use store::Home;
use wire::receiving::Outcome;
use workloads::Years;

mod clinic;

fn main() {
    let asked: Vec<usize> = std::env::args().skip(1).filter_map(|number| number.parse().ok()).collect();
    let [files, people, times @ ..] = asked.as_slice() else { panic!("receiving FILES PATIENTS [TIMES]") };
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (home, folder) = (dir.path().join("clinic"), dir.path().join("summaries"));
    let identity = prepare(&home, &folder, *files, *people);
    let mut best = [f64::INFINITY; 3];
    for time in 0..times.first().copied().unwrap_or(3) {
        let place = |name: &str| dir.path().join(format!("{name}-{time}"));
        copy(&home, &place("clinic"));
        let took = [
            baseline(&folder, &identity, &place("plain")),
            ours(&place("clinic"), &folder, *files),
            again(&place("clinic"), &folder),
        ];
        best.iter_mut().zip(took).for_each(|(best, took)| *best = best.min(took));
    }
    println!("{files} summaries, {people} patients; best of all times, in ms");
    println!("{:<34} {:>9.0}", "age and plain SQLite", best[0]);
    println!("{:<34} {:>9.0}  {:.2} times; goal: at most 1.5", "receiving", best[1], best[1] / best[0]);
    println!("{:<34} {:>9.0}", "receiving the same again", best[2]);
    println!("{:<34} {:>9}", "most memory of this program, MiB", most_memory());
}

/// Makes the clinic, and the files. Returns the clinic's identity as age reads it.
fn prepare(home: &Path, folder: &Path, files: usize, people: usize) -> String {
    let years = Years::new();
    let weeks = years.weekly();
    let mut clinic = DataFolder::open(home, true).expect("a new folder");
    lock::start(&mut clinic, "Linden Lane Practice", None, PASSPHRASE.into()).expect("new keys");
    drop(clinic);
    fill(home, people, &years.plans().values().take(1).collect::<Vec<_>>(), &[]);
    let keys = keys(&Home::open(home, false).expect("the folder opens"));
    std::fs::create_dir(folder).expect("a new folder");
    for file in 0..files {
        let (week, patient) = (file / people, file % people);
        let plan = plan_of(patient);
        let summary = Summary { plan, log: log_of(patient), ..weeks[week].clone() };
        let secret = vault::card::pairing_secret(&keys, plan, 1);
        let sealed = vault::summary::seal(&summary, &secret, &keys.recipient()).expect("sealed");
        std::fs::write(folder.join(format!("summary-{file:05}.age")), sealed).expect("written");
    }
    keys.identity_string().expose_the_identity_for_printing().to_owned()
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir(to).expect("a new folder");
    for file in std::fs::read_dir(from).expect("the folder").flatten().filter(|file| file.path().is_file()) {
        std::fs::copy(file.path(), to.join(file.file_name())).expect("copied");
    }
}

fn ms(begun: Instant) -> f64 {
    begun.elapsed().as_secs_f64() * 1000.0
}

/// Opens each file with age, and inserts what it holds.
fn baseline(folder: &Path, identity: &str, database: &Path) -> f64 {
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder).expect("the folder").flatten().map(|file| file.path()).collect();
    files.sort();
    let identity: age::x25519::Identity = identity.parse().expect("an identity");
    let connection = Connection::open(database).expect("a new database");
    let set_up = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA fullfsync = ON;
        CREATE TABLE received (id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, patient INTEGER NOT NULL, log BLOB NOT NULL,
        counter INTEGER NOT NULL, sealed BLOB NOT NULL, UNIQUE (patient, log, counter)) STRICT;";
    connection.execute_batch(set_up).expect("a new table");
    let begun = Instant::now();
    for (batch, files) in files.chunks(MAX_BATCH).enumerate() {
        connection.execute_batch("BEGIN IMMEDIATE").expect("begun");
        for (place, file) in files.iter().enumerate() {
            let sealed = std::fs::read(file).expect("readable");
            let mut plain = Vec::new();
            let decryptor = age::Decryptor::new_buffered(sealed.as_slice()).expect("an age file");
            let mut reader = decryptor.decrypt(std::iter::once(&identity as &dyn age::Identity)).expect("ours");
            reader.read_to_end(&mut plain).expect("whole");
            let mut insert = connection
                .prepare_cached("INSERT INTO received (patient, log, counter, sealed) VALUES (?1, ?2, ?3, ?4)")
                .expect("a statement");
            let row = batch * MAX_BATCH + place;
            insert.execute((row as i64, &plain[14..22], row as i64, &plain)).expect("inserted");
        }
        connection.execute_batch("COMMIT").expect("kept");
    }
    ms(begun)
}

/// Receives the folder, all of whose summaries are new.
fn ours(home: &Path, folder: &Path, files: usize) -> f64 {
    let mut clinic = unlocked(home);
    let begun = Instant::now();
    let new = receive(&mut clinic, folder, |outcome| matches!(outcome, Outcome::New { .. }));
    let took = ms(begun);
    assert_eq!(new, files);
    lock::lock(&mut clinic);
    lock::unlock(&mut clinic, PASSPHRASE.into()).expect("the passphrase");
    let list = patients::list(&clinic, &evening()).expect("unlocked");
    assert!(list.notices.is_empty() && list.lines.iter().all(|line| !line.damaged), "{:?}", list.notices);
    took
}

/// Receives the folder again, with nothing new in it.
fn again(home: &Path, folder: &Path) -> f64 {
    let mut clinic = unlocked(home);
    let begun = Instant::now();
    receive(&mut clinic, folder, |outcome| matches!(outcome, Outcome::Known { .. }));
    ms(begun)
}

fn unlocked(home: &Path) -> DataFolder {
    let mut clinic = DataFolder::open(home, false).expect("the folder opens");
    lock::unlock(&mut clinic, PASSPHRASE.into()).expect("the passphrase");
    clinic
}

/// Receives the folder; every outcome must be as expected. Returns how many there were.
fn receive(clinic: &mut DataFolder, folder: &Path, expected: impl Fn(&Outcome) -> bool) -> usize {
    let listing = Listing::of([folder], by_name).expect("not too many");
    let mut number = 0;
    let received = receiving::receive_each(clinic, &evening(), listing.read(), |receipts| {
        number += receipts.len();
        receipts.iter().for_each(|receipt| assert!(expected(&receipt.outcome), "{receipt:?}"));
        true
    });
    received.expect("unlocked");
    number
}

/// The most memory that this program had at once, where the system says it.
fn most_memory() -> String {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kib = line.and_then(|line| line.trim().split(' ').next()?.parse::<u64>().ok());
    kib.map_or_else(|| "unknown".to_owned(), |kib| (kib / 1024).to_string())
}
