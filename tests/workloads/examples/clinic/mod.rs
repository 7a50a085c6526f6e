//! A clinic's store with many patients, made at once: the rows are sealed and written in one transaction, as the clinic's actions would
//! write them one by one over time. Whoever uses it makes sure that the program finds nothing changed from outside.

use actions::{Moment, clock, zone};
use exercises::id::{LogId, PlanId};
use exercises::plan::Plan;
use exercises::summary::Summary;
use std::path::Path;
use store::{Home, StoreError, Tx, table};
use vault::manifest::{Manifest, RowSums};
use vault::rows::{self, RowPlace};
use vault::{Keys, Passphrase};

pub const PASSPHRASE: &str = "seven grey herons wade";

/// The evening of the last day.
pub fn evening() -> Moment {
    clock::at(1_862_161_200_000, zone::named("Europe/Vienna").expect("a zone"))
}

/// The keys, which take the work of the passphrase.
pub fn keys(home: &Home) -> Keys {
    let sealed = home.store().read(table::keys::get).expect("readable").expect("there are keys");
    vault::keys::open(&sealed, &Passphrase::new(PASSPHRASE.into())).expect("the passphrase")
}

pub fn plan_of(patient: usize) -> PlanId {
    PlanId((patient as u64 + 1).to_be_bytes())
}

pub fn log_of(patient: usize) -> LogId {
    LogId((patient as u64 + 1).to_be_bytes())
}

/// Seals rows and sums them up for the manifest.
struct Rows<'a> {
    keys: &'a Keys,
    sums: RowSums,
    manifest: Manifest,
}

impl Rows<'_> {
    fn seal(&mut self, patient: i64, place: &RowPlace, plain: &[u8]) -> Result<Vec<u8>, StoreError> {
        let sealed = rows::seal(self.keys, place, plain);
        self.manifest.add(patient, self.sums.row(place, &sealed));
        Ok(sealed)
    }
}

/// Adds so many patients with these cards and these received summaries, each with a plan and a log of their own.
pub fn fill(dir: &Path, number: usize, plans: &[&Plan], weeks: &[Summary]) {
    let mut home = Home::open(dir, false).expect("the folder opens");
    let keys = keys(&home);
    let mut rows = Rows { keys: &keys, sums: RowSums::of(&keys), manifest: Manifest::default() };
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
