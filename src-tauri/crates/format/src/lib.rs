//! All bytes and texts that come from outside or go there: their versions, limits and frozen samples. This crate holds no
//! key.

pub mod calendar;
pub mod card;
pub mod case;
pub mod catalogue;
pub mod devices;
pub mod diary_file;
pub mod draft;
pub mod entry;
pub mod facts;
pub mod fhir;
pub mod frames;
pub mod motion;
pub mod names;
pub mod norms_file;
pub mod own_data;
pub mod own_exercise;
pub mod plan_file;
pub mod plan_set;
pub mod reminders;
pub mod review_csv;
pub mod review_json;
pub mod runs_file;
pub mod series;
pub mod summary;
pub mod visit;

mod cbor;
mod choices;
mod codes;
mod fields;
pub mod measures;
mod number_csv;
mod packed;
mod parts;
mod spreadsheet;
mod toml_text;

use exercises::file_fault::{FaultKind, FileFault};

/// The text of a file that a person wrote.
///
/// # Errors
/// The line of the first byte that is not valid UTF-8.
pub fn text(bytes: &[u8]) -> Result<&str, FileFault> {
    std::str::from_utf8(bytes).map_err(|error| {
        let line = 1 + bytes[..error.valid_up_to()].iter().filter(|byte| **byte == b'\n').count() as u32;
        FileFault::at(line, FaultKind::NotUtf8)
    })
}
