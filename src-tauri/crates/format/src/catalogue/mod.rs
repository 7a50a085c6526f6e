//! The exercises as TOML files with their texts in Fluent files beside them, one a language: read with every fault named by
//! file and line; the shipped ones embedded.
//!
//! An exercise of a clinic's own goes through the same [`read`]. It may be one file: then its texts are in its TOML.

mod embedded;
mod exercise;
mod figure;
mod language;
mod page;
mod texts;

pub use embedded::{FILES, Files, embedded};
pub use page::Fault;

use crate::fields;
use exercises::catalogue::{Exercise, Lang};
use exercises::file_fault::{ExerciseFault, FaultKind};
use language::Language;
use page::{Item, Page};
use texts::Source;

/// Largest exercise file and largest language file that is read, in bytes.
pub const MAX_BYTES: usize = 64 * 1024;

/// The texts of an exercise in one language.
#[derive(Debug, Clone, Copy)]
pub struct TextFile<'a> {
    /// The language.
    pub lang: Lang,
    /// The file's name; used in faults only.
    pub name: &'a str,
    /// What is in the file.
    pub text: &'a str,
}

/// The name of the language file beside an exercise file: `wall-sit.es.ftl` beside `wall-sit.toml`.
pub fn text_file_name(exercise_file: &str, lang: Lang) -> String {
    format!("{}.{}.ftl", exercise_file.strip_suffix(".toml").unwrap_or(exercise_file), lang.code())
}

/// The exercise file to which a language file belongs by its name.
///
/// # Errors
/// [`ExerciseFault::NoLanguage`] if the name does not end in a language of the catalogue.
pub fn exercise_file_name(text_file: &str) -> Result<String, ExerciseFault> {
    let stem = Lang::ALL.into_iter().find_map(|lang| text_file.strip_suffix(&format!(".{}.ftl", lang.code())));
    stem.map(|stem| format!("{stem}.toml")).ok_or(ExerciseFault::NoLanguage)
}

/// Reads one exercise from its TOML file and the language files `beside` it, one a language; without any, the TOML file
/// has the texts. `file_name` is used in faults only.
///
/// # Errors
/// All faults that were found, those of the TOML file first, each file's in the order of its lines; never an empty list.
pub fn read(file_name: &str, text: &str, beside: &[TextFile]) -> Result<Exercise, Vec<Fault>> {
    let page = Page::new(file_name, text);
    let (exercise, of_texts) = whole_file(&page, beside).unwrap_or_default();
    let mut faults = page.into_faults();
    faults.extend(of_texts);
    exercise.filter(|_| faults.is_empty()).ok_or(faults)
}

/// The exercise of the file and the faults of the language files; the file's own are noted on its page.
fn whole_file(page: &Page, beside: &[TextFile]) -> Option<(Option<Exercise>, Vec<Fault>)> {
    let bytes = page.text.len();
    if bytes > MAX_BYTES {
        page.fault(0, "", too_large(bytes));
        return None;
    }
    let file = fields::toml(page.text).map_err(|fault| page.found(fault)).ok()?;
    let top = Item::of_file(page, &file).table()?;
    let source = Source::of(&top, beside.iter().map(Language::new).collect());
    let exercise = exercise::exercise(&top, &source);
    let of_texts = source.into_files().into_iter().flat_map(Language::into_faults).collect();
    Some((exercise, of_texts))
}

fn too_large(bytes: usize) -> FaultKind {
    FaultKind::TooLarge { bytes: bytes as u64, most: MAX_BYTES as u64 }
}

#[cfg(test)]
mod tests;
