//! A diary that a patient kept on paper, entered at the clinic. It is stored as a summary of a log of its own, [`LogId::PAPER`], so that it is
//! reviewed, united with what devices report, and handed over like any other.

use super::rows::{self, Patient};
use super::{cases, devices, reviewing, sealed};
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use exercises::id::LogId;
use exercises::plan::Plan;
use exercises::summary::{MAX_SESSIONS, PaperContext, PaperDay, Summary, due_on, from_paper, paper_days};
use format::devices::Device;
use std::collections::BTreeMap;
use store::table;
use wire::Failure;
use wire::visiting::{DiaryLine, DiaryPage, DiaryRequest};

/// Number of days that can be entered: what a summary covers at most.
const SHOWN_DAYS: usize = exercises::summary::MAX_DAYS as usize;

/// The days that can be entered, with what was.
///
/// # Errors
/// [`Failure::NoCardIssued`], and as for the patient's record.
pub fn page(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<DiaryPage> {
    let patient = rows::patient(folder, code)?;
    let plan = newest(&patient)?;
    let before = entered(folder, &patient)?;
    let last = before.iter().max_by_key(|summary| summary.counter);
    let days = last.map(|summary| paper_days(summary, plan.header.start)).unwrap_or_default();
    let mut known: BTreeMap<_, PaperDay> = days.into_iter().map(|day| (day.day, day)).collect();
    let catalogue = reviewing::catalogue(folder, &patient);
    let revisions = patient.revisions();
    let with = PaperContext { revisions: &revisions, catalogue: &catalogue, zone: &moment.zone, now: moment.now };
    let today = moment.now.date().min(plan.prescription.review);
    let all: Vec<_> = plan.header.start.iter_days().take_while(|day| *day <= today).collect();
    let shown = &all[all.len().saturating_sub(SHOWN_DAYS)..];
    let line = |day: &chrono::NaiveDate| DiaryLine { day: *day, due: due_on(*day, with), entered: known.remove(day) };
    let days = shown.iter().map(line).collect();
    Ok(DiaryPage { days, plan, exercises: catalogue.into_owned().exercises, code: patient.code, name: patient.name })
}

/// Enters days in place of what was entered for them before, and returns all of them.
///
/// # Errors
/// [`Failure::DiaryDay`] for a day outside the plan or to come, [`Failure::DiaryNumber`] for more sessions than can be;
/// [`Failure::NoCardIssued`], and as for the patient's record.
pub fn enter(folder: &mut DataFolder, moment: &Moment, request: &DiaryRequest) -> ActionResult<DiaryPage> {
    let patient = rows::patient(folder, &request.code)?;
    let plan = newest(&patient)?;
    for day in &request.days {
        check(day, &patient, &plan, moment)?;
    }
    let before = entered(folder, &patient)?;
    let catalogue = reviewing::catalogue(folder, &patient);
    let revisions = patient.revisions();
    let with = PaperContext { revisions: &revisions, catalogue: &catalogue, zone: &moment.zone, now: moment.now };
    if let Some(summary) = from_paper(&request.days, &before, with).filter(|_| !request.days.is_empty()) {
        let mut received = rows::summaries(folder, &patient)?;
        let known = devices::known(folder, &patient, &received)?;
        received.push(summary.clone());
        reviewing::could_review(&patient, &reviewing::catalogue(folder, &patient), &received)?;
        keep(folder, moment, &patient, &summary, &known)?;
    }
    page(folder, moment, &request.code)
}

/// Reads a file of days.
///
/// # Errors
/// [`Failure::NotUnderstood`] with what is wrong in it.
pub fn read(file: &str, bytes: &[u8]) -> ActionResult<Vec<PaperDay>> {
    format::text(bytes).and_then(format::diary_file::read).map_err(platform::not_understood(file))
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
    let by = cases::noting_who(folder, patient, |case, name| case.diary_by = Some(name))?;
    sealed::change(folder, |tx, sealer| {
        devices::note(tx, sealer, row, known, log, moment.now.date())?;
        by.map_or(Ok(()), |case| cases::put(tx, sealer, row, &case))?;
        let seal = |id| Ok(sealer.seal(row, &sealed::received_place(id, row, &log.0, counter), &body.packed));
        table::received::insert(tx, row, &log.0, counter, seal).map(drop)
    })
}

fn newest(patient: &Patient) -> ActionResult<Plan> {
    let card = patient.newest().ok_or_else(|| Failure::NoCardIssued { code: patient.code.clone() })?;
    Ok(card.plan.clone())
}

/// The summaries that were made of the diary so far.
fn entered(folder: &DataFolder, patient: &Patient) -> ActionResult<Vec<Summary>> {
    let all = rows::summaries(folder, patient)?;
    Ok(all.into_iter().filter(|summary| summary.log == LogId::PAPER).collect())
}

fn check(day: &PaperDay, patient: &Patient, plan: &Plan, moment: &Moment) -> ActionResult<()> {
    if day.day < plan.header.start || day.day > moment.now.date().min(plan.prescription.review) {
        return Err(Failure::DiaryDay { day: day.day });
    }
    let plans = || patient.cards.values().map(|card| &card.plan);
    let item = |id| plans().any(|plan| plan.item(id).is_some());
    let complaint = |id| plans().any(|plan| plan.prescription.complaints.iter().any(|one| one.id == id));
    let fits =
        day.done.iter().all(|(id, n)| item(*id) && *n <= MAX_SESSIONS) && day.mornings.iter().all(|(id, _)| complaint(*id));
    fits.then_some(()).ok_or(Failure::DiaryNumber { day: day.day, most: MAX_SESSIONS })
}
