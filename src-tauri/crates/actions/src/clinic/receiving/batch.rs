//! Takes in a number of summaries at once: all of them are looked at first, and what is new is written in one transaction.

use super::opening;
use super::sorting::IncomingSummary;
use crate::clinic::rows::{self, Patient};
use crate::clinic::{cases, devices, lock, numbering, reviewing, sealed};
use crate::{ActionResult, DataFolder, Moment};
use chrono::NaiveDate;
use exercises::closing::in_force;
use exercises::id::{LogId, PlanId};
use exercises::summary::Summary;
use exercises::summary::union::{self, ArrivalEffect};
use exercises::time::DayNumber;
use format::devices::Device;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use store::table;
use vault::summary::{Opener, Unsealed};
use wire::Failure;
use wire::receiving::{Outcome, Receipt, ReceiptNotice};

/// A summary that is to be kept.
struct ToKeep {
    patient: i64,
    log: LogId,
    counter: u32,
    /// Its contents, as the patient's copy packed them.
    packed: Vec<u8>,
    /// The devices that were known before it.
    devices: Vec<Device>,
}

/// What was received from a patient before, and what is about to be kept.
struct History {
    received: Vec<Summary>,
    devices: Vec<Device>,
    /// Since when the case is closed; `None` if it is open.
    closed_on: Option<NaiveDate>,
}

/// What was found out so far.
struct Batch {
    today: NaiveDate,
    patients: BTreeMap<PlanId, (Patient, Option<History>)>,
    to_keep: Vec<ToKeep>,
}

