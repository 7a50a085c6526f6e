//! The clinic's own exercises: added from files or from the editor, shown, handed on, removed.
//!
//! An edit is a new revision. Of earlier ones those are kept that a card has; a removed exercise is kept as long as a card has it, and no
//! longer offered.

use super::own_rows::{self, Own};
use super::rows::{self, Patient};
use super::sealed::{self, Sealer};
use super::{lock, own_catalogue};
use crate::card_catalogue::own_of;
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use exercises::authoring;
use exercises::catalogue::{Exercise, ExerciseId, Lang};
use exercises::file_fault::{ExerciseFault, FaultKind, FileFault};
use exercises::plan::Plan;
use format::catalogue::{Fault, MAX_BYTES, old_revision, read_own, write};
use format::own_exercise::{self, OwnRow, OwnState};
use std::collections::BTreeMap;
use std::sync::Arc;
use store::{StoreError, Tx};
use wire::Failure;
use wire::prescribing::{ImportOwnRequest, MAX_OWN, OwnEdited, OwnExercises, OwnLine, OwnRemoved};

/// What faults call the file of an exercise that is being edited.
pub(super) const EDITED: &str = "exercise.toml";

/// The file of an own exercise that can be saved.
pub struct CheckedOwn {
    /// The exercise, with the id that it has in this clinic.
    pub exercise: Exercise,
    /// What its author calls it.
    pub name: String,
    /// The only language that its texts are in.
    pub only: Option<Lang>,
    /// Whether it is offered already, just as it is.
    pub is_known: bool,
    /// As it is stored and handed on.
    text: String,
}

/// Checks the file of an own exercise. `file` is the name that a fault mentions.
///
/// # Errors
/// [`Failure`] if the store cannot be read. What is wrong with the file is the inner error, which is never empty.
pub fn check(folder: &DataFolder, file: &str, bytes: &[u8]) -> ActionResult<Result<CheckedOwn, Vec<Fault>>> {
    let mark = lock::unlocked_keys(folder)?.mark();
    let read = format::text(bytes).map_err(|fault| vec![Fault { file: file.to_owned(), fault }]);
    let read = read.and_then(|text| read_own(file, text).map(|exercise| (text, exercise)));
    let (source, exercise) = match read {
        Ok(read) => read,
        Err(faults) => return Ok(Err(faults)),
    };
    let text = write(&exercise);
    if text.len() > MAX_BYTES {
        let kind = FaultKind::TooLarge { bytes: text.len() as u64, most: MAX_BYTES as u64 };
        return Ok(Err(vec![Fault { file: file.to_owned(), fault: FileFault::at(0, kind) }]));
    }
    let name = exercise.id.to_string();
    let id = ExerciseId::own(mark, &name).map_err(refuse::internal)?;
    let (found, only) = (exercise.revision, only_language(&exercise));
    let exercise = Exercise { id, ..exercise };
    let same = |known: &Exercise| *known == exercise;
    let known = revisions(folder, &exercise.id)?;
    let newest = known.last_key_value().map(|(have, _)| *have);
    match newest.filter(|have| *have >= found && !known.get(&found).is_some_and(same)) {
        Some(have) => Ok(Err(vec![old_revision(file, source, found, have)])),
        None => {
            let is_known = own_catalogue::offered(folder)?.get(&exercise.id) == Some(&exercise);
            Ok(Ok(CheckedOwn { exercise, name, only, is_known, text }))
        }
    }
}

fn only_language(exercise: &Exercise) -> Option<Lang> {
    let mut langs = exercise.texts.keys().copied();
    langs.next().filter(|_| langs.next().is_none() && Lang::ALL.len() > 1)
}

