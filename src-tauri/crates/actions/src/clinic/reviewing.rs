//! One patient's review.

use super::rows::{self, Patient};
use super::{devices, norms, numbering};
use crate::card_catalogue::own_of;
use crate::patient::plans;
use crate::{ActionResult, DataFolder, Moment};
use chrono::NaiveDate;
use exercises::catalogue::{Catalogue, Exercise};
use exercises::norms::Norms;
use exercises::plan::Plan;
use exercises::review::{self, Review, Standing};
use exercises::summary::{Summary, as_known_on};
use exercises::time::DayNumber;
use exercises::visit::Visit;
use std::borrow::Cow;
use std::panic::{AssertUnwindSafe, catch_unwind};
use wire::Failure;
use wire::clinic::{ReviewNotice, ReviewPage};

/// The review of the patient with `code`.
///
/// # Errors
/// [`Failure::ClinicLocked`]; [`Failure::NoSuchPatient`]; [`Failure::RecordDamaged`] if one of the patient's cards or summaries does not
/// open, and [`Failure::RecordsDamaged`] if the patient's own row may be one that does not; any failure to read the store.
pub fn page(folder: &DataFolder, moment: &Moment, code: &str) -> ActionResult<ReviewPage> {
    let patient = rows::patient(folder, code)?;
    let received = rows::summaries(folder, &patient)?;
    let today = Some(moment.now.date());
    let review = of_summaries(folder, &patient, &received, &norms::all(folder)?, today)?;
    let devices = devices::lines(folder, &patient, &as_known(&patient, &received, today))?;
    let notices = notices(folder, &patient, &received)?;
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
    let Patient { code, name, .. } = patient;
    Ok(ReviewPage { code, name, today, plan, earlier: plans, exercises, review, devices, notices })
}

/// The review of everything that was received from a patient, compared with these norms; `None` if nothing was received yet. What
/// summaries say of days after `today` counts as recorded while the device's clock was ahead; without `today` this is not checked.
///
/// # Errors
/// [`Failure::RecordDamaged`] if a summary in the database cannot be read.
pub(crate) fn review(
    folder: &DataFolder,
    patient: &Patient,
    norms: &Norms,
    today: Option<NaiveDate>,
) -> ActionResult<Option<Review>> {
    of_summaries(folder, patient, &rows::summaries(folder, patient)?, norms, today)
}

/// The summaries as they are to be read today ([`as_known_on`]). A date before the plan began is the clinic's own clock gone wrong, and
/// says nothing.
pub(super) fn as_known(patient: &Patient, summaries: &[Summary], today: Option<NaiveDate>) -> Vec<Summary> {
    let day = today.and_then(|today| day_of(patient, today));
    summaries.iter().map(|summary| one_as_known(summary, day).into_owned()).collect()
}

/// The same of one summary, on a day of the plan.
pub(super) fn one_as_known(summary: &Summary, day: Option<DayNumber>) -> Cow<'_, Summary> {
    day.map_or(Cow::Borrowed(summary), |day| as_known_on(summary, day))
}

/// The day of the patient's plan on this date; `None` before the plan began, and without a plan.
pub(super) fn day_of(patient: &Patient, date: NaiveDate) -> Option<DayNumber> {
    DayNumber::of(date, patient.newest()?.plan.header.start)
}

/// The review of these summaries, without those of devices that the clinic leaves out.
fn of_summaries(
    folder: &DataFolder,
    patient: &Patient,
    received: &[Summary],
    norms: &Norms,
    today: Option<NaiveDate>,
) -> ActionResult<Option<Review>> {
    let left_out = devices::left_out(folder, patient)?;
    let counted: Vec<Summary> = received.iter().filter(|summary| !left_out.contains(&summary.log)).cloned().collect();
    build(patient, &catalogue(folder, patient), &as_known(patient, &counted, today), norms)
}

