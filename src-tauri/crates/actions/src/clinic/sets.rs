//! Sets: what the clinic prescribes often, under a name of its own. A plan is started from one, and one is handed on as a plan file.

use super::own_exercises::settle;
use super::{drafting, lock, own_catalogue, rows, sealed};
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use exercises::catalogue::ExerciseId;
use exercises::id::PlanId;
use exercises::plan::check::{self, Problem};
use exercises::plan::{Header, Item, Plan, Prescription};
use format::plan_file;
use format::plan_set::{self, MAX_NAME, PlanSet};
use std::path::Path;
use store::table::plan_set::Row;
use store::{StoreError, table};
use wire::Failure;
use wire::clinic::AskKeep;
use wire::prescribing::{ImportSetRequest, MAX_SETS, SaveSetRequest, SetLine, SetUsed, UseSetRequest};

/// A set that opens, with the row that it is in.
struct Opened {
    row: Row,
    line: SetLine,
}

/// The sets that open, by name. That rows were changed from outside is said when the store is unlocked.
fn all(folder: &DataFolder) -> ActionResult<Vec<Opened>> {
    let keys = lock::unlocked_keys(folder)?;
    let open = |row: Row| {
        let plain = vault::rows::open(keys, &sealed::set_place(row.id), &row.sealed).ok()?;
        let PlanSet { name, plan } = plan_set::read(&plain).ok()?;
        let prescription = plan_file::read(&plan, plan_set::start()).ok()?;
        Some(Opened { row, line: SetLine { name, prescription } })
    };
    let mut all: Vec<Opened> = rows::read(folder, table::plan_set::all)?.into_iter().filter_map(open).collect();
    all.sort_by_key(|set| set.line.name.to_lowercase());
    Ok(all)
}

/// The sets, by name.
pub fn list(folder: &DataFolder) -> ActionResult<Vec<SetLine>> {
    Ok(all(folder)?.into_iter().map(|set| set.line).collect())
}

fn is_called(set: &Opened, name: &str) -> bool {
    set.line.name.to_lowercase() == name.trim().to_lowercase()
}

/// A set by its name, in capitals or not.
///
/// # Errors
/// [`Failure::NoSuchSet`].
fn find(folder: &DataFolder, name: &str) -> ActionResult<Opened> {
    let found = all(folder)?.into_iter().find(|set| is_called(set, name));
    found.ok_or_else(|| Failure::NoSuchSet { name: name.to_owned() })
}

/// Saves the items of a prescription as a set, in place of one of the same name.
///
/// # Errors
/// [`Failure::SetNameUnfit`]; [`Failure::SetRefused`] with what prevents each item from being issued to anybody; [`Failure::TooManySets`].
pub fn save(folder: &mut DataFolder, moment: &Moment, request: &SaveSetRequest) -> ActionResult<Vec<SetLine>> {
    lock::unlocked_keys(folder)?;
    let name = request.name.trim().to_owned();
    if !plan_set::is_name(&name) {
        return Err(Failure::SetNameUnfit { most: MAX_NAME as u16 });
    }
    let catalogue = own_catalogue::offered(folder)?;
    let mut prescription = plan_set::of_prescription(&request.prescription, moment.now.date());
    prescription.clean_texts();
    own_catalogue::name_fully(folder, &catalogue, &mut prescription)?;
    drafting::as_in(&catalogue, &mut prescription);
    let problems = problems(&prescription, &catalogue);
    if !problems.is_empty() {
        return Err(Failure::SetRefused(problems));
    }
    // Within the clinic the ids stay: the program may later ship an exercise of the same name.
    let plan = plan_file::write_set(&prescription, plan_set::start(), |item| item.exercise.to_string());
    keep(folder, PlanSet { name, plan })?;
    list(folder)
}

fn keep(folder: &mut DataFolder, set: PlanSet) -> ActionResult<()> {
    let all = all(folder)?;
    let before = all.iter().find(|other| is_called(other, &set.name));
    if before.is_none() && all.len() >= MAX_SETS {
        return Err(Failure::TooManySets { most: MAX_SETS as u16 });
    }
    let plain = plan_set::write(&set).map_err(refuse::internal)?;
    sealed::change(folder, |tx, sealer| match before.map(|before| &before.row) {
        Some(Row { id, sealed }) => {
            let sealed = sealer.replace(sealed::NOBODY, &sealed::set_place(*id), Some(sealed), &plain);
            table::plan_set::update(tx, *id, &sealed)
        }
        None => {
            let seal = |id| Ok::<_, StoreError>(sealer.seal(sealed::NOBODY, &sealed::set_place(id), &plain));
            table::plan_set::insert(tx, seal).map(drop)
        }
    })?;
    settle(folder)
}

