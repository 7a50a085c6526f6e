//! The model: the contents of the tables as plain collections, and which operations are allowed on them.

use proptest::prelude::*;
use std::collections::BTreeMap;
use store::table::card::{self, Card};
use store::table::entry::{self, NewEntry};
use store::table::issued::{self, Issued};
use store::table::received::{self, Received};
use store::table::{
    device, digest, draft, former_log, keys, log, manifest, norms, own_exercise, patient, patient_case, plan_set, setting,
    visit,
};
use store::{StoreError, Tx, View};

/// The modelled contents. The comparison leaves out what [`observed`] cannot see: how often the log was exported, and which ids were
/// used before.
#[derive(Debug, Clone, Default)]
pub struct Model {
    settings: BTreeMap<String, String>,
    log: Option<Vec<u8>>,
    cards: Vec<Card>,
    entries: Vec<Vec<u8>>,
    keys: Option<Vec<u8>>,
    patients: BTreeMap<i64, Vec<u8>>,
    issued: Vec<Issued>,
    received: Vec<Received>,
    drafts: BTreeMap<i64, Vec<u8>>,
    devices: BTreeMap<i64, Vec<u8>>,
    digests: BTreeMap<i64, Vec<u8>>,
    cases: BTreeMap<i64, Vec<u8>>,
    norms: Option<Vec<u8>>,
    /// Own exercises, and sets.
    own: [BTreeMap<i64, Vec<u8>>; 2],
    /// Entries of visits, each with its patient.
    visits: BTreeMap<i64, (i64, Vec<u8>)>,
    manifest: Option<Vec<u8>>,
    /// Former ids of the log, each with the number of the last entry under it.
    former: Vec<(Vec<u8>, u32)>,
    exports: u32,
    given: [i64; 6],
}

impl PartialEq for Model {
    fn eq(&self, other: &Model) -> bool {
        let seen = |model: &Model| {
            let model = model.clone();
            let Model { settings, log, cards, entries, keys, patients, issued, received, .. } = model;
            let Model { drafts, devices, digests, cases, norms, own, visits, manifest, former, .. } = model;
            let clinic = (keys, patients, issued, received, drafts, devices, norms, own, visits, manifest);
            (settings, log, cards, entries, with_entries(&former), clinic, digests, cases)
        };
        seen(self) == seen(other)
    }
}

/// The store's contents, as far as they are modelled.
pub fn observed(view: &View<'_>) -> Result<Model, StoreError> {
    let mut model = Model {
        settings: setting::all(view)?,
        log: log::id(view)?,
        cards: card::all(view)?,
        entries: entry::all(view)?.into_iter().map(|entry| entry.payload).collect(),
        keys: keys::get(view)?,
        patients: patient::all(view)?.into_iter().map(|row| (row.id, row.sealed)).collect(),
        drafts: draft::all(view)?.into_iter().collect(),
        devices: device::all(view)?.into_iter().collect(),
        digests: digest::all(view)?.into_iter().collect(),
        cases: patient_case::all(view)?.into_iter().collect(),
        norms: norms::get(view)?,
        own: [
            own_exercise::all(view)?.into_iter().map(|row| (row.id, row.sealed)).collect(),
            plan_set::all(view)?.into_iter().map(|row| (row.id, row.sealed)).collect(),
        ],
        visits: visit::all(view)?.into_iter().map(|row| (row.id, (row.patient, row.sealed))).collect(),
        manifest: manifest::get(view)?,
        former: former_log::all(view)?.into_iter().map(|former| (former.id, former.entries)).collect(),
        ..Model::default()
    };
    for &id in model.patients.keys() {
        model.issued.extend(issued::of_patient(view, id)?);
        model.received.extend(received::of_patient(view, id)?);
    }
    model.issued.sort_by_key(|row| row.id);
    model.received.sort_by_key(|row| row.id);
    Ok(model)
}