/// How the patient stands, as the review of these summaries says it too, and whether that stays so on later days: it does unless a
/// device's clock was ahead.
///
/// # Errors
/// As for [`review()`].
pub(super) fn standing<'s>(
    patient: &Patient,
    counted: impl Iterator<Item = &'s Summary>,
    today: NaiveDate,
) -> ActionResult<(Option<Standing>, bool)> {
    let Some(newest) = patient.newest() else { return Ok((None, true)) };
    let day = DayNumber::of(today, newest.plan.header.start);
    let known: Vec<Cow<'_, Summary>> = counted.map(|summary| one_as_known(summary, day)).collect();
    let lasts = day.is_some() && known.iter().all(|summary| matches!(summary, Cow::Borrowed(_)));
    let stand = || review::standing(&newest.plan, known.iter().map(Cow::as_ref));
    let stands = catch_unwind(AssertUnwindSafe(stand)).map_err(|_| Failure::RecordDamaged { code: patient.code.clone() })?;
    Ok((stands, lasts))
}

/// Reviews everything that was received before it is kept, also what is left out now, with the catalogue of [`catalogue`].
///
/// # Errors
/// [`Failure::SummaryDamaged`] if that is not possible.
pub(super) fn could_review(patient: &Patient, catalogue: &Catalogue, received: &[Summary]) -> ActionResult<()> {
    build(patient, catalogue, received, &Norms::built_in()).map(drop).map_err(|_| Failure::SummaryDamaged)
}

/// What summaries say comes from outside. If a sum over it fails in spite of all care, that closes this patient's page alone.
fn build(patient: &Patient, catalogue: &Catalogue, received: &[Summary], norms: &Norms) -> ActionResult<Option<Review>> {
    let revisions = patient.revisions();
    let build = || review::build_against(&revisions, catalogue, received, norms);
    catch_unwind(AssertUnwindSafe(build)).map_err(|_| Failure::RecordDamaged { code: patient.code.clone() })
}

/// What the review says about the store itself.
fn notices(folder: &DataFolder, patient: &Patient, received: &[Summary]) -> ActionResult<Vec<ReviewNotice>> {
    let mut notices = Vec::new();
    if folder.changed_outside.rows.contains_key(&patient.row) {
        notices.push(ReviewNotice::ChangedOutside);
    }
    if let Some(revision) = numbering::unknown(patient, received) {
        notices.push(ReviewNotice::StoreBehind { revision, next: numbering::next_after(patient, received)? });
    }
    Ok(notices)
}

/// The catalogue that ships with the program, with the clinic's own exercises as the patient's cards have them. Of several revisions the
/// one on the newest card counts, which is what the patient sees.
pub(crate) fn catalogue<'f>(folder: &'f DataFolder, patient: &Patient) -> Cow<'f, Catalogue> {
    let mut catalogue = Cow::Borrowed(&folder.catalogue);
    for card in patient.cards.values().rev() {
        let used = card.plan.prescription.items.iter().map(|item| &item.exercise);
        if used.filter(|id| id.is_own()).any(|id| catalogue.get(id).is_none()) {
            let new = own_of(&card.own).unwrap_or_default().into_iter();
            let new: Vec<Exercise> = new.filter(|own| catalogue.get(&own.id).is_none()).collect();
            catalogue.to_mut().exercises.extend(new);
        }
    }
    catalogue
}

/// A review as one JSON object, with the patient it belongs to: the keys of [`format::review_json`], beside everything else that the
/// review holds. Without a summary its lists are empty, but for the visits.
pub fn json(page: &ReviewPage, visits: &[Visit]) -> String {
    let mut object = serde_json::json!({ "days": [], "activities": [], "barriers": [] });
    let mut keys = format::review_json::empty();
    if let Some((review, plan)) = page.review.as_ref().zip(page.plan.as_ref()) {
        object = serde_json::json!(review);
        keys = format::review_json::write(review, plan, &object);
    }
    keys.into_iter().for_each(|(key, value)| object[key] = value);
    object["visits"] = format::review_json::visits(visits);
    object["code"] = serde_json::json!(page.code);
    object["devices"] = serde_json::json!(page.devices);
    object["notices"] = serde_json::json!(page.notices);
    object["today"] = serde_json::json!(page.today);
    object.to_string()
}
