//! `clinic_size PATIENTS` makes a clinic's store with so many patients of two years each, a card a quarter and a summary a week, and
//! prints how long unlocking, the list, a review and receiving a summary take.
//!
//! The rows are sealed and written here in one transaction, as the clinic's actions would write them one by one over two years; the
//! list must show all of them undamaged and nothing changed from outside, or the program ends.

use actions::clinic::{lock, patients, receiving, reviewing};
use actions::{DataFolder, Moment, clock, zone};
use exercises::id::{LogId, PlanId};
use exercises::plan::Plan;
use exercises::summary::Summary;
use std::path::Path;
use std::time::Instant;
use store::{Home, StoreError, Tx, table};
use vault::manifest::{Manifest, row_sum};
use vault::rows::{self, RowPlace};
use vault::{Keys, Passphrase};
use wire::clinic::Outcome;
use workloads::Years;

const PASSPHRASE: &str = "seven grey herons wade";

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

/// The evening of the last day.
fn evening() -> Moment {
    clock::at(1_862_161_200_000, zone::named("Europe/Vienna").expect("a zone"))
}

fn keys(home: &Home) -> Keys {
    let sealed = home.store().read(table::keys::get).expect("readable").expect("there are keys");
    vault::keys::open(&sealed, &Passphrase::new(PASSPHRASE.into())).expect("the passphrase")
}

fn plan_of(patient: usize) -> PlanId {
    PlanId((patient as u64 + 1).to_be_bytes())
}

fn log_of(patient: usize) -> LogId {
    LogId((patient as u64 + 1).to_be_bytes())
}

/// Seals rows and sums them up for the manifest.
struct Rows<'a> {
    keys: &'a Keys,
    manifest: Manifest,
}

impl Rows<'_> {
    fn seal(&mut self, patient: i64, place: &RowPlace, plain: &[u8]) -> Result<Vec<u8>, StoreError> {
        let sealed = rows::seal(self.keys, place, plain);
        self.manifest.add(patient, row_sum(self.keys, place, &sealed));
        Ok(sealed)
    }
}

fn fill(dir: &Path, number: usize, plans: &[&Plan], weeks: &[Summary]) {
    let mut home = Home::open(dir, false).expect("the folder opens");
    let keys = keys(&home);
    let mut rows = Rows { keys: &keys, manifest: Manifest::default() };
    let filled = home.store_mut().transaction(|tx| {
        (0..number).try_for_each(|patient| one(tx, &mut rows, patient, plans, weeks))?;
        let place = RowPlace::new("manifest", &[&table::manifest::ID.to_be_bytes()]);
        table::manifest::put(tx, &rows::seal(&keys, &place, &rows.manifest.to_bytes()))
    });
    filled.and_then(|()| home.store().settle()).expect("written");
}

fn one(tx: &Tx<'_>, rows: &mut Rows<'_>, patient: usize, plans: &[&Plan], weeks: &[Summary]) -> Result<(), StoreError> {
    let plain = format!("K{patient}\nInvented Person {patient}");
    let id =
        table::patient::insert(tx, |id| rows.seal(id, &RowPlace::new("patient", &[&id.to_be_bytes()]), plain.as_bytes()))?;
    let owner = id.to_be_bytes();
    for plan in plans {
        let mut plan = Plan::clone(plan);
        plan.header.id = plan_of(patient);
        let revision = plan.header.revision;
        let secret = vault::card::pairing_secret(rows.keys, plan.header.id, revision);
        let card = vault::card::of_clinic(rows.keys, plan, secret, Vec::new());
        let bytes = vault::card::issue(rows.keys, &card).expect("a card that can be issued");
        table::issued::insert(tx, id, revision.into(), |row| {
            let place = RowPlace::new("issued", &[&row.to_be_bytes(), &owner, &u32::from(revision).to_be_bytes()]);
            rows.seal(id, &place, &bytes)
        })?;
    }
    weeks.iter().try_for_each(|week| {
        let summary = Summary { plan: plan_of(patient), log: log_of(patient), ..week.clone() };
        let body = format::summary::write(&summary).expect("a summary of our own");
        let received = table::received::insert(tx, id, &body.log.0, body.counter, |row| {
            let columns: [&[u8]; 4] = [&row.to_be_bytes(), &owner, &body.log.0, &body.counter.to_be_bytes()];
            rows.seal(id, &RowPlace::new("received", &columns), &body.packed)
        });
        received.map(drop)
    })
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
