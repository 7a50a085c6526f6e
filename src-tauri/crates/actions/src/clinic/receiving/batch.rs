//! Takes in a number of decrypted summaries at once: all of them are looked at first, patient by patient, and what is new is written in one
//! transaction.

use super::gathered::Opened;
use super::of_patient::{Arrived, Found, Looked, OfPatient, Said, Stored, ToKeep};
use crate::clinic::rows::{self, Patient};
use crate::clinic::{cases, devices, digests, lock, reviewing, sealed, threads};
use crate::{ActionResult, DataFolder, Moment, refuse};
use chrono::NaiveDate;
use exercises::id::PlanId;
use std::collections::BTreeMap;
use store::table;
use wire::Failure;
use wire::clinic::PatientLine;
use wire::receiving::{Outcome, Receipt};

/// What was found out about all summaries.
struct Looks {
    /// What is said of each summary, in their order, and what of it is to be kept.
    summaries: Vec<(ActionResult<Said>, Option<ToKeep>)>,
    /// The patients' lines of the list, once all that is to be kept is kept.
    lines: Vec<(i64, PatientLine, bool)>,
    /// The store's state by others before anything was read for it.
    state: u32,
}

/// Summaries of a plan that cannot be laid to any patient.
struct Nobody<'b> {
    failure: Failure,
    arrived: Vec<Arrived<'b>>,
}

/// Looks at each summary, keeps those that tell something new, and returns a receipt for each in their order. What is refused changes
/// nothing and does not affect the others. If the store cannot be written, nothing is kept, and all that was new is refused for it.
///
/// # Errors
/// The store is locked.
pub(super) fn take_in(folder: &mut DataFolder, moment: &Moment, incoming: &[Opened]) -> ActionResult<Vec<Receipt>> {
    let today = moment.now.date();
    let Looks { summaries, lines, state } = look_at(folder, today, incoming)?;
    let mut receipts: Vec<Receipt> = Vec::with_capacity(incoming.len());
    let mut to_keep = Vec::new();
    for (Opened { file, .. }, (said, kept)) in incoming.iter().zip(summaries) {
        let (outcome, notices) = said.unwrap_or_else(|failure| (Outcome::Refused(failure), Vec::new()));
        receipts.push(Receipt { file: file.clone(), outcome, notices });
        to_keep.extend(kept);
    }
    match keep(folder, today, &to_keep) {
        Ok(()) => keep_lines(folder, today, lines, state),
        Err(failure) => {
            let new = |receipt: &&mut Receipt| matches!(receipt.outcome, Outcome::New { .. } | Outcome::Filled { .. });
            for receipt in receipts.iter_mut().filter(new) {
                (receipt.outcome, receipt.notices) = (Outcome::Refused(failure.clone()), Vec::new());
            }
        }
    }
    Ok(receipts)
}

fn look_at(folder: &DataFolder, today: NaiveDate, incoming: &[Opened]) -> ActionResult<Looks> {
    let keys = lock::unlocked_keys(folder)?;
    let state = folder.home.store().state_by_others().map_err(refuse::store(folder.home.dir()))?;
    let mut by_plan: BTreeMap<PlanId, Vec<Arrived<'_>>> = BTreeMap::new();
    let mut summaries: Vec<(ActionResult<Said>, Option<ToKeep>)> = Vec::with_capacity(incoming.len());
    for (place, Opened { file, unsealed, .. }) in incoming.iter().enumerate() {
        let failure = match unsealed {
            Err(failure) => failure.clone(),
            Ok(unsealed) => {
                by_plan.entry(unsealed.plan()).or_default().push(Arrived { place, file, unsealed });
                // Stands until the patient's turn has come.
                Failure::SummaryUnknownPlan
            }
        };
        summaries.push((Err(failure), None));
    }
    let jobs = by_plan.into_iter().map(|(plan, arrived)| of_patient(folder, plan, arrived));
    let found = threads::each(jobs, |job| match job {
        Ok(of_patient) => of_patient.look_at(keys, today),
        Err(nobody) => refused(&nobody),
    });
    let mut lines = Vec::new();
    for Found { looked, line } in found {
        lines.extend(line);
        looked.into_iter().for_each(|Looked { place, said, to_keep }| summaries[place] = (said, to_keep));
    }
    Ok(Looks { summaries, lines, state })
}

/// Keeps the lines of the list, unless somebody else has changed the store meanwhile: the next list then opens nobody's summaries for
/// what was received. That they cannot be stored is no reason to refuse anything.
fn keep_lines(folder: &mut DataFolder, today: NaiveDate, lines: Vec<(i64, PatientLine, bool)>, state: u32) {
    if lines.is_empty() || folder.home.store().state_by_others().ok() != Some(state) {
        return;
    }
    let mut known = folder.known_lines.borrow_mut();
    known.hold_for(state);
    lines.into_iter().for_each(|(row, line, lasts)| known.keep(row, line, today, lasts));
    drop(known);
    let _ = digests::store(folder);
}

/// What came from the patient to whom the plan belongs, with what is stored of them; or why it is nobody's.
fn of_patient<'b>(
    folder: &'b DataFolder,
    plan: PlanId,
    arrived: Vec<Arrived<'b>>,
) -> Result<OfPatient<'b>, Box<Nobody<'b>>> {
    match rows::patient_of_plan(folder, plan).and_then(|patient| patient.ok_or(Failure::SummaryUnknownPlan)) {
        Ok(patient) => {
            let (catalogue, stored) = (reviewing::catalogue(folder, &patient), stored(folder, &patient));
            Ok(OfPatient { patient, catalogue, stored, arrived })
        }
        Err(failure) => Err(Box::new(Nobody { failure, arrived })),
    }
}

fn refused(Nobody { failure, arrived }: &Nobody<'_>) -> Found {
    let one = |one: &Arrived<'_>| Looked { place: one.place, said: Err(failure.clone()), to_keep: None };
    Found { looked: arrived.iter().map(one).collect(), line: None }
}

fn stored(folder: &DataFolder, patient: &Patient) -> ActionResult<Stored> {
    let received = rows::read(folder, |view| table::received::of_patient(view, patient.row))?;
    let devices = devices::known_of(folder, patient, received.iter().filter_map(sealed::log_of))?;
    let closings = cases::closings(folder, patient.row, &patient.code)?;
    Ok(Stored { received, devices, closings })
}

/// Writes what is to be kept, all of it or nothing.
fn keep(folder: &mut DataFolder, today: NaiveDate, all: &[ToKeep]) -> ActionResult<()> {
    if all.is_empty() {
        return Ok(());
    }
    sealed::change(folder, |tx, sealer| {
        all.iter().try_for_each(|ToKeep { patient, log, counter, packed, devices }| {
            devices::note(tx, sealer, *patient, devices, *log, today)?;
            let place = |id| sealed::received_place(id, *patient, &log.0, *counter);
            table::received::insert(tx, *patient, &log.0, *counter, |id| Ok(sealer.seal(*patient, &place(id), packed)))
                .map(drop)
        })
    })
}
