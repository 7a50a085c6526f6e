//! What the next plan starts from, and how a plan is finished for its card.

use super::rows::{self, Patient};
use super::{door, reviewing};
use crate::{Answer, House, Moment};
use exercises::catalogue::Catalogue;
use exercises::draft::{self, Draft, Used};
use exercises::id::PlanId;
use exercises::norms::Norms;
use exercises::plan::Plan;
use exercises::plan::check::{self, Problem};
use wire::Failure;
use wire::clinic::PlanDraft;

/// The next revision: the last plan carried over, or an empty one for a new patient.
pub fn draft(house: &House, moment: &Moment, code: &str) -> Answer<PlanDraft> {
    let patient = rows::patient(house, code)?;
    let review = reviewing::review(house, &patient, &Norms::built_in());
    let alarms = review.as_ref().map(|review| review.alarms.iter().filter(|alarm| !alarm.cleared).copied().collect());
    let Draft { plan, used } = next(house, moment, &patient)?;
    Ok(PlanDraft {
        plan,
        used,
        exercises: reviewing::catalogue(house, &patient).exercises,
        suggestions: review.map(|review| review.items).unwrap_or_default(),
        alarms: alarms.unwrap_or_default(),
    })
}

/// A new patient's plan gets its id when its first card is issued.
fn next(house: &House, moment: &Moment, patient: &Patient) -> Answer<Draft> {
    let today = moment.now.date();
    let clinic = door::name(house)?;
    let used = patient.cards.values().map(|card| Used::of(&card.plan)).fold(Used::default(), Used::and);
    Ok(match patient.newest() {
        Some(card) => draft::next(&card.plan, used, &clinic, today),
        None => draft::first(PlanId([0; 8]), &clinic, today),
    })
}

/// What keeps a plan from being issued to the patient under `code`.
pub fn problems(house: &House, moment: &Moment, code: &str, plan: &Plan) -> Answer<Vec<Problem>> {
    let patient = rows::patient(house, code)?;
    let catalogue = reviewing::catalogue(house, &patient);
    Ok(check::problems(&finished(house, moment, &patient, &catalogue, plan)?, &catalogue))
}

/// The plan as it will be issued to the patient: id, revision, clinic, dates, and the editions of its exercises.
///
/// # Errors
/// [`Failure::PlanRefused`] with everything that keeps it from being issued.
pub(crate) fn finish(house: &House, moment: &Moment, patient: &Patient, plan: &Plan) -> Answer<Plan> {
    let catalogue = reviewing::catalogue(house, patient);
    let plan = finished(house, moment, patient, &catalogue, plan)?;
    let problems = check::problems(&plan, &catalogue);
    if problems.is_empty() { Ok(plan) } else { Err(Failure::PlanRefused(problems)) }
}

fn finished(house: &House, moment: &Moment, patient: &Patient, catalogue: &Catalogue, plan: &Plan) -> Answer<Plan> {
    let base = next(house, moment, patient)?.plan;
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
