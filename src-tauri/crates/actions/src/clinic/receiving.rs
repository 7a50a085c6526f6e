//! Receiving sealed summaries.

use super::incoming::{self, IncomingSummary};
use super::lock;
use super::rows::{self, Patient, RECEIVED};
use crate::{ActionResult, DataFolder, platform, refuse};
use exercises::summary::Summary;
use exercises::summary::union::{self, ArrivalEffect};
use store::{StoreError, table};
use vault::summary::OpenFault;
use wire::Failure;
use wire::clinic::{Outcome, Receipt};

/// Receives sealed files and pictures of frames, in any order, and returns one receipt for each summary. A summary that is refused
/// changes nothing and does not affect the others. A summary with a missing frame is not stored at all.
///
/// # Errors
/// Only if the clinic's own store cannot be used.
pub fn receive(folder: &mut DataFolder, files: Vec<(String, ActionResult<Vec<u8>>)>) -> ActionResult<Vec<Receipt>> {
    lock::unlocked_keys(folder)?;
    let receipts = incoming::join_frames(files).into_iter().map(|IncomingSummary { file, sealed }| {
        let outcome = sealed.and_then(|bytes| one(folder, &file, &bytes)).unwrap_or_else(Outcome::Refused);
        Receipt { file, outcome }
    });
    Ok(receipts.collect())
}

/// Decodes files as the window sends them.
pub fn from_window(files: &[(String, String)]) -> Vec<(String, ActionResult<Vec<u8>>)> {
    files.iter().map(|(name, base64)| (name.clone(), platform::from_base64(base64))).collect()
}

fn one(folder: &mut DataFolder, file: &str, sealed: &[u8]) -> ActionResult<Outcome> {
    let keys = lock::unlocked_keys(folder)?;
    let mut holder = Ok(None);
    let opened = vault::summary::open(sealed, keys, |plan| {
        holder = rows::patient_of_plan(folder, plan);
        let patient = holder.as_ref().ok().and_then(Option::as_ref);
        patient.and_then(Patient::newest).map(|card| card.pairing_secret.clone())
    });
    let holder = holder?;
    let summary = opened.map_err(|fault| refusal(file, fault))?;
    let patient = &holder.ok_or(Failure::SummaryUnknownPlan)?;
    let received = rows::summaries(folder, patient)?;
    let gain = union::arrival_effect(&received, &summary);
    if gain != ArrivalEffect::Known {
        let taken = |other: &Summary| (other.log, other.counter) == (summary.log, summary.counter);
        if received.iter().any(taken) {
            return Err(Failure::SummaryNumberTaken);
        }
        keep(folder, patient, &summary)?;
    }
    let code = patient.code.clone();
    Ok(match gain {
        ArrivalEffect::New { days } => Outcome::New { code, days },
        ArrivalEffect::Filled { days } => Outcome::Filled { code, days },
        ArrivalEffect::Known => Outcome::Known { code },
    })
}

fn keep(folder: &mut DataFolder, patient: &Patient, summary: &Summary) -> ActionResult<()> {
    let body = format::summary::write(summary).map_err(refuse::internal)?;
    let dir = folder.dir();
    let DataFolder { home, keys, .. } = folder;
    let Some(keys) = keys.as_ref() else { return Err(Failure::ClinicLocked) };
    let kept = home.store_mut().transaction(|tx| {
        table::received::insert(tx, patient.row, &summary.log.0, summary.counter, |id| {
            Ok::<_, StoreError>(vault::rows::seal(keys, RECEIVED, &rows::bound(id), &body.packed))
        })
    });
    kept.map(drop).map_err(refuse::store(&dir))
}

fn refusal(file: &str, fault: OpenFault) -> Failure {
    use format::summary::SummaryFault;
    match fault {
        OpenFault::NotSealed | OpenFault::UnderPassphrase | OpenFault::Contents(SummaryFault::NotASummary) => {
            Failure::SummaryForeign
        }
        OpenFault::TooBig { most } | OpenFault::Contents(SummaryFault::TooBig { most }) => {
            Failure::FileTooBig { file: file.to_owned(), most: most as u64 }
        }
        OpenFault::ForAnotherClinic => Failure::SummaryOtherClinic,
        OpenFault::Damaged | OpenFault::Contents(SummaryFault::Cut | SummaryFault::Malformed { .. }) => {
            Failure::SummaryDamaged
        }
        OpenFault::UnknownPlan { .. } => Failure::SummaryUnknownPlan,
        OpenFault::NotFromTheCard { .. } => Failure::SummaryNotFromCard,
        OpenFault::Contents(SummaryFault::NewerVersion { found }) => {
            Failure::SummaryNewer { found, known: format::summary::VERSION }
        }
    }
}
