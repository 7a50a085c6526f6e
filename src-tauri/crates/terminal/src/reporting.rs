//! `carryover clinic review --as pdf` and `carryover clinic closing-letter`.

use crate::Done;
use crate::out::Out;
use actions::clinic::{printing, reporting};
use actions::{DataFolder, Moment};
use serde_json::json;
use std::path::Path;
use wire::Failure;
use wire::visiting::{PrintRequest, Printed};

/// Saves the report on a patient and says where. A report goes to somebody who treats this patient: it is never made of all at once.
pub fn report(
    folder: &mut DataFolder,
    moment: &Moment,
    (code, file): (Option<&str>, Option<&Path>),
    letter: bool,
    out: &mut Out,
) -> Done {
    let (Some(code), Some(file)) = (code, file) else { return Err(Failure::ReportOfOne) };
    let request = PrintRequest { code: code.to_owned(), what: Printed::Report, revision: None, letter };
    let saved = printing::save(folder, moment, &request, Some(file))?;
    out.say(|_| saved.path.clone(), || json!({ "files": [file], "bytes": saved.bytes }));
    Ok(true)
}

/// Saves the letter at the end of a patient's treatment and says where.
pub fn closing_letter(
    folder: &DataFolder,
    moment: &Moment,
    what: (&str, &[String], bool),
    file: &Path,
    out: &mut Out,
) -> Done {
    let saved = reporting::save_letter(folder, moment, what, Some(file))?;
    out.say(|_| saved.path.clone(), || json!({ "files": [file], "bytes": saved.bytes }));
    Ok(true)
}
