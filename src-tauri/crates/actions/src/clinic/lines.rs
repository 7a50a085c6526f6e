//! Makes the lines of the clinic's list: how each patient stands by everything that was received from them.

use super::rows::{self, Patient};
use super::{cases, devices, lock, reviewing, threads};
use crate::{ActionResult, DataFolder};
use chrono::NaiveDate;
use exercises::closing::{Closing, in_force};
use exercises::id::LogId;
use exercises::summary::Summary;
use std::collections::BTreeSet;
use store::table;
use store::table::received::Received;
use vault::Keys;
use wire::Failure;
use wire::clinic::PatientLine;

/// All lines in any order, with the number of patients whose own row does not open. Those that are not known yet are made on all
/// processors, because each takes the opening of a patient's summaries, and kept.
///
/// # Errors
/// [`Failure::ClinicLocked`]; any failure to read the store. What does not open is no failure here: its line says so.
pub(super) fn all(folder: &DataFolder, today: NaiveDate) -> ActionResult<(Vec<PatientLine>, usize)> {
    let keys = lock::unlocked_keys(folder)?;
    let (mut lines, mut missing) = (Vec::new(), Vec::new());
    for row in rows::read(folder, table::patient::all)? {
        match folder.known_lines.borrow().get(row.id, today) {
            Some(known) => lines.push(known.clone()),
            None => missing.push(row),
        }
    }
    let jobs = missing.iter().map(|row| Ok((row.id, OfRow::gather(folder, row)?)));
    let made = threads::each(jobs, |job: ActionResult<_>| job.map(|(row, of): (i64, OfRow)| (row, of.line(keys, today))));
    let mut damaged = 0;
    for one in made {
        match one? {
            (_, Made::NotEvenTheCode) => damaged += 1,
            (_, Made::Damaged(line)) => lines.push(line),
            (row, Made::Line { line, lasts }) => {
                folder.known_lines.borrow_mut().keep(row, line.clone(), today, lasts);
                lines.push(line);
            }
        }
    }
    Ok((lines, damaged))
}

/// A line that was made.
enum Made {
    Line {
        line: PatientLine,
        /// Whether it stays as it is on later days.
        lasts: bool,
    },
    /// It says that something of the patient is damaged, and is not kept.
    Damaged(PatientLine),
    /// The patient's own row does not open.
    NotEvenTheCode,
}

/// What the line of a patient's row is made of.
enum OfRow {
    Whole(Box<Patient>, ActionResult<Stored>),
    /// The code of a patient whose cards do not all open.
    Code(String),
    Closed,
}

struct Stored {
    received: Vec<Received>,
    left_out: BTreeSet<LogId>,
    closings: Vec<Closing>,
}

impl OfRow {
    fn gather(folder: &DataFolder, row: &table::patient::Patient) -> ActionResult<OfRow> {
        Ok(match rows::of_row(folder, row)? {
            Some(Ok(patient)) => {
                let stored = Stored::of(folder, &patient);
                OfRow::Whole(Box::new(patient), stored)
            }
            Some(Err(code)) => OfRow::Code(code),
            None => OfRow::Closed,
        })
    }

    fn line(self, keys: &Keys, today: NaiveDate) -> Made {
        match self {
            OfRow::Whole(patient, stored) => match stored.and_then(|stored| stored.line(keys, &patient, today)) {
                Ok((line, lasts)) => Made::Line { line, lasts },
                Err(_) => Made::Damaged(damaged(&patient.code, patient.name.as_deref())),
            },
            OfRow::Code(code) => Made::Damaged(damaged(&code, None)),
            OfRow::Closed => Made::NotEvenTheCode,
        }
    }
}

impl Stored {
    fn of(folder: &DataFolder, patient: &Patient) -> ActionResult<Stored> {
        Ok(Stored {
            received: rows::read(folder, |view| table::received::of_patient(view, patient.row))?,
            left_out: devices::left_out(folder, patient)?,
            closings: cases::closings(folder, patient.row, &patient.code)?,
        })
    }

    fn line(&self, keys: &Keys, patient: &Patient, today: NaiveDate) -> ActionResult<(PatientLine, bool)> {
        let open = |row| rows::open_body(keys, patient, row).and_then(|body| format::summary::read(&body).ok());
        let summaries: Option<Vec<Summary>> = self.received.iter().map(open).collect();
        let summaries = summaries.ok_or_else(|| Failure::RecordDamaged { code: patient.code.clone() })?;
        let counted = summaries.iter().filter(|summary| !self.left_out.contains(&summary.log));
        one(patient, counted, &self.closings, today)
    }
}

/// A patient's line, by the summaries that count, and whether it stays as it is on later days.
///
/// # Errors
/// [`Failure::RecordDamaged`] if how the patient stands cannot be worked out of the summaries.
pub(super) fn one<'s>(
    patient: &Patient,
    counted: impl Iterator<Item = &'s Summary>,
    closings: &[Closing],
    today: NaiveDate,
) -> ActionResult<(PatientLine, bool)> {
    let (standing, lasts) = reviewing::standing(patient, counted, today)?;
    let line = PatientLine {
        code: patient.code.clone(),
        name: patient.name.clone(),
        plan: patient.newest().map(|card| (card.plan.header.revision, card.plan.prescription.review)),
        issued: patient.newest().map(|card| card.plan.header.issued),
        covered_until: standing.as_ref().map(|standing| standing.until),
        alarms: standing.map_or(0, |standing| standing.open_alarms),
        closed: in_force(closings).map(|closing| (closing.on, closing.reason)),
        damaged: false,
    };
    Ok((line, lasts))
}

fn damaged(code: &str, name: Option<&str>) -> PatientLine {
    PatientLine {
        code: code.to_owned(),
        name: name.map(str::to_owned),
        plan: None,
        issued: None,
        covered_until: None,
        alarms: 0,
        closed: None,
        damaged: true,
    }
}
