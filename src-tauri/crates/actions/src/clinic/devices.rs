//! The devices that a patient's summaries came from. One that somebody else may have made can be left out of the review.

use super::rows::{self, Patient};
use super::sealed::{self, Sealer};
use super::{cases, lock};
use crate::{ActionResult, DataFolder};
use chrono::NaiveDate;
use exercises::id::{LogId, RunId};
use exercises::summary::Summary;
use exercises::time::DayNumber;
use format::devices::{self, Device};
use std::collections::{BTreeMap, BTreeSet};
use store::{StoreError, Tx, View, table};
use vault::Keys;
use wire::Failure;
use wire::clinic::DeviceLine;

/// The devices of the patient with `code`, the first one first.
pub fn list(folder: &DataFolder, code: &str) -> ActionResult<Vec<DeviceLine>> {
    let patient = rows::patient(folder, code)?;
    lines(folder, &patient, &rows::readable_summaries(folder, &patient)?.0)
}

/// Leaves a device out of the review, or takes it in again.
///
/// # Errors
/// [`Failure::NoSuchDevice`] if no summary came from it.
pub fn leave_out(folder: &mut DataFolder, code: &str, log: LogId, left_out: bool) -> ActionResult<Vec<DeviceLine>> {
    let patient = rows::patient(folder, code)?;
    let mut known = known(folder, &patient, &rows::readable_summaries(folder, &patient)?.0)?;
    let device = known.iter_mut().find(|device| device.log == log);
    device.ok_or_else(|| Failure::NoSuchDevice { code: code.to_owned(), device: log.to_string() })?.left_out = left_out;
    sealed::change(folder, |tx, sealer| put(tx, sealer, patient.row, &known))?;
    list(folder, code)
}

/// The lines of these devices, of which `received` are the summaries.
pub(super) fn lines(folder: &DataFolder, patient: &Patient, received: &[Summary]) -> ActionResult<Vec<DeviceLine>> {
    let start = patient.newest().map(|card| card.plan.header.start);
    let diary_by = cases::case(folder, patient.row, &patient.code)?.diary_by;
    let known = known(folder, patient, received)?;
    let logs = known.iter().map(|device| device.log).filter(|log| *log != LogId::PAPER);
    let numbers: BTreeMap<LogId, u16> = logs.zip(1..=u16::MAX).collect();
    let line = |device: &Device| {
        let of_it: Vec<&Summary> = received.iter().filter(|summary| summary.log == device.log).collect();
        let later = received.iter().find(|summary| summary.former.iter().any(|part| part.log == device.log));
        let (days, sessions) = use_of(&of_it);
        DeviceLine {
            device: device.log,
            first_seen: device.first_seen,
            until: of_it.iter().map(|summary| summary.until).max().zip(start).map(|(until, start)| until.date(start)),
            summaries: u16::try_from(of_it.len()).unwrap_or(u16::MAX),
            left_out: device.left_out,
            by: diary_by.clone().filter(|_| device.log == LogId::PAPER),
            number: numbers.get(&device.log).copied(),
            used: days.zip(start).map(|((first, last), start)| (first.date(start), last.date(start))),
            sessions,
            goes_on_as: later.and_then(|summary| numbers.get(&summary.log).copied()),
        }
    };
    Ok(known.iter().map(line).collect())
}

/// The first and the last day on which a device was used, and how many sessions were recorded on it. What a record already held when it was
/// moved or copied there belongs to the device that it came from.
fn use_of(summaries: &[&Summary]) -> (Option<(DayNumber, DayNumber)>, u32) {
    let former = summaries.iter().flat_map(|summary| &summary.former);
    let (before, since) = former.map(|part| (part.runs, part.until)).max().unwrap_or((0, DayNumber(0)));
    let seen: BTreeSet<DayNumber> = summaries.iter().flat_map(|summary| &summary.seen).copied().collect();
    let days: BTreeSet<DayNumber> = seen.into_iter().filter(|day| *day >= since).collect();
    let runs = summaries.iter().flat_map(|summary| &summary.runs).map(|run| run.run);
    let runs: BTreeSet<RunId> = runs.filter(|run| run.0 > before).collect();
    (days.first().copied().zip(days.last().copied()), u32::try_from(runs.len()).unwrap_or(u32::MAX))
}

/// The logs that are left out of the patient's review.
pub(super) fn left_out(folder: &DataFolder, patient: &Patient) -> ActionResult<BTreeSet<LogId>> {
    let stored = stored(folder, patient)?;
    Ok(stored.into_iter().filter(|device| device.left_out).map(|device| device.log).collect())
}

/// Notes, in the transaction that stores the summary, that a device was seen. Returns without a change for one that is known.
pub(super) fn note(
    tx: &Tx<'_>,
    sealer: &mut Sealer<'_>,
    patient: i64,
    known: &[Device],
    log: LogId,
    on: NaiveDate,
) -> Result<(), StoreError> {
    if known.iter().any(|device| device.log == log) {
        return Ok(());
    }
    let with_it = [known, &[Device { log, first_seen: Some(on), left_out: false }]].concat();
    put(tx, sealer, patient, &with_it)
}

/// The stored devices, and those of summaries that were received before devices were noted.
pub(super) fn known(folder: &DataFolder, patient: &Patient, received: &[Summary]) -> ActionResult<Vec<Device>> {
    known_of(folder, patient, received.iter().map(|summary| summary.log))
}

/// The same, by the logs of what was received.
pub(super) fn known_of(
    folder: &DataFolder,
    patient: &Patient,
    received: impl IntoIterator<Item = LogId>,
) -> ActionResult<Vec<Device>> {
    let mut all = stored(folder, patient)?;
    for log in received {
        if all.iter().all(|device| device.log != log) {
            all.push(Device { log, first_seen: None, left_out: false });
        }
    }
    // Those of one day stay in the order in which they came, so that a device keeps its number.
    all.sort_by_key(|device| (device.first_seen, device.first_seen.is_none().then_some(device.log)));
    Ok(all)
}

fn stored(folder: &DataFolder, patient: &Patient) -> ActionResult<Vec<Device>> {
    let keys = lock::unlocked_keys(folder)?;
    let damaged = || Failure::RecordDamaged { code: patient.code.clone() };
    rows::read(folder, |view| open(view, keys, patient.row))?.ok_or_else(damaged)
}

fn open(view: &View<'_>, keys: &Keys, patient: i64) -> Result<Option<Vec<Device>>, StoreError> {
    let Some(sealed) = table::device::get(view, patient)? else { return Ok(Some(Vec::new())) };
    let plain = vault::rows::open(keys, &sealed::device_place(patient), &sealed).ok();
    Ok(plain.and_then(|plain| devices::read(&plain)))
}

fn put(tx: &Tx<'_>, sealer: &mut Sealer<'_>, patient: i64, all: &[Device]) -> Result<(), StoreError> {
    let before = table::device::get(tx, patient)?;
    let sealed = sealer.replace(patient, &sealed::device_place(patient), before.as_deref(), &devices::write(all));
    table::device::put(tx, patient, &sealed)
}