/// What prevents items from being issued to anybody. What depends on the patient is asked when a plan is issued.
fn problems(prescription: &Prescription, catalogue: &exercises::catalogue::Catalogue) -> Vec<Problem> {
    let header = Header::first(PlanId([0; 8]), "-", prescription.review);
    let plan = Plan { header, prescription: prescription.clone() };
    let concerns = |problem: &Problem| match problem {
        Problem::NoItem
        | Problem::TooMany
        | Problem::Text { .. }
        | Problem::SameNumber
        | Problem::UnknownExercise(..)
        | Problem::OtherContent(..)
        | Problem::UnknownRung(..)
        | Problem::Dose(_)
        | Problem::TooMuchWork(..)
        | Problem::Side(_)
        | Problem::Schedule(_)
        | Problem::OnceADay(_)
        | Problem::Load(_)
        | Problem::Overlap(..)
        | Problem::Serves(_) => true,
        Problem::ReviewDate
        | Problem::Phase(_)
        | Problem::AgeMissing
        | Problem::NotTicked(_)
        | Problem::NotConfirmed(_)
        | Problem::NoStanceBaseline(_)
        | Problem::StanceTooShort(_)
        | Problem::GateClosed(_)
        | Problem::SoftAndClosed(_) => false,
    };
    check::problems(&plan, catalogue).into_iter().filter(concerns).collect()
}

/// Saves a set from a plan file, whose other parts are left out.
///
/// # Errors
/// [`Failure::NotUnderstood`] with the fault in the file, and as for [`save`].
pub fn import(folder: &mut DataFolder, moment: &Moment, request: &ImportSetRequest) -> ActionResult<Vec<SetLine>> {
    let ImportSetRequest { name, file, text } = request;
    let prescription = plan_file::read(text, moment.now.date()).map_err(platform::not_understood(file))?;
    save(folder, moment, &SaveSetRequest { name: name.clone(), prescription })
}

/// A set as a plan file, which names own exercises as their author does.
///
/// # Errors
/// [`Failure::NoSuchSet`].
pub fn file(folder: &DataFolder, moment: &Moment, name: &str) -> ActionResult<String> {
    let mut prescription = find(folder, name)?.line.prescription;
    prescription.review = exercises::draft::first(moment.now.date()).prescription.review;
    let named = |item: &Item| item.exercise.own_name().unwrap_or(item.exercise.as_str()).to_owned();
    Ok(plan_file::write_set(&prescription, plan_set::start(), named))
}

/// Writes a set as a plan file, to `out` or into the folder for saved files.
///
/// # Errors
/// [`Failure::NoSuchSet`], or the failure to write.
pub fn export(folder: &DataFolder, moment: &Moment, name: &str, out: Option<&Path>) -> ActionResult<Saved> {
    let text = file(folder, moment, name)?;
    let path = out.map_or_else(|| platform::free_name(folder, moment, "plan", ".toml"), Path::to_path_buf);
    platform::write(&path, text.as_bytes())?;
    Ok(Saved { path: path.display().to_string(), bytes: text.len() as u64 })
}

/// Removes a set.
///
/// # Errors
/// [`Failure::NoSuchSet`].
pub fn remove(folder: &mut DataFolder, name: &str) -> ActionResult<Vec<SetLine>> {
    let Row { id, sealed } = find(folder, name)?.row;
    sealed::change(folder, |tx, sealer| {
        sealer.removed(sealed::NOBODY, &sealed::set_place(id), Some(&sealed));
        table::plan_set::remove(tx, id)
    })?;
    settle(folder)?;
    list(folder)
}

/// Puts the items of a set into the draft of a patient's next plan, and stores it.
///
/// # Errors
/// [`Failure::NoSuchSet`], and as for [`drafting::draft`].
pub fn put_into_plan(folder: &mut DataFolder, moment: &Moment, request: &UseSetRequest) -> ActionResult<SetUsed> {
    let UseSetRequest { code, set } = request;
    let items = find(folder, set)?.line.prescription.items;
    let mut plan = drafting::draft(folder, moment, code)?;
    let left_out = plan.draft.add_items(&items, plan_set::start(), &plan.exercises);
    let mut left_out: Vec<ExerciseId> = left_out.into_iter().map(|item| item.exercise).collect();
    left_out.dedup();
    let kept = AskKeep {
        code: code.clone(),
        draft: plan.draft.clone(),
        replaces: plan.replaces,
        unread: plan.unread.clone(),
        facts: plan.facts.clone(),
    };
    drafting::keep(folder, moment, kept)?;
    plan.left_on = Some(moment.now.date());
    Ok(SetUsed { draft: plan, left_out })
}
