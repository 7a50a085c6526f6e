//! The clinic's rows, opened: patients with their cards and summaries.

use super::lock;
use crate::{ActionResult, DataFolder, refuse};
use exercises::id::{LogId, PlanId};
use exercises::plan::Plan;
use exercises::summary::Summary;
use format::card::Card;
use format::summary::Body;
use std::collections::BTreeMap;
use store::table;
use vault::{Keys, rows};
use wire::Failure;
use wire::app::Role;

pub(crate) const PATIENT: &str = "patient";
pub(crate) const ISSUED: &str = "issued";
pub(crate) const RECEIVED: &str = "received";
pub(crate) const NORMS: &str = "norms";

/// A patient with everything that the clinic holds about them.
pub(crate) struct Patient {
    pub(crate) row: i64,
    pub(crate) code: String,
    pub(crate) name: Option<String>,
    /// Cards by revision.
    pub(crate) cards: BTreeMap<u16, Card>,
    pub(crate) summaries: Vec<Summary>,
}

impl Patient {
    /// Plans by revision.
    pub(crate) fn revisions(&self) -> BTreeMap<u16, Plan> {
        self.cards.iter().map(|(revision, card)| (*revision, card.plan.clone())).collect()
    }

    /// The newest card.
    pub(crate) fn newest(&self) -> Option<&Card> {
        self.cards.values().next_back()
    }

    /// The plan's id, the same through all revisions.
    pub(crate) fn plan(&self) -> Option<PlanId> {
        self.newest().map(|card| card.plan.id)
    }
}

/// A row's id as the sealing is bound to it.
pub(crate) fn bound(id: i64) -> [u8; 8] {
    id.to_be_bytes()
}

/// All patients, by code.
pub(crate) fn patients(folder: &DataFolder) -> ActionResult<Vec<Patient>> {
    folder.require_role(Role::Clinic)?;
    let keys = lock::unlocked_keys(folder)?;
    let damaged = || Failure::HomeDamaged { home: folder.home.dir().display().to_string() };
    let rows = folder.home.store().read(|view| {
        let patients = table::patient::all(view)?.into_iter().map(|patient| {
            let issued = table::issued::of_patient(view, patient.id)?;
            let received = table::received::of_patient(view, patient.id)?;
            Ok((patient, issued, received))
        });
        patients.collect::<Result<Vec<_>, store::StoreError>>()
    });
    let rows = rows.map_err(refuse::store(folder.home.dir()))?;
    let opened = rows
        .into_iter()
        .map(|(patient, issued, received)| open_patient(keys, &patient, &issued, &received).ok_or_else(damaged));
    let mut patients = opened.collect::<ActionResult<Vec<Patient>>>()?;
    patients.sort_by(|one, other| one.code.cmp(&other.code));
    Ok(patients)
}

/// The patient under a code.
pub(crate) fn patient(folder: &DataFolder, code: &str) -> ActionResult<Patient> {
    let found = patients(folder)?.into_iter().find(|patient| patient.code.eq_ignore_ascii_case(code));
    found.ok_or_else(|| Failure::NoSuchPatient { code: code.to_owned() })
}

fn open_patient(
    keys: &Keys,
    row: &table::patient::Patient,
    issued: &[table::issued::Issued],
    received: &[table::received::Received],
) -> Option<Patient> {
    let plain = rows::open(keys, PATIENT, &bound(row.id), &row.sealed).ok()?;
    let (code, name) = read_patient(&plain)?;
    let cards = issued.iter().map(|row| {
        let bytes = rows::open(keys, ISSUED, &bound(row.id), &row.sealed).ok()?;
        let card = vault::card::verify(format::card::open(&bytes).ok()?, Some(keys.verify_key())).ok()?;
        Some((card.plan.revision, card))
    });
    let cards = cards.collect::<Option<BTreeMap<u16, Card>>>()?;
    let plan = cards.values().next().map(|card| card.plan.id);
    let summaries = received.iter().map(|row| {
        let packed = rows::open(keys, RECEIVED, &bound(row.id), &row.sealed).ok()?;
        let log = LogId(row.log.as_slice().try_into().ok()?);
        format::summary::read(&Body { plan: plan?, log, counter: row.counter, packed }).ok()
    });
    Some(Patient { row: row.id, code, name, cards, summaries: summaries.collect::<Option<Vec<_>>>()? })
}

/// A patient's row: the code, and after a line break the name, if there is one. Neither holds a line break itself.
pub(crate) fn write_patient(code: &str, name: Option<&str>) -> Vec<u8> {
    match name {
        Some(name) => format!("{code}\n{name}").into_bytes(),
        None => code.as_bytes().to_vec(),
    }
}

fn read_patient(plain: &[u8]) -> Option<(String, Option<String>)> {
    let text = std::str::from_utf8(plain).ok()?;
    Some(match text.split_once('\n') {
        Some((code, name)) => (code.to_owned(), Some(name.to_owned())),
        None => (text.to_owned(), None),
    })
}