/// One operation within a transaction. The value ranges are small, so that operations affect each other's rows.
#[derive(Debug, Clone)]
pub enum Operation {
    Put(u8, String),
    Forget(u8),
    Begin(u8),
    /// An export; the model predicts its number.
    Export,
    Take {
        plan: u8,
        revision: u32,
        clinic: u8,
    },
    Append(Vec<u8>),
    FirstKeys(Vec<u8>),
    NewKeys(Vec<u8>),
    Admit(Vec<u8>),
    Change(i64, Vec<u8>),
    Discharge(i64),
    Issue {
        patient: i64,
        revision: u32,
    },
    Receive {
        patient: i64,
        log: u8,
        counter: u32,
    },
    Draft(i64, Vec<u8>),
    NoDraft(i64),
    Devices(i64, Vec<u8>),
    Digest(i64, Vec<u8>),
    Case(i64, Vec<u8>),
    Norms(Vec<u8>),
    NoNorms,
    /// Of an own exercise, or of a set.
    Own(usize, Vec<u8>),
    ChangeOwn(usize, i64, Vec<u8>),
    NoOwn(usize, i64),
    /// An entry of a patient's visits.
    Visit(i64, Vec<u8>),
    Manifest(Vec<u8>),
    SealIssuedAnew(i64, Vec<u8>),
    SealReceivedAnew(i64, Vec<u8>),
}

impl Operation {
    pub fn any() -> impl Strategy<Value = Operation> {
        let bytes = || prop::collection::vec(any::<u8>(), 1..2_000);
        prop_oneof![
            (0..3u8, ".{0,9}").prop_map(|(name, value)| Operation::Put(name, value)),
            (0..3u8).prop_map(Operation::Forget),
            any::<u8>().prop_map(Operation::Begin),
            Just(Operation::Export),
            (0..3u8, 0..4u32, 0..2u8).prop_map(|(plan, revision, clinic)| Operation::Take { plan, revision, clinic }),
            bytes().prop_map(Operation::Append),
            bytes().prop_map(Operation::FirstKeys),
            bytes().prop_map(Operation::NewKeys),
            bytes().prop_map(Operation::Admit),
            (1..5i64, bytes()).prop_map(|(id, sealed)| Operation::Change(id, sealed)),
            (1..5i64).prop_map(Operation::Discharge),
            (1..5i64, 0..4u32).prop_map(|(patient, revision)| Operation::Issue { patient, revision }),
            (1..5i64, 0..2u8, 0..4u32).prop_map(|(patient, log, counter)| Operation::Receive { patient, log, counter }),
            (1..5i64, bytes()).prop_map(|(patient, sealed)| Operation::Draft(patient, sealed)),
            (1..5i64).prop_map(Operation::NoDraft),
            (1..5i64, bytes()).prop_map(|(patient, sealed)| Operation::Devices(patient, sealed)),
            (1..5i64, bytes()).prop_map(|(patient, sealed)| Operation::Digest(patient, sealed)),
            (1..5i64, bytes()).prop_map(|(patient, sealed)| Operation::Case(patient, sealed)),
            bytes().prop_map(Operation::Norms),
            Just(Operation::NoNorms),
            (0..2usize, bytes()).prop_map(|(table, sealed)| Operation::Own(table, sealed)),
            (0..2usize, 1..5i64, bytes()).prop_map(|(table, id, sealed)| Operation::ChangeOwn(table, id, sealed)),
            (0..2usize, 1..5i64).prop_map(|(table, id)| Operation::NoOwn(table, id)),
            (1..5i64, bytes()).prop_map(|(patient, sealed)| Operation::Visit(patient, sealed)),
            bytes().prop_map(Operation::Manifest),
            (1..5i64, bytes()).prop_map(|(id, sealed)| Operation::SealIssuedAnew(id, sealed)),
            (1..5i64, bytes()).prop_map(|(id, sealed)| Operation::SealReceivedAnew(id, sealed)),
        ]
    }

