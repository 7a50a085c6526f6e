//! What the next plan starts from, and how a plan is finished for its card.

use super::rows::{self, Patient};
use super::{lock, reviewing};
use crate::{ActionResult, DataFolder, Moment};
use exercises::catalogue::Catalogue;
use exercises::draft::{self, Draft, UsedNumbers};
use exercises::id::PlanId;
use exercises::norms::Norms;
use exercises::plan::Plan;
use exercises::plan::check::{self, Problem};
use wire::Failure;
use wire::clinic::PlanDraft;

/// The next revision: the last plan carried over, or an empty one for a new patient.
pub fn draft(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<PlanDraft> {
    let patient = rows::patient(folder, code)?;
    let review = reviewing::review(folder, &patient, &Norms::built_in());
    let alarms = review.as_ref().map(|review| review.alarms.iter().filter(|alarm| !alarm.cleared).copied().collect());
    let Draft { plan, used, earlier } = next(folder, moment, &patient)?;
    Ok(PlanDraft {
        plan,
        used,
        earlier,
        exercises: reviewing::catalogue(folder, &patient).exercises,
        suggestions: review.map(|review| review.items).unwrap_or_default(),
        alarms: alarms.unwrap_or_default(),
    })
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
