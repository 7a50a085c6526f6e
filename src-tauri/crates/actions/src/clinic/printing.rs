//! What a clinic prints: for a patient the hand-out of the newest plan or of an earlier one, and a diary for whoever has no device; about a
//! patient a report.

use super::{issuing, reporting, rows};
use crate::{ActionResult, DataFolder, Moment, Saved, card_catalogue, platform, refuse};
use paper::{Diary, HandOut};
use std::path::Path;
use wire::visiting::{PrintRequest, Printed};

/// Saves a PDF file at `out`, or in the folder for saved files under a name that says nothing of the patient. On the paper stand the patient's
/// code and no name.
///
/// # Errors
/// [`wire::Failure::NoCardIssued`], or for a report [`wire::Failure::NothingToExport`]; [`wire::Failure::NoSuchRevision`]; as for the
/// patient's record, and a failure to write.
pub fn save(folder: &mut DataFolder, moment: &Moment, request: &PrintRequest, out: Option<&Path>) -> ActionResult<Saved> {
    let sheet = reporting::sheet(request.letter);
    if request.what == Printed::Report {
        let bytes = reporting::report(folder, moment, &request.code, sheet)?;
        return reporting::save(folder, moment, "report", &bytes, out);
    }
    let patient = rows::patient(folder, &request.code)?;
    let words = platform::words(folder.locale());
    let (card, codes) = issuing::card_of(folder, &patient, request.revision)?;
    // The clinic's own exercises are printed as this card has them, not as they were changed since.
    let catalogue = card_catalogue::with_own(&folder.catalogue, &card.own)?;
    let (plan, code) = (&card.plan, Some(patient.code.as_str()));
    let (made, stem) = if request.what == Printed::Diary {
        let given = Diary { plan, catalogue: &catalogue, patient: code, first: Some(moment.now.date()) };
        (paper::diary(&given, sheet, words), "diary")
    } else {
        let given = HandOut { plan, catalogue: &catalogue, patient: code, codes: &codes };
        (paper::hand_out(&given, sheet, words), "hand-out")
    };
    let bytes = made.map_err(refuse::internal)?;
    reporting::save(folder, moment, stem, &bytes, out)
}
