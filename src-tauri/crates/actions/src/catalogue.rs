//! Checking exercise files before they ship.

use crate::{ActionResult, refuse};
use exercises::catalogue::Exercise;
use std::path::Path;
use wire::Failure;

/// Most bytes of an exercise file.
const MAX_EXERCISE: u64 = 1024 * 1024;

/// What checking a catalogue found.
pub struct Checked {
    /// The exercises without a fault.
    pub exercises: Vec<Exercise>,
    /// Every fault, with file, line and what is allowed.
    pub faults: Vec<String>,
}

/// Checks the shipped catalogue, or all TOML files of a folder.
pub fn check(dir: Option<&Path>) -> ActionResult<Checked> {
    let Some(dir) = dir else {
        return Ok(match format::catalogue::embedded() {
            Ok(catalogue) => Checked { exercises: catalogue.exercises, faults: Vec::new() },
            Err(faults) => Checked { exercises: Vec::new(), faults: faults.iter().map(ToString::to_string).collect() },
        });
    };
    let files = store::files::read_all(dir, "toml", MAX_EXERCISE).map_err(refuse::reading)?;
    if files.is_empty() {
        let expected = "it holds no exercise file, whose name ends in .toml".into();
        return Err(Failure::NotUnderstood { file: dir.display().to_string(), line: 0, expected });
    }
    let mut checked = Checked { exercises: Vec::new(), faults: Vec::new() };
    for (name, bytes) in files {
        match check_file(&name, bytes) {
            Ok(exercise) if checked.exercises.iter().any(|other| other.id == exercise.id) => {
                checked.faults.push(format!("{name}: the id \"{}\" is that of another file in this folder", exercise.id));
            }
            Ok(exercise) => checked.exercises.push(exercise),
            Err(faults) => checked.faults.extend(faults),
        }
    }
    Ok(checked)
}

fn check_file(name: &str, bytes: Vec<u8>) -> Result<Exercise, Vec<String>> {
    let text = String::from_utf8(bytes).map_err(|broken| {
        let good = &broken.as_bytes()[..broken.utf8_error().valid_up_to()];
        let line = 1 + good.iter().filter(|byte| **byte == b'\n').count();
        vec![format!("{name}, line {line}: text in UTF-8 belongs here")]
    })?;
    format::catalogue::read(name, &text).map_err(|faults| faults.iter().map(ToString::to_string).collect())
}
