//! What a clinic writes about a patient, on paper: a report at any time, and a letter at the end of the treatment.

use super::{lock, reviewing, rows, visiting};
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use exercises::visit::VisitFault;
use paper::{Letter, Paper, Report, Sender};
use std::path::Path;
use wire::Failure;
pub use wire::cases::MAX_OWN_TEXT;
use wire::clinic::ReviewPage;
use wire::visiting::VisitPage;

/// The report on a patient as a PDF file.
///
/// # Errors
/// [`Failure::NothingToExport`] for a patient without a plan and without a visit, [`Failure::RecordDamaged`] if something of the patient
/// cannot be read: nothing is left out unseen.
pub fn report(folder: &DataFolder, moment: &Moment, code: &str, sheet: Paper) -> ActionResult<Vec<u8>> {
    let told = told(folder, moment, code)?;
    let words = platform::words(folder.locale());
    paper::report(&told.facts(), sheet, words).map_err(refuse::internal)
}

/// The letter at the end of a patient's treatment as a PDF file, with what the clinician adds: a paragraph for each of `lines`.
///
/// # Errors
/// Those of [`report`], and [`Failure::VisitUnfit`] if there are more than [`MAX_OWN_TEXT`] characters.
pub fn letter(folder: &DataFolder, moment: &Moment, code: &str, lines: &[String], sheet: Paper) -> ActionResult<Vec<u8>> {
    if lines.iter().map(|line| line.chars().count()).sum::<usize>() > MAX_OWN_TEXT {
        return Err(Failure::VisitUnfit(VisitFault::Text { most: MAX_OWN_TEXT as u16 }));
    }
    let told = told(folder, moment, code)?;
    let words = platform::words(folder.locale());
    paper::letter(&Letter { report: told.facts(), lines }, sheet, words).map_err(refuse::internal)
}

/// Saves the letter at `out`, or in the folder for saved files under a name that says nothing of the patient.
///
/// # Errors
/// Those of [`letter`], and a failure to write.
pub fn save_letter(
    folder: &DataFolder,
    moment: &Moment,
    (code, lines, us_letter): (&str, &[String], bool),
    out: Option<&Path>,
) -> ActionResult<Saved> {
    let bytes = letter(folder, moment, code, lines, sheet(us_letter))?;
    save(folder, moment, "letter", &bytes, out)
}

/// The size of paper.
pub(super) fn sheet(us_letter: bool) -> Paper {
    if us_letter { Paper::Letter } else { Paper::A4 }
}

/// Saves a PDF file at `out`, or in the folder for saved files.
pub(super) fn save(
    folder: &DataFolder,
    moment: &Moment,
    stem: &str,
    bytes: &[u8],
    out: Option<&Path>,
) -> ActionResult<Saved> {
    let path = out.map_or_else(|| platform::free_name(folder, moment, stem, ".pdf"), Path::to_path_buf);
    platform::write(&path, bytes)?;
    Ok(Saved { path: path.display().to_string(), bytes: bytes.len() as u64 })
}

/// What a report or a letter tells.
struct Told {
    page: ReviewPage,
    visits: VisitPage,
    /// The clinic's name and telephone number, as it has them now.
    clinic: (String, Option<String>),
}

impl Told {
    /// A plan names the clinic as its card does; without one it is named as it is now.
    fn facts(&self) -> Report<'_> {
        let plan = self.page.plan.as_ref();
        let (clinic, phone) = &self.clinic;
        let now = Sender { clinic, phone: phone.as_deref() };
        let sender = plan.map_or(now, |plan| Sender::from(&plan.header));
        Report { sender, plan, page: &self.page, visits: &self.visits }
    }
}

fn told(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<Told> {
    let code = rows::patient(folder, code)?.code;
    let visits = visiting::page(folder, moment, &code)?;
    if visits.unreadable > 0 {
        return Err(Failure::RecordDamaged { code });
    }
    let page = reviewing::page(folder, moment, &code)?;
    if page.plan.is_none() && visits.visits.is_empty() {
        return Err(Failure::NothingToExport);
    }
    Ok(Told { page, visits, clinic: (lock::name(folder)?, lock::phone(folder)?) })
}
