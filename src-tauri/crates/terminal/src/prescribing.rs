//! `carryover clinic exercise` and `carryover clinic set`.

use crate::Done;
use crate::args::{OwnExercise, PlanSet};
use crate::out::Out;
use actions::catalogue::Fault;
use actions::clinic::own_exercises::{self, CheckedOwn};
use actions::clinic::sets;
use actions::{ActionResult, DataFolder, Moment, platform};
use exercises::catalogue::Exercise;
use serde_json::json;
use std::path::Path;
use wire::Failure;
use wire::prescribing::{ImportSetRequest, OwnExercises, OwnLine, SetLine};
use words::{Key, Words};

pub fn exercise(folder: &mut DataFolder, what: &OwnExercise, out: &mut Out) -> Done {
    match what {
        OwnExercise::Add { files } => add(folder, files, out),
        OwnExercise::List => list(&own_exercises::list(folder)?, out),
        OwnExercise::Show { id } => {
            let line = own_exercises::find(folder, id)?;
            out.say(|words| shown(words, &line), || json!(line));
            Ok(true)
        }
        OwnExercise::Export { id, out: file } => {
            platform::write(file, own_exercises::text(folder, id)?.as_bytes())?;
            wrote(file, out)
        }
        OwnExercise::Remove { id } => {
            let removed = own_exercises::remove(folder, id)?;
            let said =
                |words: Words| if removed.kept { words.own_kept(&removed.name) } else { words.own_gone(&removed.name) };
            out.say(said, || json!({ "removed": removed.name, "kept": removed.kept }));
            Ok(true)
        }
        OwnExercise::Check { file } => {
            let (name, bytes) = read(file)?;
            match own_exercises::check(folder, &name, &bytes)? {
                Ok(good) => {
                    said(&good, out, |words, good| words.own_good(&name, &good.name, good.exercise.revision), "checked");
                    Ok(true)
                }
                Err(faults) => Ok(wrong(faults, out)),
            }
        }
    }
}

fn add(folder: &mut DataFolder, files: &[std::path::PathBuf], out: &mut Out) -> Done {
    let files = files.iter().map(|file| read(file)).collect::<ActionResult<Vec<_>>>()?;
    match own_exercises::add(folder, &files)? {
        Ok(added) => {
            for ((file, _), one) in files.iter().zip(&added) {
                let line = |words: Words, one: &CheckedOwn| match one.is_known {
                    true => words.own_known(file, &one.name, one.exercise.revision),
                    false => words.own_added(file, &one.name, one.exercise.revision, &one.exercise.id.to_string()),
                };
                said(one, out, line, if one.is_known { "known" } else { "added" });
            }
            Ok(true)
        }
        Err(faults) => Ok(wrong(faults, out)),
    }
}

/// A file with its name. It is read only if it may be an exercise by its size.
fn read(file: &Path) -> ActionResult<(String, Vec<u8>)> {
    Ok((file.display().to_string(), platform::read(file, format::catalogue::MAX_BYTES as u64)?))
}

/// Prints a line about an exercise, and on stderr that its texts are in one language.
fn said(one: &CheckedOwn, out: &mut Out, line: impl FnOnce(Words, &CheckedOwn) -> String, what: &str) {
    let id = one.exercise.id.to_string();
    out.say(|words| line(words, one), || json!({ what: one.name, "id": id, "revision": one.exercise.revision }));
    if let Some(lang) = one.only {
        let said = out.words.own_only_language(&one.name, out.words.language_of(lang));
        out.note(&said);
    }
}

fn wrong(faults: Vec<Fault>, out: &mut Out) -> bool {
    for Fault { file, fault } in faults {
        out.fault(&Failure::NotUnderstood { file, fault });
    }
    false
}

fn wrote(file: &Path, out: &mut Out) -> Done {
    out.say(|_| file.display().to_string(), || json!({ "files": [file] }));
    Ok(true)
}

/// Prints a line for each exercise: name, revisions, languages, whether it is offered, and whose plans have it.
fn list(OwnExercises { lines, drafts }: &OwnExercises, out: &mut Out) -> Done {
    for line in lines {
        let said = |words: Words| {
            let revisions: Vec<String> = line.revisions.iter().map(u16::to_string).collect();
            let langs: Vec<&str> = line.langs.iter().map(|lang| lang.code()).collect();
            let state = words.text(if line.offered { Key::OwnOffered } else { Key::OwnIsRemoved });
            [&line.name, &words.commas(&revisions), &words.commas(&langs), state, &words.commas(&line.patients)].join("\t")
        };
        out.say(said, || json!(line));
    }
    for draft in drafts {
        let name = |words: Words| {
            let texts = draft.exercise.as_ref().and_then(|exercise| exercise.text(words.lang()));
            texts.map(|texts| texts.name.clone()).unwrap_or_default()
        };
        out.say(|words| [&draft.draft.to_string(), &name(words), words.text(Key::OwnDraft)].join("\t"), || json!(draft));
    }
    Ok(true)
}

/// An exercise with its texts in the language of the terminal, or in the one that they are in.
fn shown(words: Words, line: &OwnLine) -> String {
    let Exercise { id, revision, ladders, .. } = &line.exercise;
    let Some(texts) = line.exercise.text(words.lang()) else { return id.to_string() };
    let rungs: Vec<&str> = ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| rung.id.as_str()).collect();
    let state = words.text(if line.offered { Key::OwnOffered } else { Key::OwnIsRemoved });
    let head = [format!("{id}\t{revision}\t{state}"), texts.name.clone(), texts.purpose.clone()];
    let levels = [words.own_levels(&words.commas(&rungs)), texts.set_up.clone()];
    let steps = texts.steps.iter().zip(1..).map(|(step, n)| format!("{n}. {step}"));
    let rest = [&texts.mistakes, &texts.cautions, &texts.stop_signs].into_iter().flatten().cloned();
    head.into_iter().chain(levels).chain(steps).chain(rest).collect::<Vec<_>>().join("\n")
}

pub fn set(folder: &mut DataFolder, moment: &Moment, what: &PlanSet, out: &mut Out) -> Done {
    match what {
        PlanSet::Save { name, from } => {
            let file = from.display().to_string();
            let bytes = platform::read(from, format::plan_file::MAX_BYTES)?;
            let text = format::text(&bytes).map_err(platform::not_understood(&file))?.to_owned();
            sets::import(folder, moment, &ImportSetRequest { name: name.clone(), file, text })?;
            out.say(|words| words.set_saved(name), || json!({ "saved": name }));
        }
        PlanSet::List => {
            for SetLine { name, prescription } in sets::list(folder)? {
                let items = prescription.items.len();
                out.say(|words| words.set_line(items, &name), || json!({ "set": name, "items": prescription.items }));
            }
        }
        PlanSet::Export { name, out: file } => {
            sets::export(folder, moment, name, Some(file))?;
            return wrote(file, out);
        }
        PlanSet::Remove { name } => {
            sets::remove(folder, name)?;
            out.say(|words| words.set_removed(name), || json!({ "removed": name }));
        }
    }
    Ok(true)
}
