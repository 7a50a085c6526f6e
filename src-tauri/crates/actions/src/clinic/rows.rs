//! Opens the clinic's encrypted rows: patients with their cards, and the summaries received from them.

use super::lock;
use crate::{ActionResult, DataFolder, refuse};
use exercises::id::{LogId, PlanId};
use exercises::plan::Plan;
use exercises::summary::Summary;
use format::card::Card;
use format::summary::Body;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use store::{StoreError, View, table};
use vault::{Keys, rows};
use wire::Failure;

pub(crate) const PATIENT: &str = "patient";
pub(crate) const ISSUED: &str = "issued";
pub(crate) const RECEIVED: &str = "received";
pub(crate) const NORMS: &str = "norms";
pub(crate) const DRAFT: &str = "draft";

/// A patient with all cards that the clinic issued to them.
pub(crate) struct Patient {
    pub(crate) row: i64,
    pub(crate) code: String,
    pub(crate) name: Option<String>,
    /// Cards by revision.
    pub(crate) cards: BTreeMap<u16, Arc<Card>>,
}

/// A card that was opened, with the row that it was in: of a row with other bytes nothing is taken for granted.
pub(crate) struct OpenedCard {
    row: table::issued::Issued,
    card: Arc<Card>,
}

impl Patient {
    /// The plans by revision.
    pub(crate) fn revisions(&self) -> BTreeMap<u16, Plan> {
        self.cards.iter().map(|(revision, card)| (*revision, card.plan.clone())).collect()
    }

    /// The newest card.
    pub(crate) fn newest(&self) -> Option<&Card> {
        self.cards.values().next_back().map(Arc::as_ref)
    }

    /// The plan's id, which is the same in all revisions.
    pub(crate) fn plan(&self) -> Option<PlanId> {
        self.newest().map(|card| card.plan.header.id)
    }
}

/// A row's id in the form in which it is bound into the encryption.
pub(crate) fn bound(id: i64) -> [u8; 8] {
    id.to_be_bytes()
}

/// All patients, ordered by code.
pub(crate) fn patients(folder: &DataFolder) -> ActionResult<Vec<Patient>> {
    let keys = lock::unlocked_keys(folder)?;
    let rows = read(folder, |view| {
        let rows = table::patient::all(view)?.into_iter();
        rows.map(|row| Ok((table::issued::of_patient(view, row.id)?, row))).collect::<Result<Vec<_>, StoreError>>()
    })?;
    let opened =
        rows.into_iter().map(|(issued, row)| open_patient(folder, keys, &row, &issued).ok_or_else(|| damaged(folder)));
    let mut patients = opened.collect::<ActionResult<Vec<Patient>>>()?;
    patients.sort_by(|one, other| one.code.cmp(&other.code));
    Ok(patients)
}

/// Whether a patient has this code, ignoring upper and lower case.
pub(crate) fn is_taken(folder: &DataFolder, code: &str) -> ActionResult<bool> {
    let keys = lock::unlocked_keys(folder)?;
    let all = read(folder, table::patient::all)?;
    let codes = all.iter().map(|row| open_code(keys, row).ok_or_else(|| damaged(folder)));
    let codes = codes.collect::<ActionResult<Vec<String>>>()?;
    Ok(codes.iter().any(|other| other.eq_ignore_ascii_case(code)))
}

/// The patient with this code. Only the codes of the other patients are decrypted, because each change of a draft calls this.
pub(crate) fn patient(folder: &DataFolder, code: &str) -> ActionResult<Patient> {
    let keys = lock::unlocked_keys(folder)?;
    let all = read(folder, table::patient::all)?;
    let mut unread = false;
    for row in &all {
        match open_code(keys, row) {
            Some(other) if other.eq_ignore_ascii_case(code) => return with_cards(folder, keys, row),
            Some(_) => {}
            None => unread = true,
        }
    }
    Err(if unread { damaged(folder) } else { Failure::NoSuchPatient { code: code.to_owned() } })
}

/// The patient whose cards belong to this plan. At most one card of each other patient is decrypted, and only once while the folder
/// is open.
pub(crate) fn patient_of_plan(folder: &DataFolder, plan: PlanId) -> ActionResult<Option<Patient>> {
    let keys = lock::unlocked_keys(folder)?;
    let known = folder.plan_holders.borrow().get(&plan).copied();
    let Some(id) = known.map_or_else(|| find_holder(folder, keys, plan), |id| Ok(Some(id)))? else { return Ok(None) };
    let Some(row) = read(folder, |view| table::patient::get(view, id))? else { return Ok(None) };
    Ok(Some(with_cards(folder, keys, &row)?).filter(|patient| patient.plan() == Some(plan)))
}

/// Looks for the patient of a plan among those whose cards were not decrypted yet.
///
/// # Errors
/// [`Failure::HomeDamaged`] if a card that cannot be decrypted may belong to the plan.
fn find_holder(folder: &DataFolder, keys: &Keys, plan: PlanId) -> ActionResult<Option<i64>> {
    let oldest = read(folder, table::issued::oldest_of_each)?;
    let mut holders = folder.plan_holders.borrow_mut();
    let known: BTreeSet<i64> = holders.values().copied().collect();
    let mut unread = false;
    for row in oldest.iter().filter(|row| !known.contains(&row.patient)) {
        let Some(card) = open_card(folder, keys, row) else {
            unread = true;
            continue;
        };
        holders.insert(card.plan.header.id, row.patient);
        if card.plan.header.id == plan {
            return Ok(Some(row.patient));
        }
    }
    if unread { Err(damaged(folder)) } else { Ok(None) }
}

