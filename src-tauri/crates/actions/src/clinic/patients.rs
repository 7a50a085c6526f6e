//! The list of patients.

use super::rows::{self, PATIENT, Patient};
use super::{door, reviewing};
use crate::{Answer, House, refuse};
use exercises::norms::Norms;
use exercises::plan::MAX_NAME;
use store::{StoreError, table};
use wire::Failure;
use wire::clinic::{AddPatient, MAX_CODE, PatientLine};

/// All patients: those with alarms first, then by code.
pub fn list(house: &House) -> Answer<Vec<PatientLine>> {
    let mut lines: Vec<PatientLine> = rows::patients(house)?.iter().map(|patient| line(house, patient)).collect();
    lines.sort_by_key(|line| line.alarms == 0);
    Ok(lines)
}

fn line(house: &House, patient: &Patient) -> PatientLine {
    let review = reviewing::review(house, patient, &Norms::built_in());
    let alarms = review.as_ref().map_or(0, |review| review.alarms.iter().filter(|alarm| !alarm.cleared).count());
    PatientLine {
        code: patient.code.clone(),
        name: patient.name.clone(),
        plan: patient.newest().map(|card| (card.plan.header.revision, card.plan.prescription.review)),
        covered_until: review.and_then(|review| review.covered).map(|(_, until)| until),
        alarms: alarms as u16,
    }
}

/// Adds a patient under a code. The name stays in this store; it is never on a card or in a summary.
pub fn add(house: &mut House, ask: &AddPatient) -> Answer<Vec<PatientLine>> {
    let code = ask.code.trim().to_owned();
    let fits = (1..=MAX_CODE).contains(&code.chars().count()) && code.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
    if !fits {
        return Err(Failure::CodeBad);
    }
    let name = ask.name.as_deref().map(str::trim).filter(|name| !name.is_empty());
    if name.is_some_and(|name| name.chars().count() > MAX_NAME || name.chars().any(char::is_control)) {
        return Err(Failure::TextUnfit { most: MAX_NAME as u16 });
    }
    if rows::patients(house)?.iter().any(|patient| patient.code.eq_ignore_ascii_case(&code)) {
        return Err(Failure::CodeTaken { code });
    }
    let plain = rows::write_patient(&code, name);
    let dir = house.dir();
    door::open(house)?;
    let House { home, keys, .. } = house;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let kept = home.store_mut().transaction(|tx| {
        table::patient::insert(tx, |id| Ok::<_, StoreError>(vault::rows::seal(keys, PATIENT, &rows::bound(id), &plain)))
    });
    kept.map_err(refuse::store(&dir))?;
    list(house)
}
