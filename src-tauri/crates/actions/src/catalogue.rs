//! Checks exercise files: the ones that ship with the program, or those of a folder with their language files.

use crate::{ActionResult, refuse};
use exercises::catalogue::{Exercise, Lang};
use exercises::file_fault::{self, FileFault};
use format::catalogue::{Fault, FaultKind, TextFile, exercise_file_name, text_file_name};
use std::collections::BTreeMap;
use std::path::Path;
use wire::Failure;

/// Largest size of an exercise file or a language file, in bytes.
const MAX_FILE: u64 = 1024 * 1024;

/// The result of checking a catalogue.
pub struct Checked {
    /// The exercises without a fault.
    pub exercises: Vec<Exercise>,
    /// Every fault, with file, line and what would be allowed.
    pub faults: Vec<String>,
}

/// Checks the catalogue that ships with the program, or all TOML files of a folder with their language files.
///
/// # Errors
/// [`Failure`] if the folder or one of its files cannot be read, or if there is no TOML file in it.
pub fn check(dir: Option<&Path>) -> ActionResult<Checked> {
    let Some(dir) = dir else {
        return Ok(match format::catalogue::embedded() {
            Ok(catalogue) => Checked { exercises: catalogue.exercises, faults: Vec::new() },
            Err(faults) => Checked { exercises: Vec::new(), faults: said(&faults) },
        });
    };
    let files = store::files::read_all(dir, "toml", MAX_FILE).map_err(refuse::reading)?;
    if files.is_empty() {
        let fault = FileFault::at(0, file_fault::FaultKind::NoExerciseFile);
        return Err(Failure::NotUnderstood { file: dir.display().to_string(), fault });
    }
    let mut texts: BTreeMap<String, Vec<u8>> =
        store::files::read_all(dir, "ftl", MAX_FILE).map_err(refuse::reading)?.into_iter().collect();
    let mut checked = Checked { exercises: Vec::new(), faults: Vec::new() };
    for (name, bytes) in files {
        match check_files(&name, bytes, &mut texts) {
            Ok(exercise) if checked.exercises.iter().any(|other| other.id == exercise.id) => {
                checked.faults.push(format!("{name}: the id \"{}\" is that of another file in this folder", exercise.id));
            }
            Ok(exercise) => checked.exercises.push(exercise),
            Err(faults) => checked.faults.extend(faults),
        }
    }
    let left = texts.keys().map(|name| unclaimed(name)).collect::<Vec<_>>();
    checked.faults.extend(said(&left));
    Ok(checked)
}

/// Reads an exercise file, and removes its language files from `texts`.
fn check_files(name: &str, bytes: Vec<u8>, texts: &mut BTreeMap<String, Vec<u8>>) -> Result<Exercise, Vec<String>> {
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
    format::catalogue::read(name, &exercise, &beside).map_err(|faults| said(&faults))
}

fn utf8(name: &str, bytes: Vec<u8>) -> Result<String, String> {
    String::from_utf8(bytes).map_err(|broken| {
        let good = &broken.as_bytes()[..broken.utf8_error().valid_up_to()];
        let line = 1 + good.iter().filter(|byte| **byte == b'\n').count();
        format!("{name}, line {line}: text in UTF-8 belongs here")
    })
}

/// The fault of a language file that belongs to no exercise file of the folder.
fn unclaimed(name: &str) -> Fault {
    let kind = match exercise_file_name(name) {
        Ok(expected) => FaultKind::NoExercise { expected },
        Err(kind) => kind,
    };
    Fault { file: name.to_owned(), line: 1, field: String::new(), kind }
}

fn said(faults: &[Fault]) -> Vec<String> {
    faults.iter().map(ToString::to_string).collect()
}
