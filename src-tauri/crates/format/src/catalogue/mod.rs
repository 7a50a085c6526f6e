//! Reads exercises from TOML files, each with its texts in Fluent files next to it, one for each language. Every fault is
//! reported with its file and line. The shipped exercises are compiled into the program.
//!
//! A clinic's own exercise is read by the same [`read`]. It may be a single file, which then has the texts in its TOML.

mod embedded;
mod exercise;
mod figure;
mod language;
mod page;
mod step_rule;
mod texts;

pub use embedded::{FILES, Files, embedded};
pub use page::Fault;

use crate::fields;
use exercises::catalogue::{Exercise, Lang};
use exercises::file_fault::{ExerciseFault, FaultKind};
use language::Language;
use page::{Item, Page};
use texts::Source;

/// Size of the largest exercise file and the largest language file that are read, in bytes.
pub const MAX_BYTES: usize = 64 * 1024;

/// A file with the texts of an exercise in one language.
#[derive(Debug, Clone, Copy)]
pub struct TextFile<'a> {
    /// The language.
    pub lang: Lang,
    /// The file's name, used only in faults.
    pub name: &'a str,
    /// The content of the file.
    pub text: &'a str,
}

/// The name of the language file that belongs to an exercise file: `wall-sit.es.ftl` for `wall-sit.toml`.
pub fn text_file_name(exercise_file: &str, lang: Lang) -> String {
    format!("{}.{}.ftl", exercise_file.strip_suffix(".toml").unwrap_or(exercise_file), lang.code())
}

/// The name of the exercise file that a language file belongs to.
///
/// # Errors
/// [`ExerciseFault::NoLanguage`] if the name does not end in a language of the catalogue.
pub fn exercise_file_name(text_file: &str) -> Result<String, ExerciseFault> {
    let stem = Lang::ALL.into_iter().find_map(|lang| text_file.strip_suffix(&format!(".{}.ftl", lang.code())));
    stem.map(|stem| format!("{stem}.toml")).ok_or(ExerciseFault::NoLanguage)
}

/// Reads one exercise from its TOML file and the language files `beside` it, one for each language. If there are none, the
/// TOML file must have the texts. `file_name` is used only in faults.
///
/// # Errors
/// All faults that were found: those of the TOML file first, then those of the other files, each in the order of its lines.
/// The list is never empty.
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
