//! `carryover clinic print`.

use crate::Done;
use crate::out::Out;
use actions::clinic::printing;
use actions::{DataFolder, Moment};
use serde_json::json;
use std::path::Path;
use wire::visiting::PrintRequest;

/// Saves the PDF file and says where.
pub fn run(folder: &mut DataFolder, moment: &Moment, request: &PrintRequest, file: &Path, out: &mut Out) -> Done {
    let saved = printing::save(folder, moment, request, Some(file))?;
    out.say(|_| saved.path.clone(), || json!(saved));
    Ok(true)
}
