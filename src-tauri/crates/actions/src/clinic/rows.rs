//! Opens the clinic's encrypted rows: patients with their cards, and the summaries received from them.
//!
//! A row that does not open closes one patient's record, never the clinic: it is skipped and counted.

use super::{lock, plan_holders, sealed};
use crate::{ActionResult, DataFolder, refuse};
use exercises::draft::PatientFacts;
use exercises::id::PlanId;
use exercises::plan::Plan;
use exercises::summary::Summary;
use format::card::Card;
use format::summary::Body;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use store::{StoreError, View, table};
use vault::{Keys, rows};
use wire::Failure;

/// A patient with all cards that the clinic issued to them.
pub(crate) struct Patient {
    pub(crate) row: i64,
    pub(crate) code: String,
    pub(crate) name: Option<String>,
    /// What was ticked for the patient.
    pub(crate) facts: PatientFacts,
    /// Cards by revision.
    pub(crate) cards: BTreeMap<u16, Arc<Card>>,
}

/// A card that was opened, with the row that it was in: of a row with other bytes nothing is taken for granted.
pub(crate) struct OpenedCard {
    row: table::issued::Issued,
    card: Arc<Card>,
}

impl OpenedCard {
    /// Whether it belongs to the patient with this row.
    pub(crate) fn is_of(&self, patient: i64) -> bool {
        self.row.patient == patient
    }
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

    /// The newest card's revision; 0 without a card.
    pub(crate) fn newest_revision(&self) -> u16 {
        self.newest().map_or(0, |card| card.plan.header.revision)
    }

    /// The plan's id, which is the same in all revisions.
    pub(crate) fn plan(&self) -> Option<PlanId> {
        self.newest().map(|card| card.plan.header.id)
    }
}

/// The patients of the list.
pub(crate) struct AllPatients {
    /// Those whose row opens, ordered by code: the patient, or the code of one whose cards do not all open.
    pub(crate) patients: Vec<Result<Patient, String>>,
    /// Number of patients whose own row does not open, so that not even their code is known.
    pub(crate) damaged: usize,
}

/// All patients.
pub(crate) fn patients(folder: &DataFolder) -> ActionResult<AllPatients> {
    let mut all = AllPatients { patients: Vec::new(), damaged: 0 };
    for row in read(folder, table::patient::all)? {
        match of_row(folder, &row)? {
            Some(patient) => all.patients.push(patient),
            None => all.damaged += 1,
        }
    }
    let code = |one: &Result<Patient, String>| one.as_ref().map_or_else(Clone::clone, |patient| patient.code.clone());
    all.patients.sort_by_key(code);
    Ok(all)
}

/// The patient of a row, or the code of one whose cards do not all open; `None` if the row itself does not open.
pub(crate) fn of_row(folder: &DataFolder, row: &table::patient::Patient) -> ActionResult<Option<Result<Patient, String>>> {
    let keys = lock::unlocked_keys(folder)?;
    let Some(code) = open_code(keys, row) else { return Ok(None) };
    let issued = read(folder, |view| table::issued::of_patient(view, row.id))?;
    Ok(Some(open_patient(folder, keys, row, &issued).ok_or(code)))
}

/// Whether a patient has this code, ignoring upper and lower case, as far as the rows open.
pub(crate) fn is_taken(folder: &DataFolder, code: &str) -> ActionResult<bool> {
    let keys = lock::unlocked_keys(folder)?;
    let all = read(folder, table::patient::all)?;
    Ok(all.iter().filter_map(|row| open_code(keys, row)).any(|other| other.eq_ignore_ascii_case(code)))
}

/// The codes of these rows of patients, as far as they open.
pub(crate) fn codes(folder: &DataFolder, rows: impl IntoIterator<Item = i64>) -> ActionResult<Vec<String>> {
    let keys = lock::unlocked_keys(folder)?;
    let wanted: BTreeSet<i64> = rows.into_iter().collect();
    let all = read(folder, table::patient::all)?;
    Ok(all.iter().filter(|row| wanted.contains(&row.id)).filter_map(|row| open_code(keys, row)).collect())
}

/// The patient with this code. Only the codes of the other patients are decrypted, because each change of a draft calls this.
///
/// # Errors
/// [`Failure::RecordDamaged`] if one of the patient's cards does not open; [`Failure::RecordsDamaged`] if no row that opens has the
/// code, but some do not open; [`Failure::NoSuchPatient`] otherwise.
pub(crate) fn patient(folder: &DataFolder, code: &str) -> ActionResult<Patient> {
    let keys = lock::unlocked_keys(folder)?;
    with_cards(folder, keys, &patient_row(folder, code)?)
}

