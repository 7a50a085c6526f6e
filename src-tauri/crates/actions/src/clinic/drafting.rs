//! What the next plan starts from, how it is kept while it is composed, and how it is finished for its card.

use super::rows::{self, DRAFT, Patient};
use super::{door, reviewing};
use crate::{Answer, House, Moment, refuse};
use exercises::catalogue::Catalogue;
use exercises::draft::{self, Draft, Kept, Unread, Used};
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
pub fn draft(house: &House, moment: &Moment, code: &str) -> Answer<PlanDraft> {
    let patient = rows::patient(house, code)?;
    let review = reviewing::review(house, &patient, &Norms::built_in());
    let alarms = review.as_ref().map(|review| review.alarms.iter().filter(|alarm| !alarm.cleared).copied().collect());
    let fresh = next(house, moment, &patient)?;
    let left = kept(house, patient.row)?.and_then(|kept| Some((draft::resume(&kept, &fresh)?, kept.unread, kept.on)));
    let (Draft { plan, used }, unread, left_on) = match left {
        Some((draft, unread, on)) => (draft, unread, Some(on)),
        None => (fresh, Unread::default(), None),
    };
    Ok(PlanDraft {
        plan,
        used,
        unread,
        left_on,
        exercises: reviewing::catalogue(house, &patient).exercises,
        suggestions: review.map(|review| review.items).unwrap_or_default(),
        alarms: alarms.unwrap_or_default(),
    })
}

/// Keeps a plan that is being composed, sealed, in the place of the one before. Of a revision that was issued meanwhile
/// nothing is kept.
///
/// # Errors
/// [`Failure::ClinicLocked`], [`Failure::NoSuchPatient`], or what keeps it from being written.
pub fn keep(house: &mut House, moment: &Moment, ask: AskKeep) -> Answer<()> {
    let patient = rows::patient(house, &ask.code)?;
    let AskKeep { code: _, plan, used, unread } = ask;
    if plan.revision != next(house, moment, &patient)?.plan.revision {
        return Ok(());
    }
    let kept = Kept { draft: Draft { plan, used }, unread, on: moment.now.date() };
    let plain = format::draft::write(&kept).map_err(refuse::internal)?;
    let sealed = vault::rows::seal(door::open(house)?, DRAFT, &rows::bound(patient.row), &plain);
    let dir = house.dir();
    house.home.store_mut().transaction(|tx| table::draft::put(tx, patient.row, &sealed)).map_err(refuse::store(&dir))
}

/// Forgets the plan that is being composed, and begins it anew.
///
/// # Errors
/// As [`draft()`].
pub fn discard(house: &mut House, moment: &Moment, code: &str) -> Answer<PlanDraft> {
    let patient = rows::patient(house, code)?.row;
    let dir = house.dir();
    house.home.store_mut().transaction(|tx| table::draft::remove(tx, patient)).map_err(refuse::store(&dir))?;
    house.home.store().settle().map_err(refuse::store(&dir))?;
    draft(house, moment, code)
}

fn kept(house: &House, patient: i64) -> Answer<Option<Kept>> {
    let keys = door::open(house)?;
    let damaged = || Failure::HomeDamaged { home: house.home.dir().display().to_string() };
    let sealed =
        house.home.store().read(|view| table::draft::get(view, patient)).map_err(refuse::store(house.home.dir()))?;
    let open = |sealed: Vec<u8>| {
        let plain = vault::rows::open(keys, DRAFT, &rows::bound(patient), &sealed).ok()?;
        format::draft::read(&plain).ok()
    };
    sealed.map(|sealed| open(sealed).ok_or_else(damaged)).transpose()
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
