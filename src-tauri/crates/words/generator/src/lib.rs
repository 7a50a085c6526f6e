//! Generates Rust code from Fluent files: a key for each text without values, a function with typed arguments for each text with
//! values.
//!
//! A folder for each language tag contains any number of `.ftl` files. The files of the first language define which texts exist and
//! the types of their values. A language has all of them; a region (`es-MX`) has only those that differ from its language. Anything
//! else is a fault, reported with file and line, and ends the build.
//!
//! Of Fluent it supports messages, attributes, terms and references to them without arguments, values, and selection by a value. It
//! has no functions: a number is shown as the locale writes numbers.
#![forbid(unsafe_code)]

mod check;
mod read;
mod write;

use read::{Locale, Piece};
use std::path::Path;

/// Reads the folders in `root` and returns them as one Rust file.
///
/// # Errors
/// Every fault of the files, one per line, beginning with file and line if they are known.
pub fn generate(root: &Path, first: &str) -> Result<String, Vec<String>> {
    let mut faults = Vec::new();
    let locales = read::locales(root, &mut faults);
    let texts = check::texts(&locales, first, &mut faults);
    match locales.iter().find(|locale| locale.tag == first) {
        Some(first) if faults.is_empty() => Ok(write::rust(&locales, first, &texts)),
        _ => Err(faults),
    }
}

/// The texts with these ids in every locale below `root`, by its tag: the locale's own text, otherwise its language's. A value is
/// shown as its name in braces. For pages that are shown without the program, such as the one for when it has crashed.
///
/// # Errors
/// Every fault of the files; a text that a language lacks; a text that chooses by a value.
pub fn texts_of(root: &Path, ids: &[&str]) -> Result<Vec<(String, Vec<String>)>, Vec<String>> {
    let mut faults = Vec::new();
    let locales = read::locales(root, &mut faults);
    let mut all = Vec::new();
    for locale in &locales {
        let language = locales.iter().find(|other| Some(other.tag.as_str()) == locale.parent());
        let texts: Vec<String> = ids.iter().filter_map(|id| spelled(locale, language, id, &mut faults)).collect();
        all.push((locale.tag.clone(), texts));
    }
    if faults.is_empty() { Ok(all) } else { Err(faults) }
}

fn spelled(locale: &Locale, language: Option<&Locale>, id: &str, faults: &mut Vec<String>) -> Option<String> {
    let found = locale.texts.get(id).or_else(|| language?.texts.get(id));
    let spelled = found.and_then(|text| {
        let pieces = text.pieces.iter().map(|piece| match piece {
            Piece::Text(text) => Some(text.clone()),
            Piece::Value(name) => Some(format!("{{{name}}}")),
            Piece::Choose(..) => None,
        });
        pieces.collect::<Option<String>>()
    });
    if spelled.is_none() {
        faults.push(format!("{}: {id} is not there, or chooses by a value", locale.tag));
    }
    spelled
}

#[cfg(test)]
mod tests;