/// Everything that was received from a patient.
pub(crate) fn summaries(folder: &DataFolder, patient: &Patient) -> ActionResult<Vec<Summary>> {
    let keys = lock::unlocked_keys(folder)?;
    let received = read(folder, |view| table::received::of_patient(view, patient.row))?;
    let opened = received.iter().map(|row| {
        let packed = rows::open(keys, RECEIVED, &bound(row.id), &row.sealed).ok()?;
        let log = LogId(row.log.as_slice().try_into().ok()?);
        // The contents say by their keys of which version they are.
        let version = format::summary::VERSION;
        format::summary::read(&Body { plan: patient.plan()?, log, counter: row.counter, packed, version }).ok()
    });
    opened.map(|summary| summary.ok_or_else(|| damaged(folder))).collect()
}

fn read<T>(folder: &DataFolder, look: impl FnOnce(&View<'_>) -> Result<T, StoreError>) -> ActionResult<T> {
    folder.home.store().read(look).map_err(refuse::store(folder.home.dir()))
}

fn damaged(folder: &DataFolder) -> Failure {
    Failure::HomeDamaged { home: folder.home.dir().display().to_string() }
}

fn with_cards(folder: &DataFolder, keys: &Keys, row: &table::patient::Patient) -> ActionResult<Patient> {
    let issued = read(folder, |view| table::issued::of_patient(view, row.id))?;
    open_patient(folder, keys, row, &issued).ok_or_else(|| damaged(folder))
}

fn open_patient(
    folder: &DataFolder,
    keys: &Keys,
    row: &table::patient::Patient,
    issued: &[table::issued::Issued],
) -> Option<Patient> {
    let plain = rows::open(keys, PATIENT, &bound(row.id), &row.sealed).ok()?;
    let (code, name) = read_patient(&plain)?;
    let cards = issued.iter().map(|row| open_card(folder, keys, row).map(|card| (card.plan.header.revision, card)));
    Some(Patient { row: row.id, code, name, cards: cards.collect::<Option<_>>()? })
}

fn open_code(keys: &Keys, row: &table::patient::Patient) -> Option<String> {
    let plain = rows::open(keys, PATIENT, &bound(row.id), &row.sealed).ok()?;
    read_patient(&plain).map(|(code, _)| code)
}

/// The card of a row; each is opened and checked once while the folder is open.
fn open_card(folder: &DataFolder, keys: &Keys, row: &table::issued::Issued) -> Option<Arc<Card>> {
    let mut opened = folder.issued_cards.borrow_mut();
    if let Some(known) = opened.get(&row.id).filter(|known| known.row == *row) {
        return Some(known.card.clone());
    }
    let bytes = rows::open(keys, ISSUED, &bound(row.id), &row.sealed).ok()?;
    let card = Arc::new(vault::card::verify(format::card::open(&bytes).ok()?, Some(keys.verify_key())).ok()?);
    opened.insert(row.id, OpenedCard { row: row.clone(), card: card.clone() });
    Some(card)
}

/// A patient's row: the code, then a line break and the name, if there is one. Neither contains a line break itself.
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::clinic::issuing;
    use crate::{clock, zone};
    use wire::clinic::{AddPatientRequest, IssueRequest};

    #[test]
    fn a_card_is_opened_once_and_anew_where_its_row_has_changed() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let moment = clock::at(1_795_600_000_000, zone::named("Europe/Vienna").expect("a zone"));
        let mut folder = DataFolder::open(&dir.path().join("clinic"), true).expect("a new folder");
        lock::start(&mut folder, "Linden Lane Practice", None, "nine grey herons wading".into()).expect("a new clinic");
        crate::clinic::patients::add(&mut folder, &AddPatientRequest { code: "K17".into(), name: None })
            .expect("a new code");
        let today = moment.now.date();
        let example = format::plan_file::example(today + chrono::Duration::days(42));
        let prescription = format::plan_file::read(&example, today).expect("the example");
        let request = IssueRequest { code: "K17".into(), prescription };
        issuing::issue(&mut folder, &moment, &request, Some(&dir.path().join("card"))).expect("a good plan");
        let card = || patient(&folder, "K17").expect("added").cards[&1].clone();
        let first = card();
        assert!(Arc::ptr_eq(&first, &card()), "not opened again");
        assert!(Arc::ptr_eq(&first, &patients(&folder).expect("one")[0].cards[&1]), "in the list neither");
        let issued = read(&folder, table::issued::oldest_of_each).expect("readable").swap_remove(0);
        let changed = table::issued::Issued { sealed: b"damaged".to_vec(), ..issued };
        let keys = lock::unlocked_keys(&folder).expect("unlocked");
        assert!(open_card(&folder, keys, &changed).is_none(), "the number of a row says nothing about its bytes");
    }
}
