//! What the next plan starts from, how it is kept while it is composed, and how it is finished for its card.

use super::rows::{self, DRAFT, Patient};
use super::{lock, reviewing};
use crate::{ActionResult, DataFolder, Moment, refuse};
use exercises::catalogue::Catalogue;
use exercises::draft::{self, Draft, Kept, Unread, UsedNumbers};
use exercises::id::PlanId;
use exercises::norms::Norms;
use exercises::plan::Plan;
use exercises::plan::check::{self, Problem};
use store::table;
use wire::Failure;
use wire::clinic::{AskKeep, PlanDraft};

/// The next revision: as somebody left it who was composing it already, else the last plan carried over, or an empty one for
/// a new patient.
///
/// # Errors
/// [`Failure::HomeDamaged`] where what was left cannot be opened or read, and whatever keeps the patient from being read.
pub fn draft(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<PlanDraft> {
    let patient = rows::patient(folder, code)?;
    let review = reviewing::review(folder, &patient, &Norms::built_in());
    let alarms = review.as_ref().map(|review| review.alarms.iter().filter(|alarm| !alarm.cleared).copied().collect());
    let fresh = next(folder, moment, &patient)?;
    let left = kept(folder, patient.row)?.and_then(|kept| Some((draft::resume(&kept, &fresh)?, kept.unread, kept.on)));
    let (Draft { plan, used }, unread, left_on) = match left {
        Some((draft, unread, on)) => (draft, unread, Some(on)),
        None => (fresh, Unread::default(), None),
    };
    Ok(PlanDraft {
        plan,
        used,
        unread,
        left_on,
        exercises: reviewing::catalogue(folder, &patient).exercises,
        suggestions: review.map(|review| review.items).unwrap_or_default(),
        alarms: alarms.unwrap_or_default(),
    })
}

/// Keeps a plan that is being composed, sealed, in the place of the one before. Of a revision that was issued meanwhile
/// nothing is kept.
///
/// # Errors
/// [`Failure::ClinicLocked`], [`Failure::NoSuchPatient`], or what keeps it from being written.
pub fn keep(folder: &mut DataFolder, moment: &Moment, request: AskKeep) -> ActionResult<()> {
    let patient = rows::patient(folder, &request.code)?;
    let AskKeep { code: _, plan, used, unread } = request;
    if plan.revision != next(folder, moment, &patient)?.plan.revision {
        return Ok(());
    }
    let kept = Kept { draft: Draft { plan, used }, unread, on: moment.now.date() };
    let plain = format::draft::write(&kept).map_err(refuse::internal)?;
    let sealed = vault::rows::seal(lock::unlocked_keys(folder)?, DRAFT, &rows::bound(patient.row), &plain);
    let dir = folder.dir();
    folder.home.store_mut().transaction(|tx| table::draft::put(tx, patient.row, &sealed)).map_err(refuse::store(&dir))
}

/// Forgets the plan that is being composed, and begins it anew.
///
/// # Errors
/// As [`draft()`].
pub fn discard(folder: &mut DataFolder, moment: &Moment, code: &str) -> ActionResult<PlanDraft> {
    let patient = rows::patient(folder, code)?.row;
    let dir = folder.dir();
    folder.home.store_mut().transaction(|tx| table::draft::remove(tx, patient)).map_err(refuse::store(&dir))?;
    folder.home.store().settle().map_err(refuse::store(&dir))?;
    draft(folder, moment, code)
}

fn kept(folder: &DataFolder, patient: i64) -> ActionResult<Option<Kept>> {
    let keys = lock::unlocked_keys(folder)?;
    let damaged = || Failure::HomeDamaged { home: folder.home.dir().display().to_string() };
    let sealed =
        folder.home.store().read(|view| table::draft::get(view, patient)).map_err(refuse::store(folder.home.dir()))?;
    let open = |sealed: Vec<u8>| {
        let plain = vault::rows::open(keys, DRAFT, &rows::bound(patient), &sealed).ok()?;
        format::draft::read(&plain).ok()
    };
    sealed.map(|sealed| open(sealed).ok_or_else(damaged)).transpose()
}

/// A new patient's plan gets its id when its first card is issued.
fn next(folder: &DataFolder, moment: &Moment, patient: &Patient) -> ActionResult<Draft> {
    let today = moment.now.date();
    let clinic = lock::name(folder)?;
    let used = patient.cards.values().map(|card| UsedNumbers::of(&card.plan)).fold(UsedNumbers::default(), UsedNumbers::and);
    Ok(match patient.newest() {
        Some(card) => draft::next(&card.plan, used, &clinic, today),
        None => draft::first(PlanId([0; 8]), &clinic, today),
    })
}

/// What keeps a plan from being issued to the patient under `code`.
pub fn problems(folder: &DataFolder, moment: &Moment, code: &str, plan: &Plan) -> ActionResult<Vec<Problem>> {
    let patient = rows::patient(folder, code)?;
    let catalogue = reviewing::catalogue(folder, &patient);
    Ok(check::problems(&finished(folder, moment, &patient, &catalogue, plan)?, &catalogue))
}

/// The plan as it will be issued to the patient: id, revision, clinic, dates, and the editions of its exercises.
///
/// # Errors
/// [`Failure::PlanRefused`] with everything that keeps it from being issued.
pub(crate) fn finish(folder: &DataFolder, moment: &Moment, patient: &Patient, plan: &Plan) -> ActionResult<Plan> {
    let catalogue = reviewing::catalogue(folder, patient);
    let plan = finished(folder, moment, patient, &catalogue, plan)?;
    let problems = check::problems(&plan, &catalogue);
    if problems.is_empty() { Ok(plan) } else { Err(Failure::PlanRefused(problems)) }
}

fn finished(
    folder: &DataFolder,
    moment: &Moment,
    patient: &Patient,
    catalogue: &Catalogue,
    plan: &Plan,
) -> ActionResult<Plan> {
    let base = next(folder, moment, patient)?.plan;
    let mut plan = Plan {
        id: patient.plan().unwrap_or_else(vault::random::plan_id),
        revision: base.revision,
        clinic: base.clinic,
        start: base.start,
        issued: base.issued,
        ..plan.clone()
    };
    for item in &mut plan.items {
        if let Some(exercise) = catalogue.get(&item.exercise) {
            item.content = exercise.revision;
            let first = exercise.first_rung().map(|rung| rung.id.clone());
            item.rung = item.rung.take().or(first);
        }
    }
    Ok(plan)
}
