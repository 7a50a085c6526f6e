//! Receiving sealed summaries.

use super::incoming::{self, IncomingSummary};
use super::rows::{self, Patient};
use super::{cases, devices, lock, numbering, reviewing, sealed};
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use exercises::closing::in_force;
use exercises::id::PlanId;
use exercises::plain_text::shown;
use exercises::summary::Summary;
use exercises::summary::union::{self, ArrivalEffect};
use format::devices::Device;
use store::table;
use vault::summary::OpenFault;
use vault::{Keys, PairingSecret};
use wire::Failure;
use wire::clinic::{MAX_FILES, Outcome, Receipt, ReceiptNotice};

/// Sealed summaries as they were found in the files that came, still sealed.
pub struct Incoming(Vec<IncomingSummary>);

/// Finds the summaries in sealed files and pictures of frames, in any order. Needs no data folder: decoding pictures takes its time, in
/// which other actions need the folder.
pub fn find(files: impl IntoIterator<Item = (String, ActionResult<Vec<u8>>)>) -> Incoming {
    Incoming(incoming::join_frames(files))
}

/// Receives sealed files and pictures of frames, as [`find`] and [`take_in`] do.
///
/// # Errors
/// As for [`take_in`].
pub fn receive(
    folder: &mut DataFolder,
    moment: &Moment,
    files: impl IntoIterator<Item = (String, ActionResult<Vec<u8>>)>,
) -> ActionResult<Vec<Receipt>> {
    lock::unlocked_keys(folder)?;
    take_in(folder, moment, find(files))
}

/// Receives summaries and returns one receipt for each. A summary that is refused changes nothing and does not affect the others. A
/// summary with a missing frame is not stored at all.
///
/// # Errors
/// Only if the clinic's own store cannot be used.
pub fn take_in(folder: &mut DataFolder, moment: &Moment, incoming: Incoming) -> ActionResult<Vec<Receipt>> {
    lock::unlocked_keys(folder)?;
    let receipts = incoming.0.into_iter().map(|IncomingSummary { file, sealed }| {
        let done = sealed.and_then(|bytes| one(folder, moment, &file, &bytes));
        let (outcome, notices) = done.unwrap_or_else(|failure| (Outcome::Refused(failure), Vec::new()));
        Receipt { file, outcome, notices }
    });
    Ok(receipts.collect())
}

/// Decodes files as the window sends them, one after the other; of more than [`MAX_FILES`] those beyond are refused undecoded.
pub fn from_window(
    files: impl IntoIterator<Item = (String, String)>,
) -> impl Iterator<Item = (String, ActionResult<Vec<u8>>)> {
    files.into_iter().enumerate().map(|(place, (name, base64))| {
        let too_many = Failure::TooManyFiles { most: MAX_FILES as u8 };
        let bytes = if place < MAX_FILES { platform::from_base64(&base64) } else { Err(too_many) };
        (shown(&name).into_owned(), bytes)
    })
}

/// A summary that opened, and whose it is.
struct Authentic {
    patient: Patient,
    summary: Summary,
}

fn one(folder: &mut DataFolder, moment: &Moment, file: &str, sealed: &[u8]) -> ActionResult<(Outcome, Vec<ReceiptNotice>)> {
    let Authentic { patient, summary } = authentic(folder, file, sealed)?;
    let mut received = rows::summaries(folder, &patient)?;
    let gain = gain(&patient, moment, &received, &summary);
    let mut notices = Vec::new();
    if gain != ArrivalEffect::Known {
        let taken = |other: &Summary| (other.log, other.counter) == (summary.log, summary.counter);
        if received.iter().any(taken) {
            return Err(Failure::SummaryNumberTaken);
        }
        let known = devices::known(folder, &patient, &received)?;
        if !known.is_empty() && known.iter().all(|device| device.log != summary.log) {
            notices.push(ReceiptNotice::NewDevice { device: summary.log });
        }
        received.push(summary.clone());
        reviewing::could_review(folder, &patient, &received)?;
        keep(folder, moment, &patient, &summary, &known)?;
    }
    if let Some(revision) = numbering::unknown(&patient, std::slice::from_ref(&summary)) {
        notices.push(ReceiptNotice::StoreBehind { revision, next: numbering::next_after(&patient, &received)? });
    }
    if let Some(closing) = in_force(&cases::closings(folder, patient.row, &patient.code)?) {
        notices.push(ReceiptNotice::CaseClosed { on: closing.on });
    }
    if let Some(days) = ahead_days(&patient, moment, &summary) {
        notices.push(ReceiptNotice::ClockAhead { days });
    }
    let code = patient.code.clone();
    let outcome = match gain {
        ArrivalEffect::New { days } => Outcome::New { code, days },
        ArrivalEffect::Filled { days } => Outcome::Filled { code, days },
        ArrivalEffect::Known => Outcome::Known { code },
    };
    Ok((outcome, notices))
}

