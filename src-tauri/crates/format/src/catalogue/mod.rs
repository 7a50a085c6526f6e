//! Reads exercises from TOML files, each with its texts in Fluent files next to it, one for each language. Every fault is
//! reported with its file and line. The shipped exercises are compiled into the program.
//!
//! A clinic's own exercise is a single file, which has the texts in its TOML: [`read_own`] and [`write()`].

mod embedded;
mod exercise;
mod figure;
mod language;
mod page;
mod step_rule;
mod texts;
mod write;

pub use embedded::{FILES, Files, embedded};
pub use page::Fault;
pub use write::write;

use crate::fields;
use exercises::catalogue::{Exercise, ExerciseId, Lang, MAX_OWN_NAME};
use exercises::file_fault::{ExerciseFault, FaultKind, FileFault};
use language::Language;
use page::{Item, Page, Table};
use texts::Source;

/// Size of the largest exercise file and the largest language file that are read, in bytes.
pub const MAX_BYTES: usize = 64 * 1024;

/// A clinic's own exercise with comments, to start from.
pub const OWN_EXAMPLE: &str = include_str!("own_example.toml");

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
    read_page(file_name, text, |top| Source::of(top, beside.iter().map(Language::new).collect()))
}

/// Reads a clinic's own exercise from its author's file: one TOML file with its texts, in every language or in some. Its id is what the
/// author calls it.
///
/// # Errors
/// As for [`read`].
pub fn read_own(file_name: &str, text: &str) -> Result<Exercise, Vec<Fault>> {
    read_page(file_name, text, |top| {
        own_name(top);
        Source::own(top)
    })
}

/// Reads a clinic's own exercise as it is on a card, where its id is one of [`Exercise::id`]'s own form.
///
/// # Errors
/// As for [`read`].
pub fn read_on_card(text: &str) -> Result<Exercise, Vec<Fault>> {
    read_page("", text, Source::own)
}

/// Reads a clinic's own exercise that is still being written, as [`write()`] wrote it: texts may be missing or too long.
///
/// # Errors
/// As for [`read`], of what an exercise that is being written cannot have.
pub fn read_unfinished(text: &str) -> Result<Exercise, Vec<Fault>> {
    read_whole(Page::unfinished(text), Source::own)
}

/// Notes what is wrong with the name of an own exercise; that it is an id is checked with every other.
fn own_name(top: &Table) {
    let Some(id) = top.optional("id").and_then(|item| item.plain_text()) else { return };
    let fault = if ExerciseId::new(id).is_ok_and(|id| id.is_reserved()) {
        ExerciseFault::ReservedId
    } else if id.len() > MAX_OWN_NAME {
        ExerciseFault::OwnIdTooLong { most: MAX_OWN_NAME as u32 }
    } else if FILES.iter().any(|shipped| shipped.name.strip_suffix(".toml") == Some(id)) {
        ExerciseFault::ShippedId { id: id.to_owned() }
    } else {
        return;
    };
    top.fault("id", FaultKind::Exercise(fault));
}

/// The fault of an own exercise's file whose revision is not higher than the highest that there is, `have`.
pub fn old_revision(file_name: &str, text: &str, found: u16, have: u16) -> Fault {
    let page = Page::new(file_name, text);
    let kind = FaultKind::Exercise(ExerciseFault::OldRevision { found, have });
    if let Ok(file) = fields::toml(text)
        && let Some(top) = Item::of_file(&page, &file).table()
    {
        top.fault("revision", kind.clone());
    }
    let fault = FileFault { field: "revision".to_owned(), ..FileFault::at(0, kind) };
    page.into_faults().pop().unwrap_or(Fault { file: file_name.to_owned(), fault })
}

fn read_page<'a>(
    file_name: &'a str,
    text: &'a str,
    source: impl FnOnce(&Table) -> Source<'a>,
) -> Result<Exercise, Vec<Fault>> {
    read_whole(Page::new(file_name, text), source)
}

fn read_whole<'a>(page: Page<'a>, source: impl FnOnce(&Table) -> Source<'a>) -> Result<Exercise, Vec<Fault>> {
    let (exercise, of_texts) = whole_file(&page, source).unwrap_or_default();
    let mut faults = page.into_faults();
    faults.extend(of_texts);
    exercise.filter(|_| faults.is_empty()).ok_or(faults)
}

/// The exercise of the file and the faults of the language files; the file's own are noted on its page.
fn whole_file<'a>(page: &Page, source: impl FnOnce(&Table) -> Source<'a>) -> Option<(Option<Exercise>, Vec<Fault>)> {
    let bytes = page.text.len();
    if bytes > MAX_BYTES {
        page.fault(0, "", too_large(bytes));
        return None;
    }
    let file = fields::toml(page.text).map_err(|fault| page.found(fault)).ok()?;
    let top = Item::of_file(page, &file).table()?;
    let source = source(&top);
    let exercise = exercise::exercise(&top, &source);
    let of_texts = source.into_files().into_iter().flat_map(Language::into_faults).collect();
    Some((exercise, of_texts))
}

fn too_large(bytes: usize) -> FaultKind {
    FaultKind::TooLarge { bytes: bytes as u64, most: MAX_BYTES as u64 }
}

#[cfg(test)]
mod tests;
