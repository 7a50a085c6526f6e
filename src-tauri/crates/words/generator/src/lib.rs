//! Writes Fluent files as Rust: a key for each text without values, a function with typed arguments for each text with values.
//!
//! A folder for each language tag holds any number of `.ftl` files. The files of the first language say which texts there are
//! and of what type their values are. A language has all of them; a region (`es-MX`) only what it says differently from its
//! language. Anything else is a fault, with its file and line, and ends the build.
//!
//! Of Fluent this takes messages, attributes, terms and references to them without arguments, values, and selection by a
//! value. It has no functions: a number is shown as the locale writes numbers.
#![forbid(unsafe_code)]

mod check;
mod read;
mod write;

use std::path::Path;

/// Reads the folders below `root` and writes them as one Rust file.
///
/// # Errors
/// Every fault of the files, a line each, beginning with file and line where there is one.
pub fn generate(root: &Path, first: &str) -> Result<String, Vec<String>> {
    let mut faults = Vec::new();
    let locales = read::locales(root, &mut faults);
    let texts = check::texts(&locales, first, &mut faults);
    match locales.iter().find(|locale| locale.tag == first) {
        Some(first) if faults.is_empty() => Ok(write::rust(&locales, first, &texts)),
        _ => Err(faults),
    }
}

#[cfg(test)]
mod tests;