/// Looks at each summary, keeps those that tell something new, and returns a receipt for each in their order. What is refused changes
/// nothing and does not affect the others. If the store cannot be written, nothing is kept, and all that was new is refused for it.
///
/// # Errors
/// The store is locked.
pub(super) fn take_in(folder: &mut DataFolder, moment: &Moment, incoming: &[IncomingSummary]) -> ActionResult<Vec<Receipt>> {
    let opener = Opener::of(lock::unlocked_keys(folder)?);
    let bytes: Vec<Option<&[u8]>> = incoming.iter().map(|one| one.sealed.as_deref().ok()).collect();
    let opened = opening::unseal(&opener, &bytes);
    let today = moment.now.date();
    let mut batch = Batch { today, patients: BTreeMap::new(), to_keep: Vec::new() };
    let mut receipts: Vec<Receipt> = Vec::with_capacity(incoming.len());
    for (IncomingSummary { file, sealed, .. }, opened) in incoming.iter().zip(opened) {
        let done = match (sealed, opened) {
            (Err(failure), _) => Err(failure.clone()),
            (Ok(_), Some(opened)) => {
                opened.map_err(|fault| opening::refusal(file, fault)).and_then(|one| batch.look_at(folder, file, one))
            }
            (Ok(_), None) => Err(Failure::SummaryForeign),
        };
        let (outcome, notices) = done.unwrap_or_else(|failure| (Outcome::Refused(failure), Vec::new()));
        receipts.push(Receipt { file: file.clone(), outcome, notices });
    }
    if let Err(failure) = keep(folder, today, &batch.to_keep) {
        let new = |receipt: &&mut Receipt| matches!(receipt.outcome, Outcome::New { .. } | Outcome::Filled { .. });
        for receipt in receipts.iter_mut().filter(new) {
            (receipt.outcome, receipt.notices) = (Outcome::Refused(failure.clone()), Vec::new());
        }
    }
    Ok(receipts)
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

impl Batch {
    /// What one summary adds to what is known, also from the summaries before it in the batch.
    fn look_at(&mut self, folder: &DataFolder, file: &str, one: Unsealed) -> ActionResult<(Outcome, Vec<ReceiptNotice>)> {
        let today = self.today;
        let (patient, history) = self.patient(folder, one.plan())?;
        let summary = opening::authentic(lock::unlocked_keys(folder)?, file, &one, patient)?;
        let day = reviewing::day_of(patient, today);
        let history = match history {
            Some(known) => known,
            none => none.insert(History::of(folder, patient)?),
        };
        let gain = gain(&history.received, &summary, day);
        let mut notices = Vec::new();
        let ahead_days = reviewing::one_as_known(&summary, day).wrong_clock.ahead_days;
        let revision = numbering::unknown(patient, std::slice::from_ref(&summary));
        let mut kept = None;
        if gain != ArrivalEffect::Known {
            let (new_device, to_keep) = history.add(folder, patient, summary, one.into_packed(), today)?;
            notices.extend(new_device.map(|device| ReceiptNotice::NewDevice { device }));
            kept = Some(to_keep);
        }
        if let Some(revision) = revision {
            notices.push(ReceiptNotice::StoreBehind { revision, next: numbering::next_after(patient, &history.received)? });
        }
        notices.extend(history.closed_on.map(|on| ReceiptNotice::CaseClosed { on }));
        if ahead_days > 0 {
            notices.push(ReceiptNotice::ClockAhead { days: ahead_days });
        }
        let code = patient.code.clone();
        self.to_keep.extend(kept);
        let outcome = match gain {
            ArrivalEffect::New { days } => Outcome::New { code, days },
            ArrivalEffect::Filled { days } => Outcome::Filled { code, days },
            ArrivalEffect::Known => Outcome::Known { code },
        };
        Ok((outcome, notices))
    }

    /// The patient to whom the plan belongs, looked up once.
    fn patient(&mut self, folder: &DataFolder, plan: PlanId) -> ActionResult<&mut (Patient, Option<History>)> {
        match self.patients.entry(plan) {
            Entry::Occupied(known) => Ok(known.into_mut()),
            Entry::Vacant(free) => {
                let patient = rows::patient_of_plan(folder, plan)?.ok_or(Failure::SummaryUnknownPlan)?;
                Ok(free.insert((patient, None)))
            }
        }
    }
}

impl History {
    fn of(folder: &DataFolder, patient: &Patient) -> ActionResult<History> {
        let received = rows::summaries(folder, patient)?;
        let devices = devices::known(folder, patient, &received)?;
        let closings = cases::closings(folder, patient.row, &patient.code)?;
        let closed_on = in_force(&closings).map(|closing| closing.on);
        Ok(History { received, devices, closed_on })
    }

    /// Adds a summary that tells something new. Returns its device, if that is to be announced, and what is to be kept. After a failure
    /// everything is as before.
    fn add(
        &mut self,
        folder: &DataFolder,
        patient: &Patient,
        summary: Summary,
        packed: Vec<u8>,
        today: NaiveDate,
    ) -> ActionResult<(Option<LogId>, ToKeep)> {
        let (log, counter) = (summary.log, summary.counter);
        if self.received.iter().any(|other| (other.log, other.counter) == (log, counter)) {
            return Err(Failure::SummaryNumberTaken);
        }
        self.received.push(summary);
        if let Err(failure) = reviewing::could_review(folder, patient, &self.received) {
            self.received.pop();
            return Err(failure);
        }
        let devices = self.devices.clone();
        let is_new = devices.iter().all(|device| device.log != log);
        if is_new {
            self.devices.push(Device { log, first_seen: Some(today), left_out: false });
        }
        let announced = (is_new && !devices.is_empty()).then_some(log);
        Ok((announced, ToKeep { patient: patient.row, log, counter, packed, devices }))
    }
}

/// What a summary adds, as it is to be read today. One that says only what a clock that was ahead recorded is kept as well.
fn gain(received: &[Summary], summary: &Summary, day: Option<DayNumber>) -> ArrivalEffect {
    let raw = union::arrival_effect(received, summary);
    let as_known: Vec<Cow<'_, Summary>> = received.iter().map(|one| reviewing::one_as_known(one, day)).collect();
    let new = reviewing::one_as_known(summary, day);
    let is_plain = |one: &Cow<'_, Summary>| matches!(one, Cow::Borrowed(_));
    // Read as they are written, they were compared already.
    if raw == ArrivalEffect::Known || as_known.iter().all(is_plain) && is_plain(&new) {
        return raw;
    }
    let as_known: Vec<Summary> = as_known.into_iter().map(Cow::into_owned).collect();
    match union::arrival_effect(&as_known, &new) {
        ArrivalEffect::Known => ArrivalEffect::Filled { days: 0 },
        gain => gain,
    }
}
