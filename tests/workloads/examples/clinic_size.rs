//! `clinic_size PATIENTS` makes a clinic's store with so many patients of two years each, a card a quarter and a summary a week, and
//! prints how long unlocking, the list, a review and receiving a summary take.
//!
//! The list must show all of them undamaged and nothing changed from outside, or the program ends.

use actions::clinic::{lock, patients, receiving, reviewing};
use actions::{DataFolder, Moment};
use clinic::{PASSPHRASE, evening, fill, keys, log_of, plan_of};
use exercises::summary::Summary;
use std::path::Path;
use std::time::Instant;
use store::Home;
use wire::receiving::Outcome;
use workloads::Years;

mod clinic;

fn main() {
    let number = std::env::args().nth(1).and_then(|number| number.parse().ok()).unwrap_or(100);
    let years = Years::new();
    let mut weeks = years.weekly();
    let last = weeks.pop().expect("two years have weeks");
    let dir = tempfile::tempdir().expect("a temporary folder");
    let dir = dir.path().join("clinic");
    let mut folder = DataFolder::open(&dir, true).expect("a new folder");
    lock::start(&mut folder, "Linden Lane Practice", None, PASSPHRASE.into()).expect("new keys");
    drop(folder);
    fill(&dir, number, years.plans().values().collect::<Vec<_>>().as_slice(), &weeks);
    measure(&dir, number, &last);
}

/// Does `work`, and prints how long it took.
fn timed<T>(what: &str, work: impl FnOnce() -> T) -> T {
    let begun = Instant::now();
    let done = work();
    println!("{what:<34} {:>9.1} ms", begun.elapsed().as_secs_f64() * 1000.0);
    done
}

fn measure(dir: &Path, number: usize, last: &Summary) {
    println!("{number} patients");
    let home = Home::open(dir, false).expect("the folder opens");
    let keys = timed("the passphrase's work alone", || keys(&home));
    drop(home);
    let mut folder = timed("opening the folder", || DataFolder::open(dir, false).expect("the folder opens"));
    timed("unlocking, with the passphrase", || lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase"));
    let moment = evening();
    let code = |patient: usize| format!("K{patient}");
    timed("a review before any list", || reviewing::page(&folder, &moment, &code(0)).expect("a patient"));
    let receive = |what: &str, folder: &mut DataFolder, patient: usize| {
        let (plan, log) = (plan_of(patient), log_of(patient));
        let summary = Summary { plan, log, ..last.clone() };
        let newest = newest_card(folder, &code(patient), &moment);
        let secret = vault::card::pairing_secret(&keys, plan, newest);
        let sealed = vault::summary::seal(&summary, &secret, &keys.recipient()).expect("sealed");
        let receipts = timed(what, || receiving::receive(folder, &moment, [("a".to_owned(), Ok(sealed))]).expect("open"));
        assert!(matches!(receipts[0].outcome, Outcome::New { .. }), "{:?}", receipts[0].outcome);
    };
    receive("the first summary", &mut folder, number - 1);
    receive("a second summary", &mut folder, number / 2);
    let list = |what: &str, folder: &mut DataFolder| {
        let list = timed(what, || patients::show(folder, &moment).expect("unlocked"));
        assert!(list.notices.is_empty() && list.lines.iter().all(|line| !line.damaged), "{:?}", list.notices);
        assert_eq!(list.lines.len(), number);
    };
    list("the first list", &mut folder);
    list("the list again", &mut folder);
    receive("a summary after the list", &mut folder, number / 3);
    list("the list after a summary", &mut folder);
    timed("a review after the list", || reviewing::page(&folder, &moment, &code(number / 4)).expect("a patient"));
    lock::lock(&mut folder);
    timed("unlocking again", || lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase"));
    list("the list after unlocking again", &mut folder);
}

/// The newest card of a patient.
fn newest_card(folder: &DataFolder, code: &str, moment: &Moment) -> u16 {
    let page = reviewing::page(folder, moment, code).expect("a patient");
    page.plan.expect("a card").header.revision
}