    /// Does the operation in the store. Rows that are encrypted for an id contain the id here, so that the comparison detects a
    /// wrong one.
    pub fn in_store(&self, tx: &Tx<'_>) -> Result<(), StoreError> {
        match self {
            Operation::Put(name, value) => setting::put(tx, &name.to_string(), value),
            Operation::Forget(name) => setting::remove(tx, &name.to_string()),
            Operation::Begin(id) => log::begin(tx, &[*id; 8]),
            Operation::Export => log::next_export(tx).and_then(|number| setting::put(tx, "export", &number.to_string())),
            Operation::Take { plan, revision, clinic } => card::insert(tx, &a_card(*plan, *revision, *clinic)),
            Operation::Append(payload) => {
                entry::append(tx, &NewEntry { plan: b"p", at_ms: 1, offset_s: 2, payload }).map(drop)
            }
            Operation::FirstKeys(sealed) => keys::insert(tx, sealed),
            Operation::NewKeys(sealed) => keys::replace(tx, sealed),
            Operation::Admit(sealed) => patient::insert(tx, |id| Ok(bound(id, sealed))).map(drop),
            Operation::Change(id, sealed) => patient::update(tx, *id, sealed),
            Operation::Discharge(id) => patient::remove(tx, *id),
            Operation::Issue { patient, revision } => {
                issued::insert(tx, *patient, *revision, |id| Ok(bound(id, b"card"))).map(drop)
            }
            Operation::Receive { patient, log, counter } => {
                received::insert(tx, *patient, &[*log; 8], *counter, |id| Ok(bound(id, b"summary"))).map(drop)
            }
            Operation::Draft(patient, sealed) => draft::put(tx, *patient, sealed),
            Operation::NoDraft(patient) => draft::remove(tx, *patient),
            Operation::Devices(patient, sealed) => device::put(tx, *patient, sealed),
            Operation::Digest(patient, sealed) => digest::put(tx, *patient, sealed),
            Operation::Case(patient, sealed) => patient_case::put(tx, *patient, sealed),
            Operation::Norms(sealed) => norms::put(tx, sealed),
            Operation::NoNorms => norms::remove(tx),
            Operation::Own(0, sealed) => own_exercise::insert(tx, |id| Ok(bound(id, sealed))).map(drop),
            Operation::Own(_, sealed) => plan_set::insert(tx, |id| Ok(bound(id, sealed))).map(drop),
            Operation::ChangeOwn(0, id, sealed) => own_exercise::update(tx, *id, sealed),
            Operation::ChangeOwn(_, id, sealed) => plan_set::update(tx, *id, sealed),
            Operation::NoOwn(0, id) => own_exercise::remove(tx, *id),
            Operation::NoOwn(_, id) => plan_set::remove(tx, *id),
            Operation::Visit(patient, sealed) => visit::insert(tx, *patient, |id| Ok(bound(id, sealed))).map(drop),
            Operation::Manifest(sealed) => manifest::put(tx, sealed),
            Operation::SealIssuedAnew(id, sealed) => issued::update(tx, *id, sealed),
            Operation::SealReceivedAnew(id, sealed) => received::update(tx, *id, sealed),
        }
    }

