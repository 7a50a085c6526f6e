//! The draft of the next plan: what it starts from, how it is stored while it is edited, and how the final plan is made from it.

use super::rows::{self, Patient};
use super::sealed::{self, Sealer};
use super::{issuing, lock, numbering, own_catalogue, reviewing};
use crate::{ActionResult, DataFolder, Moment, refuse};
use exercises::alarm::ClearedAlarm;
use exercises::catalogue::{Catalogue, Exercise, ExerciseId};
use exercises::draft::{self, Concern, Draft, Kept, PatientFacts, Unread, UsedNumbers, keep_rhythms};
use exercises::norms::Norms;
use exercises::plan::check;
use exercises::plan::{Header, Item, Plan, Prescription};
use exercises::review::ReviewAlarm;
use std::collections::{BTreeMap, BTreeSet};
use store::{StoreError, Tx, table};
use wire::Failure;
use wire::clinic::{AskKeep, PlanCheck, PlanDraft};

/// The draft of the next revision: the stored one if somebody was already editing it, otherwise the last plan carried over, or an
/// empty plan for a new patient.
///
/// # Errors
/// [`Failure::RecordDamaged`] if a stored draft cannot be opened or read, and any failure to read the patient.
pub fn draft(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<PlanDraft> {
    let patient = rows::patient(folder, code)?;
    let review = reviewing::review(folder, &patient, &Norms::built_in(), Some(moment.now.date()))?;
    let alarms = review.as_ref().map(|review| review.alarms.iter().filter(|alarm| !alarm.cleared).cloned().collect());
    let fresh = next(moment, &patient);
    let last = patient.newest().map(|card| &card.plan.header);
    let replaces = last.map(|last| last.revision);
    let carried = fresh.prescription.items.clone();
    let kept = kept(folder, &patient)?.filter(|kept| kept.replaces == replaces);
    let (draft, unread, left_on) = match kept {
        Some(kept) => (draft::resume(&kept, &fresh), kept.unread, Some(kept.on)),
        None => (fresh, Unread::default(), None),
    };
    Ok(PlanDraft {
        replaces,
        revision: numbering::next_revision(folder, &patient)?,
        start: last.map_or(draft.today, |last| last.start),
        draft,
        unread,
        left_on,
        exercises: own_catalogue::catalogue(folder, &patient)?.exercises,
        prescribed: prescribed(folder)?,
        facts: patient.facts,
        suggestions: review.map(|review| review.items).unwrap_or_default(),
        carried,
        alarms: alarms.unwrap_or_default(),
    })
}

/// To how many patients each exercise was ever prescribed. Patients whose record is damaged are not counted.
fn prescribed(folder: &DataFolder) -> ActionResult<Vec<(ExerciseId, u32)>> {
    let mut counts: BTreeMap<ExerciseId, u32> = BTreeMap::new();
    for patient in rows::patients(folder)?.patients.into_iter().flatten() {
        let items = patient.cards.values().flat_map(|card| &card.plan.prescription.items);
        for exercise in items.map(|item| &item.exercise).collect::<BTreeSet<_>>() {
            *counts.entry(exercise.clone()).or_default() += 1;
        }
    }
    Ok(counts.into_iter().collect())
}

/// Stores what was ticked for the patient with this code.
///
/// # Errors
/// [`Failure::ClinicLocked`], [`Failure::NoSuchPatient`], or any failure to write it.
pub fn put_facts(folder: &mut DataFolder, code: &str, facts: &PatientFacts) -> ActionResult<()> {
    let patient = rows::patient(folder, code)?;
    keep_facts(folder, &patient, facts)
}

/// What was ticked for the patient with this code.
///
/// # Errors
/// The same as [`draft()`].
pub fn facts(folder: &DataFolder, code: &str) -> ActionResult<PatientFacts> {
    Ok(rows::patient(folder, code)?.facts)
}

/// Each item's exercise with what it touches of what was ticked for the patient.
///
/// # Errors
/// The same as [`draft()`].
pub fn concerns(folder: &DataFolder, code: &str, prescription: &Prescription) -> ActionResult<Vec<(Exercise, Concern)>> {
    let patient = rows::patient(folder, code)?;
    let catalogue = reviewing::catalogue(folder, &patient);
    let of_item = |item: &Item| {
        let exercise = catalogue.get(&item.exercise)?;
        let concerns = patient.facts.concerns(exercise, item.rung.as_ref());
        Some(concerns.into_iter().map(|concern| (exercise.clone(), concern)).collect::<Vec<_>>())
    };
    Ok(prescription.items.iter().filter_map(of_item).flatten().collect())
}

/// Stores in the patient's row what was ticked, if that has changed.
fn keep_facts(folder: &mut DataFolder, patient: &Patient, facts: &PatientFacts) -> ActionResult<()> {
    if patient.facts == *facts {
        return Ok(());
    }
    let plain = rows::write_patient(&patient.code, patient.name.as_deref(), facts);
    sealed::change(folder, |tx, sealer| {
        let before = table::patient::get(tx, patient.row)?.map(|row| row.sealed);
        let sealed = sealer.replace(patient.row, &sealed::patient_place(patient.row), before.as_deref(), &plain);
        table::patient::update(tx, patient.row, &sealed)
    })
}

/// Stores a draft encrypted, in place of the previous one, and what was ticked for the patient. If the draft's revision was issued in the
/// meantime, only the latter is stored.
///
/// # Errors
/// [`Failure::ClinicLocked`], [`Failure::NoSuchPatient`], or any failure to write it.
pub fn keep(folder: &mut DataFolder, moment: &Moment, request: AskKeep) -> ActionResult<()> {
    let patient = rows::patient(folder, &request.code)?;
    let AskKeep { code: _, draft, replaces, unread, facts } = request;
    keep_facts(folder, &patient, &facts)?;
    if replaces != patient.newest().map(|card| card.plan.header.revision) {
        return Ok(());
    }
    let kept = Kept { draft, replaces, unread, on: moment.now.date() };
    let plain = format::draft::write(&kept).map_err(refuse::internal)?;
    sealed::change(folder, |tx, sealer| {
        let before = table::draft::get(tx, patient.row)?;
        let sealed = sealer.replace(patient.row, &sealed::draft_place(patient.row), before.as_deref(), &plain);
        table::draft::put(tx, patient.row, &sealed)
    })
}

/// Deletes the stored draft, and starts a new one.
///
/// # Errors
/// The same as [`draft()`].
pub fn discard(folder: &mut DataFolder, moment: &Moment, code: &str) -> ActionResult<PlanDraft> {
    let patient = rows::patient(folder, code)?.row;
    sealed::change(folder, |tx, sealer| remove(tx, sealer, patient))?;
    folder.home.store().settle().map_err(refuse::store(folder.home.dir()))?;
    draft(folder, moment, code)
}

/// Removes a patient's draft, if there is one.
pub(super) fn remove(tx: &Tx<'_>, sealer: &mut Sealer<'_>, patient: i64) -> Result<(), StoreError> {
    let before = table::draft::get(tx, patient)?;
    sealer.removed(patient, &sealed::draft_place(patient), before.as_deref());
    table::draft::remove(tx, patient)
}

fn kept(folder: &DataFolder, patient: &Patient) -> ActionResult<Option<Kept>> {
    let keys = lock::unlocked_keys(folder)?;
    let damaged = || Failure::RecordDamaged { code: patient.code.clone() };
    let sealed = rows::read(folder, |view| table::draft::get(view, patient.row))?;
    let open = |sealed: Vec<u8>| {
        let plain = vault::rows::open(keys, &sealed::draft_place(patient.row), &sealed).ok()?;
        format::draft::read(&plain).ok()
    };
    sealed.map(|sealed| open(sealed).ok_or_else(damaged)).transpose()
}

fn next(moment: &Moment, patient: &Patient) -> Draft {
    let today = moment.now.date();
    let used = patient
        .cards
        .values()
        .map(|card| UsedNumbers::of(&card.plan.prescription))
        .fold(UsedNumbers::default(), UsedNumbers::and);
    patient.newest().map_or_else(|| draft::first(today), |card| draft::next(&card.plan, used, today))
}

/// What is to be said about a prescription before it is issued to the patient with `code`: the problems that prevent it or, if there are
/// none, how the card will be handed over.
pub fn check(folder: &DataFolder, moment: &Moment, code: &str, prescription: &Prescription) -> ActionResult<PlanCheck> {
    let patient = rows::patient(folder, code)?;
    let catalogue = own_catalogue::catalogue(folder, &patient)?;
    let plan = finished(folder, moment, &patient, &catalogue, prescription)?;
    let problems = check::problems(&plan, &catalogue);
    let handover = if problems.is_empty() { issuing::handover(folder, &patient, plan, &catalogue) } else { None };
    Ok(PlanCheck { problems, handover })
}

/// The plan as it will be issued to the patient from this catalogue, with its header and the revisions of its exercises.
///
/// # Errors
/// [`Failure::PlanRefused`] with every problem that prevents it from being issued.
pub(crate) fn finish(
    folder: &DataFolder,
    moment: &Moment,
    patient: &Patient,
    catalogue: &Catalogue,
    prescription: &Prescription,
) -> ActionResult<Plan> {
    let mut plan = finished(folder, moment, patient, catalogue, prescription)?;
    plan.header.revision = numbering::next_revision(folder, patient)?;
    let problems = check::problems(&plan, catalogue);
    if problems.is_empty() { Ok(plan) } else { Err(Failure::PlanRefused(problems)) }
}

fn finished(
    folder: &DataFolder,
    moment: &Moment,
    patient: &Patient,
    catalogue: &Catalogue,
    prescription: &Prescription,
) -> ActionResult<Plan> {
    let (clinic, today) = (lock::name(folder)?, moment.now.date());
    let header = match patient.newest() {
        Some(card) => card.plan.header.next(&clinic, today),
        None => Header::first(vault::random::plan_id(), &clinic, today),
    };
    let header = header.with_phone(lock::phone(folder)?);
    let mut plan = Plan { header, prescription: prescription.clone() };
    plan.clean_texts();
    if let Some(card) = patient.newest() {
        keep_rhythms(&mut plan.prescription, &card.plan.prescription, today);
    }
    own_catalogue::name_fully(folder, catalogue, &mut plan.prescription)?;
    as_in(catalogue, &mut plan.prescription);
    name_fully(folder, patient, &mut plan.prescription.cleared)?;
    Ok(plan)
}

/// Gives each item the revision that its exercise has in the catalogue, and the first level if it names none.
pub(super) fn as_in(catalogue: &Catalogue, prescription: &mut Prescription) {
    for item in &mut prescription.items {
        if let Some(exercise) = catalogue.get(&item.exercise) {
            item.content = exercise.revision;
            let first = exercise.first_rung().map(|rung| rung.id.clone());
            item.rung = item.rung.take().or(first);
        }
    }
}

/// Adds the sign and day of each alarm to clear that only has a name, as a plan file does, if it was received: then the card clears no
/// other alarm of that name.
fn name_fully(folder: &DataFolder, patient: &Patient, cleared: &mut [ClearedAlarm]) -> ActionResult<()> {
    if cleared.iter().all(|one| one.seen.is_some()) {
        return Ok(());
    }
    let received =
        reviewing::review(folder, patient, &Norms::built_in(), None)?.map(|review| review.alarms).unwrap_or_default();
    for one in cleared.iter_mut().filter(|one| one.seen.is_none()) {
        let known = received.iter().find(|alarm| alarm.id == one.id);
        *one = known.map_or(*one, ReviewAlarm::clearing);
    }
    Ok(())
}