/// What a summary adds, as it is to be read today. One that says only what a clock that was ahead recorded is kept as well.
fn gain(patient: &Patient, moment: &Moment, received: &[Summary], summary: &Summary) -> ArrivalEffect {
    if union::arrival_effect(received, summary) == ArrivalEffect::Known {
        return ArrivalEffect::Known;
    }
    let today = Some(moment.now.date());
    let (known, new) = (reviewing::as_known(patient, received, today), as_known(patient, moment, summary));
    match union::arrival_effect(&known, &new) {
        ArrivalEffect::Known => ArrivalEffect::Filled { days: 0 },
        gain => gain,
    }
}

fn as_known(patient: &Patient, moment: &Moment, summary: &Summary) -> Summary {
    reviewing::as_known(patient, std::slice::from_ref(summary), Some(moment.now.date())).swap_remove(0)
}

/// Days by which the device's clock was ahead of the clinic's when it made the summary; `None` if it was not.
fn ahead_days(patient: &Patient, moment: &Moment, summary: &Summary) -> Option<u16> {
    Some(as_known(patient, moment, summary).wrong_clock.ahead_days).filter(|days| *days > 0)
}

/// Opens a sealed summary. Its tag must hold under the secret of a card of the patient's plan, and it may not claim to follow a later
/// card than that: who has an old card cannot speak for a new plan.
fn authentic(folder: &DataFolder, file: &str, sealed: &[u8]) -> ActionResult<Authentic> {
    let keys = lock::unlocked_keys(folder)?;
    let mut holder = Ok(None);
    let mut revisions = Vec::new();
    let opened = vault::summary::open(sealed, keys, |plan| {
        holder = rows::patient_of_plan(folder, plan);
        let patient = holder.as_ref().ok().and_then(Option::as_ref);
        let secrets = patient.map(|patient| secrets(keys, patient, plan)).unwrap_or_default();
        revisions = secrets.iter().map(|(revision, _)| *revision).collect();
        secrets.into_iter().map(|(_, secret)| secret).collect()
    });
    let holder = holder?;
    let (summary, place) = opened.map_err(|fault| refusal(file, fault))?;
    let patient = holder.ok_or(Failure::SummaryUnknownPlan)?;
    let newest = revisions.get(place).copied().unwrap_or_default();
    let claimed = summary.taken.iter().map(|taken| taken.revision).chain(summary.days.iter().map(|day| day.revision)).max();
    if claimed > Some(newest) { Err(Failure::SummaryNotFromCard) } else { Ok(Authentic { patient, summary }) }
}

/// The secrets that a summary of the patient may be made with, each with the newest revision that has it: those of the cards, the
/// newest first, then those of the cards that the clinic may have issued since its store was put back to an older copy.
fn secrets(keys: &Keys, patient: &Patient, plan: PlanId) -> Vec<(u16, PairingSecret)> {
    let mut all: Vec<(u16, PairingSecret)> = Vec::new();
    for (revision, card) in patient.cards.iter().rev() {
        // Until each revision had its own, all cards of a plan had the same one.
        if all.iter().all(|(_, secret)| *secret != card.pairing_secret) {
            all.push((*revision, card.pairing_secret.clone()));
        }
    }
    let newest = patient.newest_revision();
    let ahead = (1..=numbering::AHEAD).filter_map(|ahead| newest.checked_add(ahead));
    all.extend(ahead.map(|revision| (revision, vault::card::pairing_secret(keys, plan, revision))));
    all
}

fn keep(
    folder: &mut DataFolder,
    moment: &Moment,
    patient: &Patient,
    summary: &Summary,
    known: &[Device],
) -> ActionResult<()> {
    let body = format::summary::write(summary).map_err(refuse::internal)?;
    let (row, log, counter) = (patient.row, summary.log, summary.counter);
    sealed::change(folder, |tx, sealer| {
        devices::note(tx, sealer, row, known, log, moment.now.date())?;
        let seal = |id| Ok(sealer.seal(row, &sealed::received_place(id, row, &log.0, counter), &body.packed));
        table::received::insert(tx, row, &log.0, counter, seal).map(drop)
    })
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