/// The revisions of an own exercise that the clinic or a card has.
fn revisions(folder: &DataFolder, id: &ExerciseId) -> ActionResult<BTreeMap<u16, Exercise>> {
    let mut known = BTreeMap::new();
    for patient in rows::patients(folder)?.patients.into_iter().flatten() {
        for card in patient.cards.values() {
            let has = card.plan.prescription.items.iter().any(|item| item.exercise == *id);
            let own = if has { own_of(&card.own).unwrap_or_default() } else { Vec::new() };
            known.extend(own.into_iter().filter(|own| own.id == *id).map(|own| (own.revision, own)));
        }
    }
    let rows = own_rows::all(folder)?;
    known.extend(rows.iter().filter(|own| own.is_of(id)).filter_map(|own| Some((own.revision(), own.exercise.clone()?))));
    Ok(known)
}

/// Adds the own exercises of several files, all of them or none: new ones, and new revisions of known ones. One that was removed is
/// offered again.
///
/// # Errors
/// [`Failure::TooManyOwn`], or a failure to use the store. What is wrong with the files is the inner error, which is never empty.
pub fn add(folder: &mut DataFolder, files: &[(String, Vec<u8>)]) -> ActionResult<Result<Vec<CheckedOwn>, Vec<Fault>>> {
    let mut good: Vec<CheckedOwn> = Vec::new();
    let mut faults = Vec::new();
    for (file, bytes) in files {
        match check(folder, file, bytes)? {
            Ok(checked) if good.iter().any(|other| other.exercise.id == checked.exercise.id) => {
                let kind = FaultKind::Exercise(ExerciseFault::SameId { id: checked.name });
                faults.push(Fault { file: file.clone(), fault: FileFault::at(0, kind) });
            }
            Ok(checked) => good.push(checked),
            Err(found) => faults.extend(found),
        }
    }
    if !faults.is_empty() {
        return Ok(Err(faults));
    }
    keep(folder, &good, None)?;
    Ok(Ok(good))
}

/// Stores exercises that were checked, and deletes the unfinished one that they come from.
fn keep(folder: &mut DataFolder, checked: &[CheckedOwn], draft: Option<i64>) -> ActionResult<()> {
    let all = own_rows::all(folder)?;
    let known = own_rows::finished(&all);
    let new = checked.iter().filter(|one| !known.contains_key(&one.exercise.id)).count();
    if new > 0 && known.len() + new > MAX_OWN {
        return Err(Failure::TooManyOwn { most: MAX_OWN as u16 });
    }
    folder.all_or_nothing(|folder| {
        sealed::change(folder, |tx, sealer| {
            checked.iter().try_for_each(|one| put_row(tx, sealer, one, known.get(&one.exercise.id)))?;
            let mut draft = all.iter().filter(|own| own.state == OwnState::Draft && Some(own.row.id) == draft);
            draft.try_for_each(|own| own_rows::remove(tx, sealer, &own.row))
        })?;
        forget_unused(folder)
    })?;
    settle(folder)
}

/// Stores an exercise, if it is not offered already, beside the revisions that there are.
fn put_row(
    tx: &Tx<'_>,
    sealer: &mut Sealer<'_>,
    CheckedOwn { exercise, text, .. }: &CheckedOwn,
    revisions: Option<&Vec<Arc<Own>>>,
) -> Result<(), StoreError> {
    let plain = row(OwnState::Offered, text)?;
    match revisions.into_iter().flatten().find(|own| own.revision() == exercise.revision) {
        Some(own) if own.state == OwnState::Offered => Ok(()),
        Some(own) => own_rows::replace(tx, sealer, &own.row, &plain),
        None => own_rows::insert(tx, sealer, &plain).map(drop),
    }
}

/// The bytes of a row whose text was checked.
fn row(state: OwnState, text: &str) -> Result<Vec<u8>, StoreError> {
    let row = OwnRow { state, text: text.to_owned() };
    own_exercise::write(&row).map_err(|fault| StoreError::Conflict { detail: fault.to_string() })
}