    /// Does the operation in the model, and returns whether it is allowed.
    pub fn in_model(&self, model: &mut Model) -> bool {
        match self.clone() {
            Operation::Put(name, value) => always(model.settings.insert(name.to_string(), value)),
            Operation::Forget(name) => always(model.settings.remove(&name.to_string())),
            Operation::Begin(id) => model.log.is_none() && always(model.log.insert(vec![id; 8])),
            Operation::Export => {
                model.log.is_some() && {
                    model.exports += 1;
                    always(model.settings.insert("export".into(), model.exports.to_string()))
                }
            }
            Operation::Take { plan, revision, clinic } => model.take(a_card(plan, revision, clinic)),
            Operation::Append(payload) => {
                model.entries.push(payload);
                true
            }
            Operation::FirstKeys(sealed) => model.keys.is_none() && always(model.keys.insert(sealed)),
            Operation::NewKeys(sealed) => model.keys.replace(sealed).is_some(),
            Operation::Admit(sealed) => {
                let id = model.next(0);
                always(model.patients.insert(id, bound(id, &sealed)))
            }
            Operation::Change(id, sealed) => model.patients.get_mut(&id).map(|row| *row = sealed).is_some(),
            Operation::Discharge(id) => {
                model.issued.retain(|row| row.patient != id);
                model.received.retain(|row| row.patient != id);
                model.drafts.remove(&id);
                model.devices.remove(&id);
                model.digests.remove(&id);
                model.cases.remove(&id);
                model.visits.retain(|_, (patient, _)| *patient != id);
                model.patients.remove(&id).is_some()
            }
            Operation::Issue { patient, revision } => model.issue(patient, revision),
            Operation::Receive { patient, log, counter } => model.receive(patient, vec![log; 8], counter),
            Operation::Draft(patient, sealed) => {
                model.patients.contains_key(&patient) && always(model.drafts.insert(patient, sealed))
            }
            Operation::NoDraft(patient) => always(model.drafts.remove(&patient)),
            Operation::Devices(patient, sealed) => {
                model.patients.contains_key(&patient) && always(model.devices.insert(patient, sealed))
            }
            Operation::Digest(patient, sealed) => {
                model.patients.contains_key(&patient) && always(model.digests.insert(patient, sealed))
            }
            Operation::Case(patient, sealed) => {
                model.patients.contains_key(&patient) && always(model.cases.insert(patient, sealed))
            }
            Operation::Norms(sealed) => always(model.norms.insert(sealed)),
            Operation::NoNorms => always(model.norms.take()),
            Operation::Own(table, sealed) => {
                let id = model.next(3 + table);
                always(model.own[table].insert(id, bound(id, &sealed)))
            }
            Operation::ChangeOwn(table, id, sealed) => model.own[table].get_mut(&id).map(|row| *row = sealed).is_some(),
            Operation::NoOwn(table, id) => always(model.own[table].remove(&id)),
            Operation::Visit(patient, sealed) => {
                let id = model.next(5);
                model.visits.insert(id, (patient, bound(id, &sealed)));
                model.patients.contains_key(&patient)
            }
            Operation::Manifest(sealed) => always(model.manifest.insert(sealed)),
            Operation::SealIssuedAnew(id, sealed) => {
                model.issued.iter_mut().find(|row| row.id == id).map(|row| row.sealed = sealed).is_some()
            }
            Operation::SealReceivedAnew(id, sealed) => {
                model.received.iter_mut().find(|row| row.id == id).map(|row| row.sealed = sealed).is_some()
            }
        }
    }
}

impl Model {
    /// The log, if one was begun, goes on under another id.
    pub fn succeed(&mut self, id: &[u8]) {
        if let Some(was) = self.log.replace(id.to_vec()) {
            self.former.push((was, u32::try_from(self.entries.len()).expect("few")));
        } else {
            self.log = None;
        }
    }

    fn take(&mut self, card: Card) -> bool {
        let fits = |kept: &Card| kept.plan != card.plan || (kept.clinic == card.clinic && kept.revision != card.revision);
        let allowed = self.cards.iter().all(fits);
        self.cards.push(card);
        self.cards.sort_by(|a, b| (&a.plan, a.revision).cmp(&(&b.plan, b.revision)));
        allowed
    }

    fn issue(&mut self, patient: i64, revision: u32) -> bool {
        let new = !self.issued.iter().any(|row| (row.patient, row.revision) == (patient, revision));
        let id = self.next(1);
        self.issued.push(Issued { id, patient, revision, sealed: bound(id, b"card") });
        new && self.patients.contains_key(&patient)
    }

    fn receive(&mut self, patient: i64, log: Vec<u8>, counter: u32) -> bool {
        let new = !self.received.iter().any(|row| (row.patient, &row.log, row.counter) == (patient, &log, counter));
        let id = self.next(2);
        self.received.push(Received { id, patient, log, counter, sealed: bound(id, b"summary") });
        new && self.patients.contains_key(&patient)
    }

    /// The next id: ids only increase, and are not reused even if the newest row was removed.
    fn next(&mut self, table: usize) -> i64 {
        self.given[table] += 1;
        self.given[table]
    }
}

/// The former ids under which entries were made.
fn with_entries(former: &[(Vec<u8>, u32)]) -> Vec<(Vec<u8>, u32)> {
    let mut used = 0;
    former.iter().filter(|(_, entries)| *entries > std::mem::replace(&mut used, *entries)).cloned().collect()
}

fn always<T>(_done: T) -> bool {
    true
}

fn a_card(plan: u8, revision: u32, clinic: u8) -> Card {
    Card { plan: vec![plan; 8], revision, clinic: vec![clinic; 32], taken_ms: 5, taken_offset_s: -60, bytes: vec![9; 700] }
}

fn bound(id: i64, sealed: &[u8]) -> Vec<u8> {
    [&id.to_be_bytes(), sealed].concat()
}
