//! `carryover clinic review`.

use crate::Done;
use crate::args::Form;
use crate::out::Out;
use actions::clinic::records::{self, Asked, RecordForm};
use actions::clinic::{reviewing, visiting};
use actions::{ActionResult, DataFolder, Moment, platform};
use serde_json::json;
use std::path::Path;
use wire::clinic::ReviewPage;
use words::{Key, Words};

/// What is to be shown or written.
pub struct What<'a> {
    /// The patient's code; `None` for all patients.
    pub code: Option<&'a str>,
    /// As what.
    pub form: Form,
    /// Whether names are to be in a FHIR file.
    pub with_name: bool,
    /// The file; `None` to print it.
    pub file: Option<&'a Path>,
}

pub fn run(folder: &DataFolder, moment: &Moment, what: &What<'_>, out: &mut Out) -> Done {
    let record = match what.form {
        // `--json` has always asked for the review as JSON.
        Form::Text if out.json() && what.file.is_none() => return shown(folder, moment, what, true, out),
        Form::Text | Form::Pdf => return shown(folder, moment, what, false, out),
        Form::Json => return shown(folder, moment, what, true, out),
        Form::Csv => RecordForm::Csv,
        Form::Fhir => RecordForm::Collection,
        Form::FhirTransaction => RecordForm::Transaction,
    };
    let asked = Asked { code: what.code, form: record, with_names: what.with_name };
    let Some(file) = what.file else {
        let bytes = records::make(folder, moment, out.words, asked)?;
        let text = String::from_utf8_lossy(&bytes);
        if record == RecordForm::Csv {
            out.print_table(&text)
        } else {
            out.print(&text)
        }
        return Ok(true);
    };
    let done = records::save(folder, moment, out.words, asked, Some(file))?;
    saved(file, done.bytes, out)
}

/// The review for people or as JSON, a line for each patient.
fn shown(folder: &DataFolder, moment: &Moment, what: &What<'_>, as_json: bool, out: &mut Out) -> Done {
    let codes = match what.code {
        Some(code) => vec![code.to_owned()],
        None => records::codes_of_all(folder)?,
    };
    let pages = codes.iter().map(|code| reviewing::page(folder, moment, code)).collect::<ActionResult<Vec<_>>>()?;
    let one = |page: &ReviewPage| match as_json {
        true => Ok(format!("{}\n", reviewing::json(page, &visiting::findings(folder, &page.code)?.0))),
        false => Ok(format!("{}{}", out.words.review_text(page), to_clear(page, out.words))),
    };
    let text = pages.iter().map(one).collect::<ActionResult<Vec<_>>>()?.join(if as_json { "" } else { "\n" });
    let Some(file) = what.file else {
        out.print(&text);
        return Ok(true);
    };
    platform::write(file, text.as_bytes())?;
    saved(file, text.len() as u64, out)
}

fn saved(file: &Path, bytes: u64, out: &mut Out) -> Done {
    out.say(|_| file.display().to_string(), || json!({ "files": [file], "bytes": bytes }));
    Ok(true)
}

/// The line that a plan file needs to clear the open alarms, ready to be copied, and what it is for.
fn to_clear(page: &ReviewPage, words: Words) -> String {
    let alarms = page.review.iter().flat_map(|review| &review.alarms).filter(|alarm| !alarm.cleared);
    let names: Vec<String> = alarms.map(|alarm| format!("\"{}\"", alarm.id)).collect();
    if names.is_empty() {
        return String::new();
    }
    format!("\n{}\nclear = [{}]\n", words.text(Key::TerminalToClear), names.join(", "))
}