/// Removes earlier revisions, and removed exercises, that no card has. Nothing is removed while cards cannot be read.
pub(super) fn forget_unused(folder: &mut DataFolder) -> ActionResult<()> {
    let all = own_rows::all(folder)?;
    let Some(on_cards) = own_rows::on_cards(folder)? else { return Ok(()) };
    let mut unused: Vec<Arc<Own>> = Vec::new();
    for (id, revisions) in own_rows::finished(&all) {
        let newest = revisions.last().filter(|own| own.state == OwnState::Offered).map(|own| own.row.id);
        let is_used = |own: &Own| Some(own.row.id) == newest || on_cards.contains(&(id.clone(), own.revision()));
        unused.extend(revisions.iter().filter(|own| !is_used(own)).cloned());
    }
    if unused.is_empty() {
        return Ok(());
    }
    sealed::change(folder, |tx, sealer| unused.iter().try_for_each(|own| own_rows::remove(tx, sealer, &own.row)))
}

pub(super) fn settle(folder: &DataFolder) -> ActionResult<()> {
    folder.home.store().settle().map_err(refuse::store(folder.home.dir()))
}

/// An own exercise to be changed, as its author calls it.
///
/// # Errors
/// [`Failure::NoSuchOwn`].
pub fn edit(folder: &DataFolder, name: &str) -> ActionResult<OwnEdited> {
    let line = find(folder, name)?;
    let id = ExerciseId::new(line.name).map_err(refuse::internal)?;
    Ok(OwnEdited { exercise: Exercise { id, ..line.exercise }, draft: None })
}

/// Saves an own exercise that was edited: a new one under an id made from its name, a known one as a new revision.
///
/// # Errors
/// [`Failure::NotUnderstood`] with the first thing that is wrong in it; [`Failure::TooManyOwn`]. Nothing is saved then.
pub fn save_edited(folder: &mut DataFolder, edited: &OwnEdited) -> ActionResult<OwnExercises> {
    let exercise = numbered(folder, authoring::tidied(&edited.exercise))?;
    let checked = check(folder, EDITED, write(&exercise).as_bytes())?.map_err(first_fault)?;
    keep(folder, &[checked], edited.draft)?;
    list(folder)
}

/// The exercise with the id and the revision under which it is saved.
fn numbered(folder: &DataFolder, exercise: Exercise) -> ActionResult<Exercise> {
    let mark = lock::unlocked_keys(folder)?.mark();
    let own = |name: &str| ExerciseId::own(mark, name);
    if exercise.id == authoring::new_id() {
        let name = exercise.texts.values().next().map(|texts| texts.name.clone()).unwrap_or_default();
        let mut known = Vec::new();
        for own in own_rows::finished(&own_rows::all(folder)?).keys() {
            known.extend(own.own_name().map(str::to_owned));
        }
        let ships = |id: &str| folder.catalogue.exercises.iter().any(|one| one.id.as_str() == id);
        let id = authoring::free_id(&name, |id| ships(id) || known.iter().any(|other| other == id));
        // A removed one may still be on a card under this id.
        let last =
            revisions(folder, &own(id.as_str()).map_err(refuse::internal)?)?.last_key_value().map_or(0, |(last, _)| *last);
        return Ok(Exercise { id, revision: last.saturating_add(1), ..exercise });
    }
    let id = own(exercise.id.as_str()).map_err(refuse::internal)?;
    let Some((last, newest)) = revisions(folder, &id)?.pop_last() else { return Ok(Exercise { revision: 1, ..exercise }) };
    let is_same = newest == Exercise { id, revision: last, ..exercise.clone() };
    Ok(Exercise { revision: if is_same { last } else { last.saturating_add(1) }, ..exercise })
}

fn first_fault(faults: Vec<Fault>) -> Failure {
    match faults.into_iter().next() {
        Some(first) => Failure::NotUnderstood { file: first.file, fault: first.fault },
        None => refuse::internal("refused without a fault"),
    }
}

