//! The exercises as TOML files: read with every fault named by file and line; the shipped ones embedded.
//!
//! An exercise of a clinic's own has the same form, so it goes through the same [`read`].

mod embedded;
mod exercise;
mod fault;
mod figure;
mod names;
mod table;
mod texts;

pub use embedded::{FILES, embedded};
pub use fault::{Fault, FaultKind};

use exercises::catalogue::Exercise;
use std::cell::RefCell;
use table::{Page, Table};
use toml::de::DeTable;

/// Largest exercise file that is read, in bytes.
pub const MAX_BYTES: usize = 64 * 1024;

/// Reads one exercise. `file_name` is used in faults only.
///
/// # Errors
/// All faults that were found, in the order of their lines; never an empty list.
pub fn read(file_name: &str, text: &str) -> Result<Exercise, Vec<Fault>> {
    let page = Page { file: file_name, text, faults: RefCell::default() };
    if text.len() > MAX_BYTES {
        page.fault(0, "", FaultKind::TooLarge { bytes: text.len(), max: MAX_BYTES });
        return Err(page.faults.into_inner());
    }
    let top = match DeTable::parse(text) {
        Ok(top) => top,
        Err(error) => {
            let at = error.span().map_or(0, |span| span.start);
            page.fault(at, "", FaultKind::NotToml { message: error.message().to_owned() });
            return Err(page.faults.into_inner());
        }
    };
    let exercise = exercise::exercise(&Table { page: &page, path: String::new(), span: 0..0, map: top.get_ref() });
    let mut faults = page.faults.take();
    match exercise {
        Some(exercise) if faults.is_empty() => Ok(exercise),
        _ => {
            faults.sort_by_key(|fault| fault.line);
            Err(faults)
        }
    }
}

#[cfg(test)]
mod tests;
