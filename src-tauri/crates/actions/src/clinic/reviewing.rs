//! One patient's review.

use super::norms;
use super::rows::{self, Patient};
use crate::patient::plans;
use crate::{ActionResult, DataFolder, Moment};
use exercises::catalogue::{Catalogue, Exercise};
use exercises::norms::Norms;
use exercises::plan::Plan;
use exercises::review::{self, Review};
use wire::clinic::ReviewPage;

/// The review of the patient with `code`.
pub fn page(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<ReviewPage> {
    let patient = rows::patient(folder, code)?;
    let review = review(folder, &patient, &norms::all(folder)?)?;
    let mut plans: Vec<Plan> = patient.cards.values().rev().map(|card| card.plan.clone()).collect();
    let plan = if plans.is_empty() { None } else { Some(plans.remove(0)) };
    let known = catalogue(folder, &patient);
    let mut exercises: Vec<Exercise> = Vec::new();
    for exercise in plan.iter().chain(&plans).flat_map(|plan| plans::exercises_of(plan, &known)) {
        if exercises.iter().all(|other| other.id != exercise.id) {
            exercises.push(exercise);
        }
    }
    let today = moment.now.date();
    Ok(ReviewPage { code: patient.code, name: patient.name, today, plan, earlier: plans, exercises, review })
}

/// The review of everything that was received from a patient, compared with these norms; `None` if nothing was received yet.
///
/// # Errors
/// [`wire::Failure::HomeDamaged`] if a summary in the database cannot be read.
pub(crate) fn review(folder: &DataFolder, patient: &Patient, norms: &Norms) -> ActionResult<Option<Review>> {
    let summaries = rows::summaries(folder, patient)?;
    Ok(review::build_against(&patient.revisions(), &catalogue(folder, patient), &summaries, norms))
}

/// The catalogue that ships with the program, with the clinic's own exercises on the patient's newest card.
pub(crate) fn catalogue(folder: &DataFolder, patient: &Patient) -> Catalogue {
    let own = patient.newest().map(|card| card.own.clone()).unwrap_or_default();
    plans::with_own(&folder.catalogue, &own).unwrap_or_else(|_| folder.catalogue.clone())
}

/// A review as one JSON object, with the patient it belongs to: the keys of [`format::review_json`], beside everything else that the
/// review holds. Without a summary its lists are empty.
pub fn json(page: &ReviewPage) -> String {
    let mut object = serde_json::json!({ "days": [], "activities": [], "barriers": [] });
    let mut keys = format::review_json::empty();
    if let Some((review, plan)) = page.review.as_ref().zip(page.plan.as_ref()) {
        object = serde_json::json!(review);
        keys = format::review_json::write(review, plan, &object);
    }
    keys.into_iter().for_each(|(key, value)| object[key] = value);
    object["code"] = serde_json::json!(page.code);
    object["today"] = serde_json::json!(page.today);
    object.to_string()
}
