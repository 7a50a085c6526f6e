//! Checks exercise files: the ones that ship with the program, or those of a folder with their language files.

use crate::{ActionResult, refuse};
use exercises::catalogue::{Exercise, Lang};
use exercises::file_fault::{ExerciseFault, FaultKind, FileFault};
use format::catalogue::{TextFile, exercise_file_name, text_file_name};
use std::collections::BTreeMap;
use std::path::Path;
use wire::Failure;

pub use format::catalogue::Fault;
/// Largest size of an exercise file or a language file, in bytes.
const MAX_FILE: u64 = 1024 * 1024;

/// The result of checking a catalogue.
pub struct Checked {
    /// The exercises without a fault.
    pub exercises: Vec<Exercise>,
    /// Every fault, with file, line and what would be allowed.
    pub faults: Vec<Fault>,
}

/// Checks the catalogue that ships with the program, or all TOML files of a folder with their language files.
///
/// # Errors
/// [`Failure`] if the folder or one of its files cannot be read, or if there is no TOML file in it.
pub fn check(dir: Option<&Path>) -> ActionResult<Checked> {
    let Some(dir) = dir else {
        return Ok(match format::catalogue::embedded() {
            Ok(catalogue) => Checked { exercises: catalogue.exercises, faults: Vec::new() },
            Err(faults) => Checked { exercises: Vec::new(), faults },
        });
    };
    let files = store::files::read_all(dir, "toml", MAX_FILE).map_err(refuse::reading)?;
    if files.is_empty() {
        let fault = FileFault::at(0, FaultKind::NoExerciseFile);
        return Err(Failure::NotUnderstood { file: dir.display().to_string(), fault });
    }
    let mut texts: BTreeMap<String, Vec<u8>> =
        store::files::read_all(dir, "ftl", MAX_FILE).map_err(refuse::reading)?.into_iter().collect();
    let mut checked = Checked { exercises: Vec::new(), faults: Vec::new() };
    for (name, bytes) in files {
        match check_files(&name, bytes, &mut texts) {
            Ok(exercise) if checked.exercises.iter().any(|other| other.id == exercise.id) => {
                checked.faults.push(of_file(&name, 0, ExerciseFault::SameId { id: exercise.id.to_string() }));
            }
            Ok(exercise) => checked.exercises.push(exercise),
            Err(faults) => checked.faults.extend(faults),
        }
    }
    checked.faults.extend(texts.keys().map(|name| unclaimed(name)));
    Ok(checked)
}

/// Reads an exercise file, and removes its language files from `texts`.
fn check_files(name: &str, bytes: Vec<u8>, texts: &mut BTreeMap<String, Vec<u8>>) -> Result<Exercise, Vec<Fault>> {
    let mut faults = Vec::new();
    let beside: Vec<(Lang, String, Vec<u8>)> = Lang::ALL
        .into_iter()
        .filter_map(|lang| texts.remove_entry(&text_file_name(name, lang)).map(|(name, bytes)| (lang, name, bytes)))
        .collect();
    let mut text = |name: &str, bytes| utf8(name, bytes).map_err(|fault| faults.push(fault)).unwrap_or_default();
    let exercise = text(name, bytes);
    let beside: Vec<(Lang, String, String)> =
        beside.into_iter().map(|(lang, name, bytes)| (lang, text(&name, bytes), name)).collect();
    if !faults.is_empty() {
        return Err(faults);
    }
    let beside: Vec<TextFile> = beside.iter().map(|(lang, text, name)| TextFile { lang: *lang, name, text }).collect();
    format::catalogue::read(name, &exercise, &beside)
}

fn utf8(name: &str, bytes: Vec<u8>) -> Result<String, Fault> {
    let text = format::text(&bytes).map(str::to_owned);
    text.map_err(|fault| Fault { file: name.to_owned(), fault })
}

/// The fault of a language file that belongs to no exercise file of the folder.
fn unclaimed(name: &str) -> Fault {
    let fault = match exercise_file_name(name) {
        Ok(expected) => ExerciseFault::NoExercise { expected },
        Err(fault) => fault,
    };
    of_file(name, 1, fault)
}

fn of_file(name: &str, line: u32, fault: ExerciseFault) -> Fault {
    Fault { file: name.to_owned(), fault: FileFault::at(line, FaultKind::Exercise(fault)) }
}
