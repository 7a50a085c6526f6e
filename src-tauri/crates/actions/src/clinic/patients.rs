//! The list of patients.

use super::rows::{self, PATIENT, Patient};
use super::{lock, reviewing};
use crate::{ActionResult, DataFolder, refuse};
use exercises::norms::Norms;
use exercises::plan::MAX_NAME;
use store::{StoreError, table};
use wire::Failure;
use wire::clinic::{AddPatientRequest, MAX_CODE, PatientLine};

/// All patients: those with alarms first, then by code.
pub fn list(folder: &DataFolder) -> ActionResult<Vec<PatientLine>> {
    let patients = rows::patients(folder)?;
    let mut lines = patients.iter().map(|patient| line(folder, patient)).collect::<ActionResult<Vec<PatientLine>>>()?;
    lines.sort_by_key(|line| line.alarms == 0);
    Ok(lines)
}

fn line(folder: &DataFolder, patient: &Patient) -> ActionResult<PatientLine> {
    let review = reviewing::review(folder, patient, &Norms::built_in())?;
    let alarms = review.as_ref().map_or(0, |review| review.alarms.iter().filter(|alarm| !alarm.cleared).count());
    Ok(PatientLine {
        code: patient.code.clone(),
        name: patient.name.clone(),
        plan: patient.newest().map(|card| (card.plan.header.revision, card.plan.prescription.review)),
        covered_until: review.and_then(|review| review.covered).map(|(_, until)| until),
        alarms: alarms as u16,
    })
}

/// Adds a patient with a code. The name is stored only here; it is never on a card or in a summary.
pub fn add(folder: &mut DataFolder, request: &AddPatientRequest) -> ActionResult<Vec<PatientLine>> {
    let code = request.code.trim().to_owned();
    let fits = (1..=MAX_CODE).contains(&code.chars().count()) && code.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
    if !fits {
        return Err(Failure::CodeBad);
    }
    let name = request.name.as_deref().map(str::trim).filter(|name| !name.is_empty());
    if name.is_some_and(|name| name.chars().count() > MAX_NAME || name.chars().any(char::is_control)) {
        return Err(Failure::TextUnfit { most: MAX_NAME as u16 });
    }
    if rows::is_taken(folder, &code)? {
        return Err(Failure::CodeTaken { code });
    }
    let plain = rows::write_patient(&code, name);
    let dir = folder.dir();
    lock::unlocked_keys(folder)?;
    let DataFolder { home, keys, .. } = folder;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let kept = home.store_mut().transaction(|tx| {
        table::patient::insert(tx, |id| Ok::<_, StoreError>(vault::rows::seal(keys, PATIENT, &rows::bound(id), &plain)))
    });
    kept.map_err(refuse::store(&dir))?;
    list(folder)
}
