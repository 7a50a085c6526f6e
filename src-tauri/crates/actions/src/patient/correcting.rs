//! Mistaken entries put right: a later entry says what an earlier one should have been.

use super::plans::{self, Carried, append};
use crate::{Answer, House, Moment};
use chrono::Duration;
use exercises::correct::{Correctable, Correction, list};
use exercises::log::What;
use exercises::plan::MAX_SCORE;
use wire::Failure;
use wire::patient::{CorrectAsk, CorrectPage, LookBack};

/// What can be put right of the last days, newest first.
pub fn page(house: &House, moment: &Moment, ask: &LookBack) -> Answer<CorrectPage> {
    let one = plans::one(house, Some(ask.plan))?;
    let entries = listed(house, &one, moment, ask.days);
    Ok(CorrectPage { exercises: one.exercises(), plan: one.plan().clone(), entries })
}

/// Puts one entry right, whenever it was made; the page of the last days as it then is. Saying the same again changes
/// nothing.
///
/// # Errors
/// [`Failure::NoSuchEntry`] for an entry that cannot be put right, [`Failure::CorrectionUnfit`] for one that cannot be put
/// right so, [`Failure::OutOfRange`] for a score, [`Failure::EmptyPeriod`] for days outside the plan.
pub fn correct(house: &mut House, moment: &Moment, ask: &CorrectAsk) -> Answer<CorrectPage> {
    let one = plans::one(house, Some(ask.plan))?;
    let in_force = fits(house, &one, ask)?;
    if in_force.unwrap_or(Correction::Stands) != ask.to {
        append(house, ask.plan, moment.now, &What::Corrected { entry: ask.entry, to: ask.to })?;
    }
    page(house, moment, &LookBack { plan: ask.plan, days: ask.days })
}

/// The correction of that entry in force, if what is asked for can be said of it.
fn fits(house: &House, one: &Carried, ask: &CorrectAsk) -> Answer<Option<Correction>> {
    let read = house.read.borrow();
    let named = read.entries().iter().find(|entry| entry.n == ask.entry && entry.plan == ask.plan);
    let named = named.filter(|entry| Correction::Never.fits(&entry.what));
    let named = named.ok_or(Failure::NoSuchEntry { entry: ask.entry })?;
    match ask.to {
        Correction::Score(score) if score > MAX_SCORE => {
            return Err(Failure::OutOfRange { least: 0, most: MAX_SCORE.into() });
        }
        Correction::Excused { from, until, .. }
            if from > until || from < one.plan().header.start || until > one.plan().prescription.review =>
        {
            return Err(Failure::EmptyPeriod);
        }
        to if !to.fits(&named.what) => return Err(Failure::CorrectionUnfit),
        _ => {}
    }
    Ok(one.followed.history.corrected.correction(named))
}

fn listed(house: &House, one: &Carried, moment: &Moment, days: u16) -> Vec<Correctable> {
    let from = moment.now.date() - Duration::days(i64::from(days.max(1)) - 1);
    house.read.borrow().log().map_or_else(Vec::new, |log| list(log, one.plan(), from))
}