/// The row of the patient with this code, whatever is with the cards.
///
/// # Errors
/// As for [`patient`].
pub(crate) fn patient_row(folder: &DataFolder, code: &str) -> ActionResult<table::patient::Patient> {
    let keys = lock::unlocked_keys(folder)?;
    let mut damaged = 0;
    for row in read(folder, table::patient::all)? {
        match open_code(keys, &row) {
            Some(other) if other.eq_ignore_ascii_case(code) => return Ok(row),
            Some(_) => {}
            None => damaged += 1,
        }
    }
    Err(if damaged == 0 { Failure::NoSuchPatient { code: code.to_owned() } } else { records_damaged(damaged) })
}

/// The patient whose cards belong to this plan. At most one card of each other patient is decrypted, and only once while the folder
/// is open; the signatures are checked of the patient's own cards alone.
pub(crate) fn patient_of_plan(folder: &DataFolder, plan: PlanId) -> ActionResult<Option<Patient>> {
    let keys = lock::unlocked_keys(folder)?;
    let Some(id) = plan_holders::find(folder, keys, plan)? else { return Ok(None) };
    let Some(row) = read(folder, |view| table::patient::get(view, id))? else { return Ok(None) };
    Ok(Some(with_cards(folder, keys, &row)?).filter(|patient| patient.plan() == Some(plan)))
}

/// Everything that was received from a patient.
///
/// # Errors
/// [`Failure::RecordDamaged`] if a summary does not open.
pub(crate) fn summaries(folder: &DataFolder, patient: &Patient) -> ActionResult<Vec<Summary>> {
    let (summaries, damaged) = readable_summaries(folder, patient)?;
    if damaged == 0 { Ok(summaries) } else { Err(Failure::RecordDamaged { code: patient.code.clone() }) }
}

/// What was received from a patient as far as it opens, and the number of summaries that do not.
pub(crate) fn readable_summaries(folder: &DataFolder, patient: &Patient) -> ActionResult<(Vec<Summary>, usize)> {
    let bodies = bodies(folder, patient)?;
    let all = bodies.len();
    let summaries: Vec<Summary> = bodies.iter().filter_map(|body| format::summary::read(body.as_ref()?).ok()).collect();
    let damaged = all - summaries.len();
    Ok((summaries, damaged))
}

/// The contents of everything that was received from a patient, each with its log and number.
///
/// # Errors
/// [`Failure::RecordDamaged`] if a summary does not open.
pub(crate) fn packed_summaries(folder: &DataFolder, patient: &Patient) -> ActionResult<Vec<Body>> {
    let all: Option<Vec<Body>> = bodies(folder, patient)?.into_iter().collect();
    all.ok_or_else(|| Failure::RecordDamaged { code: patient.code.clone() })
}

/// The summaries received from a patient; `None` for each that does not open.
fn bodies(folder: &DataFolder, patient: &Patient) -> ActionResult<Vec<Option<Body>>> {
    let keys = lock::unlocked_keys(folder)?;
    let received = read(folder, |view| table::received::of_patient(view, patient.row))?;
    Ok(received.iter().map(|row| open_body(keys, patient, row)).collect())
}

/// The contents of a received summary of this patient; `None` if it does not open.
pub(super) fn open_body(keys: &Keys, patient: &Patient, row: &table::received::Received) -> Option<Body> {
    let place = sealed::received_place(row.id, row.patient, &row.log, row.counter);
    let packed = rows::open(keys, &place, &row.sealed).ok()?;
    let log = sealed::log_of(row)?;
    // The contents say by their keys of which version they are.
    let version = format::summary::VERSION;
    Some(Body { plan: patient.plan()?, log, counter: row.counter, packed, version })
}

