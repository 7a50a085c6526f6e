//! A patient's case: closing it and opening it again, another code or name, and the plans that were issued.

use super::rows::{self, Patient};
use super::sealed::{self, Sealer};
use super::{clinicians, lock, patients, reviewing};
use crate::patient::plans;
use crate::{ActionResult, DataFolder, Moment};
use exercises::catalogue::Exercise;
use exercises::closing::{CloseReason, Closing, MAX_CLOSINGS, MAX_WORDS, in_force};
use exercises::plain_text::is_hidden;
use exercises::plan::Plan;
use format::case::Case;
use store::{StoreError, Tx, table};
use wire::Failure;
use wire::cases::{CasePage, CloseRequest, Held, RenameRequest};

/// A patient's case, with the plans that were issued, the newest one first.
///
/// # Errors
/// [`Failure::ClinicLocked`]; [`Failure::NoSuchPatient`]; [`Failure::RecordDamaged`] if one of the patient's cards, or the case, does not
/// open, and [`Failure::RecordsDamaged`] if the patient's own row may be one that does not; any failure to read the store.
pub fn page(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<CasePage> {
    let patient = rows::patient(folder, code)?;
    let Case { closings, issued_by, .. } = case(folder, patient.row, &patient.code)?;
    let issued: Vec<Plan> = patient.cards.values().rev().map(|card| card.plan.clone()).collect();
    let known = reviewing::catalogue(folder, &patient);
    let mut exercises: Vec<Exercise> = Vec::new();
    for exercise in issued.iter().flat_map(|plan| plans::exercises_of(plan, &known)) {
        if exercises.iter().all(|other| other.id != exercise.id) {
            exercises.push(exercise);
        }
    }
    let held = held(folder, &patient)?;
    let Patient { code, name, .. } = patient;
    Ok(CasePage { code, name, today: moment.now.date(), closings, plans: issued, issued_by, exercises, held })
}

/// How much there is of a patient.
fn held(folder: &DataFolder, patient: &Patient) -> ActionResult<Held> {
    let many = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    rows::read(folder, |view| {
        Ok(Held {
            plans: many(patient.cards.len()),
            summaries: many(table::received::of_patient(view, patient.row)?.len()),
            findings: many(table::visit::of_patient(view, patient.row)?.len()),
            draft: table::draft::get(view, patient.row)?.is_some(),
        })
    })
}

/// Closes a patient's case today. Nothing is erased.
///
/// # Errors
/// [`Failure::CaseClosed`] if it is closed; [`Failure::CaseWordsMissing`], [`Failure::TextUnfit`], [`Failure::CaseClosedTooOften`].
pub fn close(folder: &mut DataFolder, moment: &Moment, request: &CloseRequest) -> ActionResult<CasePage> {
    let patient = rows::patient(folder, &request.code)?;
    let mut case = case(folder, patient.row, &patient.code)?;
    if in_force(&case.closings).is_some() {
        return Err(Failure::CaseClosed { code: patient.code });
    }
    let words = request.words.trim();
    if words.chars().count() > MAX_WORDS || words.chars().any(|c| c.is_control() || is_hidden(c)) {
        return Err(Failure::TextUnfit { most: MAX_WORDS as u16 });
    }
    if request.reason == CloseReason::Other && words.is_empty() {
        return Err(Failure::CaseWordsMissing);
    }
    if case.closings.len() >= MAX_CLOSINGS {
        return Err(Failure::CaseClosedTooOften { most: MAX_CLOSINGS as u8 });
    }
    let (on, reason) = (moment.now.date(), request.reason);
    let by = clinicians::own_name(folder)?;
    case.closings.push(Closing { on, reason, words: words.to_owned(), reopened: None, by });
    sealed::change(folder, |tx, sealer| put(tx, sealer, patient.row, &case))?;
    page(folder, moment, &patient.code)
}

/// Opens a closed case again.
///
/// # Errors
/// [`Failure::CaseOpen`] if it is open.
pub fn reopen(folder: &mut DataFolder, moment: &Moment, code: &str) -> ActionResult<CasePage> {
    let patient = rows::patient(folder, code)?;
    let mut case = case(folder, patient.row, &patient.code)?;
    match case.closings.last_mut().filter(|closing| closing.reopened.is_none()) {
        Some(closing) => closing.reopened = Some(moment.now.date()),
        None => return Err(Failure::CaseOpen { code: patient.code }),
    }
    sealed::change(folder, |tx, sealer| put(tx, sealer, patient.row, &case))?;
    page(folder, moment, &patient.code)
}

/// Gives a patient another code, another name, or both. Neither is on a card or in a summary, so plans go on.
///
/// # Errors
/// [`Failure::CodeBad`] and [`Failure::TextUnfit`] for what does not fit; [`Failure::CodeTaken`] if another patient has the code; as for
/// [`page`], and any failure to write the store.
pub fn rename(folder: &mut DataFolder, moment: &Moment, request: &RenameRequest) -> ActionResult<CasePage> {
    let row = rows::patient_row(folder, &request.code)?;
    let patient = rows::patient(folder, &request.code)?;
    let (code, name) = patients::fitting(&request.new_code, request.name.as_deref())?;
    if !code.eq_ignore_ascii_case(&patient.code) && rows::is_taken(folder, &code)? {
        return Err(Failure::CodeTaken { code });
    }
    let plain = rows::write_patient(&code, name.as_deref(), &patient.facts);
    sealed::change(folder, |tx, sealer| {
        let sealed = sealer.replace(row.id, &sealed::patient_place(row.id), Some(&row.sealed), &plain);
        table::patient::update(tx, row.id, &sealed)
    })?;
    page(folder, moment, &code)
}

/// The closings of a patient's case, the first one first.
///
/// # Errors
/// [`Failure::RecordDamaged`] if they cannot be read.
pub(super) fn closings(folder: &DataFolder, patient: i64, code: &str) -> ActionResult<Vec<Closing>> {
    Ok(case(folder, patient, code)?.closings)
}

/// A patient's case as it is stored.
///
/// # Errors
/// [`Failure::RecordDamaged`] if it cannot be read.
pub(super) fn case(folder: &DataFolder, patient: i64, code: &str) -> ActionResult<Case> {
    let keys = lock::unlocked_keys(folder)?;
    let Some(sealed) = rows::read(folder, |view| table::patient_case::get(view, patient))? else {
        return Ok(Case::default());
    };
    let plain = vault::rows::open(keys, &sealed::case_place(patient), &sealed).ok();
    let read = plain.and_then(|plain| format::case::read(&plain));
    read.ok_or_else(|| Failure::RecordDamaged { code: code.to_owned() })
}

/// The case with what the clinician who is in does now, to be stored together with that; `None` if nobody has a name.
pub(super) fn noting_who(
    folder: &DataFolder,
    patient: &Patient,
    note: impl FnOnce(&mut Case, String),
) -> ActionResult<Option<Case>> {
    let Some(name) = clinicians::own_name(folder)? else { return Ok(None) };
    let mut case = case(folder, patient.row, &patient.code)?;
    note(&mut case, name);
    Ok(Some(case))
}

/// Refuses what only an open case takes.
///
/// # Errors
/// [`Failure::CaseClosed`].
pub(super) fn must_be_open(folder: &DataFolder, patient: &Patient) -> ActionResult<()> {
    match in_force(&closings(folder, patient.row, &patient.code)?) {
        Some(_) => Err(Failure::CaseClosed { code: patient.code.clone() }),
        None => Ok(()),
    }
}

/// Stores a case, in the transaction of what is noted in it.
pub(super) fn put(tx: &Tx<'_>, sealer: &mut Sealer<'_>, patient: i64, case: &Case) -> Result<(), StoreError> {
    let before = table::patient_case::get(tx, patient)?;
    let sealed = sealer.replace(patient, &sealed::case_place(patient), before.as_deref(), &format::case::write(case));
    table::patient_case::put(tx, patient, &sealed)
}
