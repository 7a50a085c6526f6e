//! What the next plan starts from, and how a plan is finished for its card.

use super::rows::{self, Patient};
use super::{door, reviewing};
use crate::{Answer, House, Moment};
use exercises::catalogue::Catalogue;
use exercises::draft::{self, Draft, Used};
use exercises::norms::Norms;
use exercises::plan::check::{self, Problem};
use exercises::plan::{Header, Plan, Prescription};
use wire::Failure;
use wire::clinic::PlanDraft;

/// What the next plan starts from: the last one carried over, or nothing for a new patient.
pub fn draft(house: &House, moment: &Moment, code: &str) -> Answer<PlanDraft> {
    let patient = rows::patient(house, code)?;
    let review = reviewing::review(house, &patient, &Norms::built_in());
    let alarms = review.as_ref().map(|review| review.alarms.iter().filter(|alarm| !alarm.cleared).copied().collect());
    let draft = next(moment, &patient);
    let last = patient.newest().map(|card| &card.plan.header);
    Ok(PlanDraft {
        replaces: last.map(|last| last.revision),
        start: last.map_or(draft.today, |last| last.start),
        draft,
        exercises: reviewing::catalogue(house, &patient).exercises,
        suggestions: review.map(|review| review.items).unwrap_or_default(),
        alarms: alarms.unwrap_or_default(),
    })
}

fn next(moment: &Moment, patient: &Patient) -> Draft {
    let today = moment.now.date();
    let used = patient.cards.values().map(|card| Used::of(&card.plan.prescription)).fold(Used::default(), Used::and);
    patient.newest().map_or_else(|| draft::first(today), |card| draft::next(&card.plan, used, today))
}

/// What keeps a prescription from being issued to the patient under `code`.
pub fn problems(house: &House, moment: &Moment, code: &str, prescription: &Prescription) -> Answer<Vec<Problem>> {
    let patient = rows::patient(house, code)?;
    let catalogue = reviewing::catalogue(house, &patient);
    Ok(check::problems(&finished(house, moment, &patient, &catalogue, prescription)?, &catalogue))
}

/// The plan as it will be issued to the patient: with its header, and the editions of its exercises.
///
/// # Errors
/// [`Failure::PlanRefused`] with everything that keeps it from being issued.
pub(crate) fn finish(house: &House, moment: &Moment, patient: &Patient, prescription: &Prescription) -> Answer<Plan> {
    let catalogue = reviewing::catalogue(house, patient);
    let plan = finished(house, moment, patient, &catalogue, prescription)?;
    let problems = check::problems(&plan, &catalogue);
    if problems.is_empty() { Ok(plan) } else { Err(Failure::PlanRefused(problems)) }
}

fn finished(
    house: &House,
    moment: &Moment,
    patient: &Patient,
    catalogue: &Catalogue,
    prescription: &Prescription,
) -> Answer<Plan> {
    let (clinic, today) = (door::name(house)?, moment.now.date());
    let header = match patient.newest() {
        Some(card) => card.plan.header.next(&clinic, today),
        None => Header::first(vault::random::plan_id(), &clinic, today),
    };
    let mut plan = Plan { header, prescription: prescription.clone() };
    for item in &mut plan.prescription.items {
        if let Some(exercise) = catalogue.get(&item.exercise) {
            item.content = exercise.revision;
            let first = exercise.first_rung().map(|rung| rung.id.clone());
            item.rung = item.rung.take().or(first);
        }
    }
    Ok(plan)
}