/// Adds own exercises from their files, all of them or none.
///
/// # Errors
/// [`Failure::NotUnderstood`] with the first thing that is wrong in a file; [`Failure::TooManyOwn`]. Nothing is added then.
pub fn import(folder: &mut DataFolder, request: &ImportOwnRequest) -> ActionResult<OwnExercises> {
    let files: Vec<(String, Vec<u8>)> =
        request.files.iter().map(|(name, text)| (name.clone(), text.clone().into_bytes())).collect();
    add(folder, &files)?.map_err(first_fault)?;
    list(folder)
}

/// The own exercises, and the unfinished ones.
pub fn list(folder: &DataFolder) -> ActionResult<OwnExercises> {
    let all = own_rows::all(folder)?;
    let patients: Vec<Patient> = rows::patients(folder)?.patients.into_iter().flatten().collect();
    let lines = own_rows::finished(&all).into_values().filter_map(|revisions| line(&revisions, &patients));
    let mut lines: Vec<OwnLine> = lines.collect();
    lines.sort_by(|one, other| one.name.cmp(&other.name));
    Ok(OwnExercises { lines, drafts: super::own_drafts::of(&all) })
}

fn line(revisions: &[Arc<Own>], patients: &[Patient]) -> Option<OwnLine> {
    let newest = revisions.last()?;
    let exercise = newest.exercise.clone()?;
    let has = |patient: &&Patient| patient.newest().is_some_and(|card| uses(&card.plan, &exercise.id));
    Some(OwnLine {
        name: exercise.id.own_name()?.to_owned(),
        langs: exercise.texts.keys().copied().collect(),
        revisions: revisions.iter().map(|own| own.revision()).collect(),
        offered: newest.state == OwnState::Offered,
        patients: patients.iter().filter(has).map(|patient| patient.code.clone()).collect(),
        exercise,
    })
}

fn uses(plan: &Plan, id: &ExerciseId) -> bool {
    plan.prescription.items.iter().any(|item| item.exercise == *id)
}

/// One own exercise, by its id or by what its author calls it.
///
/// # Errors
/// [`Failure::NoSuchOwn`].
pub fn find(folder: &DataFolder, name: &str) -> ActionResult<OwnLine> {
    let known = |line: &OwnLine| line.name == name || line.exercise.id.as_str() == name;
    let found = list(folder)?.lines.into_iter().find(known);
    found.ok_or_else(|| Failure::NoSuchOwn { name: name.to_owned() })
}

/// The file of an own exercise, to be handed on.
///
/// # Errors
/// [`Failure::NoSuchOwn`].
pub fn text(folder: &DataFolder, name: &str) -> ActionResult<String> {
    Ok(write(&edit(folder, name)?.exercise))
}

/// Writes the file of an own exercise into the folder for saved files.
///
/// # Errors
/// [`Failure::NoSuchOwn`], or the failure to write.
pub fn export(folder: &DataFolder, moment: &Moment, name: &str) -> ActionResult<Saved> {
    let text = text(folder, name)?;
    let path = platform::free_name(folder, moment, "exercise", ".toml");
    platform::write(&path, text.as_bytes())?;
    Ok(Saved { path: path.display().to_string(), bytes: text.len() as u64 })
}

/// Removes an own exercise: it is no longer offered, and goes as soon as no card has it.
///
/// # Errors
/// [`Failure::NoSuchOwn`].
pub fn remove(folder: &mut DataFolder, name: &str) -> ActionResult<OwnRemoved> {
    let line = find(folder, name)?;
    let id = line.exercise.id;
    let all = own_rows::all(folder)?;
    let offered: Vec<&Arc<Own>> = all.iter().filter(|own| own.is_of(&id) && own.state == OwnState::Offered).collect();
    folder.all_or_nothing(|folder| {
        sealed::change(folder, |tx, sealer| {
            let removed = |own: &&Arc<Own>| own_rows::replace(tx, sealer, &own.row, &row(OwnState::Removed, &own.text)?);
            offered.iter().try_for_each(removed)
        })?;
        forget_unused(folder)
    })?;
    settle(folder)?;
    let kept = own_rows::all(folder)?.iter().any(|own| own.is_of(&id));
    Ok(OwnRemoved { name: line.name, kept })
}
