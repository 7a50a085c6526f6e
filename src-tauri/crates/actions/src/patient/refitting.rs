//! Moves the times of a plan's exercises after its card was taken.
//!
//! New times apply from the next day on. The slots of a day are known by their numbers, so two schedules on one day could not be
//! told apart; for the same reason times after midnight cannot be moved. Until that day the new times lie in the settings; then they
//! become an entry of the log, like those agreed to when the card was taken.

use super::plans::{self, append};
use super::times_ahead::{self, Ahead};
use crate::{ActionResult, DataFolder, Moment, refuse};
use chrono::NaiveDate;
use exercises::log::LogEvent;
use exercises::plan::check;
use exercises::plan::{Pattern, Schedule};
use exercises::time::{Offsets, ResolvedTime, Stamp};
use wire::Failure;
use wire::patient::{PlanPage, RefitRequest};

/// Moves the times of an item from tomorrow on. Returns the Plan pages.
///
/// # Errors
/// [`Failure::NoSuchItem`]; [`Failure::CardRefused`] if the plan could not be followed with these times; [`Failure::Internal`] if they
/// are on other days than the card's, or more or fewer, or if old or new times go over midnight.
pub fn refit(folder: &mut DataFolder, moment: &Moment, request: &RefitRequest) -> ActionResult<Vec<PlanPage>> {
    settle(folder, moment)?;
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    let header = &one.plan().header;
    let card = one.revisions.get(&header.revision).ok_or(Failure::NoPlan)?;
    let of_card = &card.item(request.item).ok_or(Failure::NoSuchItem)?.schedule;
    let followed = &one.item(request.item)?.schedule;
    let over_midnight = [followed, &request.schedule].iter().any(|schedule| schedule.pattern.goes_over_midnight());
    if over_midnight || !is_moved(of_card, &request.schedule) {
        // The window offers no such times.
        return Err(refuse::internal("times over midnight, on other days, or more or fewer than on the card"));
    }
    let in_force = || one.followed.history.taken.last().map(|taken| taken.agreed.clone()).unwrap_or_default();
    let mut agreed = times_ahead::of_card(folder, header)?.map_or_else(in_force, |(_, agreed)| agreed);
    agreed.retain(|(item, _)| *item != request.item);
    if request.schedule != *of_card {
        agreed.push((request.item, request.schedule.clone()));
        agreed.sort_by_key(|(item, _)| *item);
    }
    let problems = check::problems(&card.with_schedules(&agreed), &one.catalogue);
    if !problems.is_empty() {
        return Err(Failure::CardRefused(problems));
    }
    let mut all = times_ahead::all(folder)?;
    all.retain(|one| one.plan != request.plan);
    if agreed != in_force() {
        let from = moment.now.date().succ_opt().ok_or_else(|| refuse::internal("the last day"))?;
        all.push(Ahead { plan: request.plan, from, revision: header.revision, agreed });
    }
    times_ahead::keep(folder, &all)?;
    plans::pages(folder, moment)
}

/// Whether a schedule has the days of the other one and as many times, or the same interval.
fn is_moved(from: &Schedule, to: &Schedule) -> bool {
    let alike = match (&from.pattern, &to.pattern) {
        (Pattern::Every { minutes, .. }, Pattern::Every { minutes: other, .. }) => minutes == other,
        (Pattern::At { times }, Pattern::At { times: others }) => times.len() == others.len(),
        _ => false,
    };
    alike && from.days == to.days
}

/// Writes new times into the log once their day has come. They apply from the beginning of today, before anything was done on it. New
/// times apply from the day after they were agreed to, so a day that is farther away was set by a clock that was ahead: it has come.
///
/// # Errors
/// Any failure to read or write the data folder.
pub fn settle(folder: &mut DataFolder, moment: &Moment) -> ActionResult<()> {
    let today = moment.now.date();
    let (come, later): (Vec<Ahead>, Vec<Ahead>) = times_ahead::all(folder)?.into_iter().partition(|one| {
        let away = one.from.signed_duration_since(today).num_days();
        away <= 0 || away > 2
    });
    if come.is_empty() {
        return Ok(());
    }
    let known = plans::all_at(folder, moment)?;
    let at = beginning_of(today, &moment.zone).unwrap_or(moment.now);
    folder.all_or_nothing(|folder| {
        for Ahead { plan, revision, agreed, .. } in come {
            // A later card has its own times.
            if known.iter().any(|one| (one.plan().header.id, one.plan().header.revision) == (plan, revision)) {
                append(folder, plan, at, &LogEvent::Taken { revision, agreed })?;
            }
        }
        times_ahead::keep(folder, &later)
    })
}

/// The first moment of a day; the clocks may skip midnight, but no more than an hour.
fn beginning_of(day: NaiveDate, zone: &Offsets) -> Option<Stamp> {
    [0, 1].into_iter().find_map(|hour| match zone.resolve(day.and_hms_opt(hour, 0, 0)?) {
        ResolvedTime::Once(stamp) | ResolvedTime::Twice(stamp) => Some(stamp),
        ResolvedTime::Never => None,
    })
}
