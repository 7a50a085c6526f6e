//! What a clinic writes about a patient, on paper: a report at any time, and a letter at the end of the treatment.

use super::{reviewing, rows, visiting};
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use exercises::visit::VisitFault;
use paper::{Letter, Paper, Report};
use std::path::Path;
use wire::Failure;
pub use wire::cases::MAX_OWN_TEXT;
use wire::clinic::ReviewPage;
use wire::visiting::VisitPage;

/// The report on a patient as a PDF file.
///
/// # Errors
/// [`Failure::NoCardIssued`] for a patient without a plan, [`Failure::RecordDamaged`] if something of the patient cannot be read: nothing is
/// left out unseen.
pub fn report(folder: &DataFolder, moment: &Moment, code: &str, sheet: Paper) -> ActionResult<Vec<u8>> {
    let (page, visits) = told(folder, moment, code)?;
    let words = platform::words(folder.locale());
    paper::report(&facts(&page, &visits)?, sheet, words).map_err(refuse::internal)
}

/// The letter at the end of a patient's treatment as a PDF file, with what the clinician adds: a paragraph for each of `lines`.
///
/// # Errors
/// Those of [`report`], and [`Failure::VisitUnfit`] if there are more than [`MAX_OWN_TEXT`] characters.
pub fn letter(folder: &DataFolder, moment: &Moment, code: &str, lines: &[String], sheet: Paper) -> ActionResult<Vec<u8>> {
    if lines.iter().map(|line| line.chars().count()).sum::<usize>() > MAX_OWN_TEXT {
        return Err(Failure::VisitUnfit(VisitFault::Text { most: MAX_OWN_TEXT as u16 }));
    }
    let (page, visits) = told(folder, moment, code)?;
    let words = platform::words(folder.locale());
    paper::letter(&Letter { report: facts(&page, &visits)?, lines }, sheet, words).map_err(refuse::internal)
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

fn told(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<(ReviewPage, VisitPage)> {
    let code = rows::patient(folder, code)?.code;
    let visits = visiting::page(folder, moment, &code)?;
    if visits.unreadable > 0 {
        return Err(Failure::RecordDamaged { code });
    }
    Ok((reviewing::page(folder, moment, &code)?, visits))
}

fn facts<'a>(page: &'a ReviewPage, visits: &'a VisitPage) -> ActionResult<Report<'a>> {
    let plan = page.plan.as_ref().ok_or_else(|| Failure::NoCardIssued { code: page.code.clone() })?;
    Ok(Report { plan, page, visits })
}
