//! Corrects mistaken entries: a later entry says what an earlier one should have been.

use super::plans::{self, FollowedPlan, append};
use crate::{ActionResult, DataFolder, Moment};
use chrono::Duration;
use exercises::correct::{Correctable, list};
use exercises::log::Correction;
use exercises::log::LogEvent;
use wire::Failure;
use wire::patient::{CorrectPage, CorrectRequest, CorrectableRequest};

/// The entries of the last days that can be corrected, newest first.
pub fn page(folder: &DataFolder, moment: &Moment, request: &CorrectableRequest) -> ActionResult<CorrectPage> {
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    let entries = listed(folder, &one, moment, request.days);
    Ok(CorrectPage { exercises: one.exercises(), plan: one.plan().clone(), entries })
}

/// Corrects one entry, however old, and returns the updated page of the last days. Making the same correction again changes nothing.
///
/// # Errors
/// [`Failure::NoSuchEntry`] for an entry that cannot be corrected, [`Failure::CorrectionUnfit`] for a correction that does not apply
/// to it, [`Failure::OutOfRange`] for a score, [`Failure::EmptyPeriod`] for days outside the plan.
pub fn correct(folder: &mut DataFolder, moment: &Moment, request: &CorrectRequest) -> ActionResult<CorrectPage> {
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    let in_force = fits(folder, &one, request)?;
    if in_force.unwrap_or(Correction::Stands) != request.to {
        append(folder, request.plan, moment.now, &LogEvent::Corrected { entry: request.entry, to: request.to })?;
    }
    page(folder, moment, &CorrectableRequest { plan: request.plan, days: request.days })
}

/// The entry's correction in force, if the requested correction applies to the entry.
fn fits(folder: &DataFolder, one: &FollowedPlan, request: &CorrectRequest) -> ActionResult<Option<Correction>> {
    let read = folder.plan_cache.borrow();
    let named = read.entries().iter().find(|entry| entry.n == request.entry && entry.plan == request.plan);
    let named = named.filter(|entry| Correction::Never.fits(&entry.event));
    let named = named.ok_or(Failure::NoSuchEntry { entry: request.entry })?;
    match request.to {
        Correction::DaysOff { from, until, .. }
            if from > until || from < one.plan().header.start || until > one.plan().prescription.review =>
        {
            return Err(Failure::EmptyPeriod);
        }
        to if !to.fits(&named.event) => return Err(Failure::CorrectionUnfit),
        _ => {}
    }
    Ok(one.followed.history.corrected.correction(named))
}

fn listed(folder: &DataFolder, one: &FollowedPlan, moment: &Moment, days: u16) -> Vec<Correctable> {
    let from = moment.now.date() - Duration::days(i64::from(days.max(1)) - 1);
    folder
        .plan_cache
        .borrow()
        .log()
        .map_or_else(Vec::new, |log| list(log, one.plan(), from, |entry| one.followed.history.made(entry)))
}
