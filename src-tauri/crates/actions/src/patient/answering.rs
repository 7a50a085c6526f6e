//! What a person says: answers to questions, days off, and "Something is wrong".

use super::plans::{self, FollowedPlan, append};
use super::today;
use crate::{ActionResult, DataFolder, Moment};
use exercises::id::PlanId;
use exercises::log::LogEvent;
use exercises::today::Today;
use wire::Failure;
use wire::patient::{DaysOffRequest, QuestionAnswer, TroubleRequest};

/// Logs the answer to a question.
///
/// # Errors
/// [`Failure::NoSuchItem`] for something that the plan does not have; [`Failure::EmptyPeriod`] for days outside the plan.
pub fn answer(folder: &mut DataFolder, moment: &Moment, said: &QuestionAnswer) -> ActionResult<Today> {
    let (plan, event) = match *said {
        QuestionAnswer::Pain { plan, complaint, score, after } => (plan, LogEvent::Pain { complaint, score, after }),
        QuestionAnswer::Settled { plan, complaint, settled } => (plan, LogEvent::Settled { complaint, settled }),
        QuestionAnswer::Activity { plan, activity, score } => (plan, LogEvent::Rated { activity, score }),
    };
    say(folder, moment, plan, &event)?;
    today::page(folder, moment)
}

/// Logs that something is wrong. What it pauses stays paused until a newer card clears it.
///
/// # Errors
/// [`Failure::NoSuchItem`] for something that the plan does not have; [`Failure::EmptyPeriod`] for days outside the plan.
pub fn trouble(folder: &mut DataFolder, moment: &Moment, request: &TroubleRequest) -> ActionResult<Today> {
    let event = LogEvent::Trouble { trouble: request.trouble, item: request.item };
    say(folder, moment, request.plan, &event)?;
    today::page(folder, moment)
}

/// Takes days off.
///
/// # Errors
/// [`Failure::NoSuchItem`] for something that the plan does not have; [`Failure::EmptyPeriod`] for days outside the plan.
pub fn take_days_off(folder: &mut DataFolder, moment: &Moment, request: &DaysOffRequest) -> ActionResult<Today> {
    let event = LogEvent::DaysOff { from: request.from, until: request.until, why: request.why };
    say(folder, moment, request.plan, &event)?;
    today::page(folder, moment)
}

/// Logs what a person says, where it concerns something of the plan.
///
/// # Errors
/// [`Failure::NoSuchItem`] for a complaint, an activity or an item that the plan does not have, and for an event that nobody
/// says; [`Failure::EmptyPeriod`] for days outside the plan.
pub(super) fn say(folder: &mut DataFolder, moment: &Moment, plan: PlanId, event: &LogEvent) -> ActionResult<()> {
    check(&*plans::one(folder, Some(plan))?, event)?;
    append(folder, plan, moment.now, event).map(drop)
}

fn check(one: &FollowedPlan, event: &LogEvent) -> ActionResult<()> {
    let plan = one.plan();
    let known = match event {
        LogEvent::Pain { complaint, .. } | LogEvent::Settled { complaint, .. } => {
            plan.prescription.complaints.iter().any(|known| known.id == *complaint)
        }
        LogEvent::Rated { activity, .. } => plan.prescription.activities.iter().any(|known| known.id == *activity),
        LogEvent::Trouble { item, .. } => item.is_none_or(|item| plan.item(item).is_some()),
        LogEvent::DaysOff { from, until, .. } => {
            let within = from <= until && *from >= plan.header.start && *until <= plan.prescription.review;
            return if within { Ok(()) } else { Err(Failure::EmptyPeriod) };
        }
        _ => false,
    };
    if known { Ok(()) } else { Err(Failure::NoSuchItem) }
}