pub(super) fn read<T>(folder: &DataFolder, look: impl FnOnce(&View<'_>) -> Result<T, StoreError>) -> ActionResult<T> {
    folder.home.store().read(look).map_err(refuse::store(folder.home.dir()))
}

pub(super) fn records_damaged(number: usize) -> Failure {
    Failure::RecordsDamaged { n: u16::try_from(number).unwrap_or(u16::MAX) }
}

fn with_cards(folder: &DataFolder, keys: &Keys, row: &table::patient::Patient) -> ActionResult<Patient> {
    let issued = read(folder, |view| table::issued::of_patient(view, row.id))?;
    let code = || open_code(keys, row).map_or_else(|| records_damaged(1), |code| Failure::RecordDamaged { code });
    open_patient(folder, keys, row, &issued).ok_or_else(code)
}

fn open_patient(
    folder: &DataFolder,
    keys: &Keys,
    row: &table::patient::Patient,
    issued: &[table::issued::Issued],
) -> Option<Patient> {
    let plain = rows::open(keys, &sealed::patient_place(row.id), &row.sealed).ok()?;
    let (code, name, facts) = read_patient(&plain)?;
    let cards = issued.iter().map(|row| open_card(folder, keys, row).map(|card| (card.plan.header.revision, card)));
    let cards: BTreeMap<u16, Arc<Card>> = cards.collect::<Option<_>>()?;
    let mut plans = cards.values().map(|card| card.plan.header.id);
    let first = plans.next();
    plans.all(|plan| Some(plan) == first).then_some(Patient { row: row.id, code, name, facts, cards })
}

/// Whether a patient's row was sealed with these keys, also by the older sealing.
pub(crate) fn is_sealed_with(keys: &Keys, row: &table::patient::Patient) -> bool {
    open_code(keys, row).is_some() || rows::open_version_1(keys, "patient", &row.id.to_be_bytes(), &row.sealed).is_ok()
}

/// The code in a patient's row; `None` if these keys do not open it.
fn open_code(keys: &Keys, row: &table::patient::Patient) -> Option<String> {
    let plain = rows::open(keys, &sealed::patient_place(row.id), &row.sealed).ok()?;
    read_patient(&plain).map(|(code, ..)| code)
}

/// The card of a row; each is opened and checked once while the folder is open. It may be signed with former keys of the clinic, or with
/// later ones than those that are unlocked: that it is the clinic's own, the row's sealing says.
fn open_card(folder: &DataFolder, keys: &Keys, row: &table::issued::Issued) -> Option<Arc<Card>> {
    let mut opened = folder.issued_cards.borrow_mut();
    if let Some(known) = opened.get(&row.id).filter(|known| known.row == *row) {
        return Some(known.card.clone());
    }
    let bytes = card_bytes(keys, row)?;
    let card = Arc::new(vault::card::verify(format::card::open(&bytes).ok()?, None).ok()?);
    // Rows of the first sealing were not bound to their columns.
    if u32::from(card.plan.header.revision) != row.revision {
        return None;
    }
    opened.insert(row.id, OpenedCard { row: row.clone(), card: card.clone() });
    Some(card)
}

/// The signed bytes of a card.
pub(crate) fn card_bytes(keys: &Keys, row: &table::issued::Issued) -> Option<Vec<u8>> {
    rows::open(keys, &sealed::issued_place(row.id, row.patient, row.revision), &row.sealed).ok()
}

/// A patient's row: a line with the code, one with the name, and those of [`format::facts`] for what was ticked. None of them contains
/// a line break itself. Lines at the end that are empty are left out, as in rows from before there were facts.
pub(crate) fn write_patient(code: &str, name: Option<&str>, facts: &PatientFacts) -> Vec<u8> {
    let text = format!("{code}\n{}\n{}", name.unwrap_or_default(), format::facts::write(facts));
    text.trim_end_matches('\n').as_bytes().to_vec()
}

fn read_patient(plain: &[u8]) -> Option<(String, Option<String>, PatientFacts)> {
    let mut lines = std::str::from_utf8(plain).ok()?.splitn(3, '\n');
    let code = lines.next()?.to_owned();
    let name = lines.next().filter(|name| !name.is_empty()).map(str::to_owned);
    Some((code, name, format::facts::read(lines.next().unwrap_or_default())))
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
        crate::clinic::patients::add(&mut folder, &moment, &AddPatientRequest { code: "K17".into(), name: None })
            .expect("a new code");
        let today = moment.now.date();
        let example = format::plan_file::example(today + chrono::Duration::days(42));
        let prescription = format::plan_file::read(&example, today).expect("the example");
        let request = IssueRequest { code: "K17".into(), prescription };
        issuing::issue(&mut folder, &moment, &request, Some(&dir.path().join("card"))).expect("a good plan");
        let card = || patient(&folder, "K17").expect("added").cards[&1].clone();
        let first = card();
        assert!(Arc::ptr_eq(&first, &card()), "not opened again");
        assert!(
            Arc::ptr_eq(&first, &patients(&folder).expect("one").patients[0].as_ref().expect("whole").cards[&1]),
            "in the list neither"
        );
        let issued = read(&folder, |view| table::issued::oldest_of_each_above(view, 0)).expect("readable").swap_remove(0);
        let changed = table::issued::Issued { sealed: b"damaged".to_vec(), ..issued };
        let keys = lock::unlocked_keys(&folder).expect("unlocked");
        assert!(open_card(&folder, keys, &changed).is_none(), "the number of a row says nothing about its bytes");
    }
}
