//! What a person says: answers to questions, days off, and "Something is wrong".

use super::plans::{self, FollowedPlan, append};
use super::today;
use crate::{ActionResult, DataFolder, Moment};
use exercises::alarm::Trouble;
use exercises::id::PlanId;
use exercises::log::{Correction, Entry, LogEvent};
use exercises::slots::own_day;
use exercises::today::Today;
use std::collections::BTreeSet;
use wire::Failure;
use wire::patient::{DaysOffRequest, QuestionAnswer, TroubleRequest};

/// Logs the answer to a question.
///
/// # Errors
/// [`Failure::NoSuchItem`] for something that the plan does not have; [`Failure::EmptyPeriod`] for days outside the plan.
pub fn answer(folder: &mut DataFolder, moment: &Moment, said: &QuestionAnswer) -> ActionResult<Today> {
    let (plan, event) = entry_of(said);
    say(folder, moment, plan, &event)?;
    today::page(folder, moment)
}

/// Withdraws the last answer to a question that was given today, and with a rating the alarm that it raised. Without such an answer
/// nothing changes.
///
/// # Errors
/// Any failure to read the plan or to write the log.
pub fn take_back(folder: &mut DataFolder, moment: &Moment, said: &QuestionAnswer) -> ActionResult<Today> {
    let (plan, event) = entry_of(said);
    let corrected = &plans::one_at(folder, moment, Some(plan))?.followed.history.corrected.clone();
    let given = {
        let read = folder.plan_cache.borrow();
        let of_today = |entry: &&Entry| own_day(entry.at) == own_day(moment.now);
        let same = |entry: &&Entry| entry.plan == plan && entry.event == event && corrected.correction(entry).is_none();
        read.entries().iter().rev().take_while(of_today).find(same).map(|entry| entry.n)
    };
    if let Some(entry) = given {
        append(folder, plan, moment.now, &LogEvent::Corrected { entry, to: Correction::Never })?;
    }
    today::page(folder, moment)
}

fn entry_of(said: &QuestionAnswer) -> (PlanId, LogEvent) {
    match *said {
        QuestionAnswer::Morning { plan, complaint, score } => (plan, LogEvent::Morning { complaint, score }),
        QuestionAnswer::During { plan, item, score } => (plan, LogEvent::During { item, score }),
        QuestionAnswer::Activity { plan, activity, score } => (plan, LogEvent::Rated { activity, score }),
    }
}

/// Logs that something is wrong. What it pauses stays paused until a newer card clears it.
///
/// # Errors
/// [`Failure::NoSuchItem`] for something that the plan does not have; [`Failure::EmptyPeriod`] for days outside the plan.
pub fn trouble(folder: &mut DataFolder, moment: &Moment, request: &TroubleRequest) -> ActionResult<Today> {
    let TroubleRequest { plan: _, trouble, item, circumstances } = request.clone();
    let event = LogEvent::Trouble { trouble, item, id: None, circumstances };
    say(folder, moment, request.plan, &event)?;
    today::page(folder, moment)
}

/// Logs that the person is well again, which ends what a passing illness pauses.
///
/// # Errors
/// Any failure to read the plan or to write the log.
pub fn well_again(folder: &mut DataFolder, moment: &Moment, plan: PlanId) -> ActionResult<Today> {
    say(folder, moment, plan, &LogEvent::WellAgain)?;
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

/// Logs what a person says, where it concerns something of the plan. An alarm gets its name here, and a rating above an item's limit
/// raises one.
///
/// # Errors
/// [`Failure::NoSuchItem`] for a complaint, an activity or an item that the plan does not have, and for an event that nobody
/// says; [`Failure::EmptyPeriod`] for days outside the plan.
pub(super) fn say(folder: &mut DataFolder, moment: &Moment, plan: PlanId, event: &LogEvent) -> ActionResult<()> {
    let above = {
        let one = plans::one_at(folder, moment, Some(plan))?;
        check(&one, event)?;
        above_limit(&one, event)
    };
    let raised = |event: &LogEvent| match event.clone() {
        LogEvent::Trouble { trouble, item, id, circumstances } => {
            let id = id.or_else(|| Some(vault::random::alarm_id()));
            LogEvent::Trouble { trouble, item, id, circumstances }
        }
        other => other,
    };
    let events: Vec<LogEvent> = std::iter::once(event).chain(&above).map(raised).collect();
    folder.all_or_nothing(|folder| events.iter().try_for_each(|event| append(folder, plan, moment.now, event).map(drop)))
}

/// The alarm that a rating above its item's limit raises.
fn above_limit(one: &FollowedPlan, event: &LogEvent) -> Option<LogEvent> {
    let LogEvent::During { item, score } = *event else { return None };
    let above = one.plan().item(item).is_some_and(|item| score > item.pain_limit);
    let alarm =
        LogEvent::Trouble { trouble: Trouble::PainAboveLimit, item: Some(item), id: None, circumstances: BTreeSet::new() };
    above.then_some(alarm)
}

fn check(one: &FollowedPlan, event: &LogEvent) -> ActionResult<()> {
    let plan = one.plan();
    let known = match event {
        LogEvent::Morning { complaint, .. } | LogEvent::Settled { complaint, .. } => {
            plan.prescription.complaints.iter().any(|known| known.id == *complaint)
        }
        LogEvent::Rated { activity, .. } => plan.prescription.activities.iter().any(|known| known.id == *activity),
        LogEvent::During { item, .. } => plan.item(*item).is_some(),
        LogEvent::WellAgain => true,
        // The program raises it itself.
        LogEvent::Trouble { trouble: Trouble::PainAboveLimit, .. } => false,
        LogEvent::Trouble { item, .. } => item.is_none_or(|item| plan.item(item).is_some()),
        LogEvent::DaysOff { from, until, .. } => {
            let within = from <= until && *from >= plan.header.start && *until <= plan.prescription.review;
            return if within { Ok(()) } else { Err(Failure::EmptyPeriod) };
        }
        _ => false,
    };
    if known { Ok(()) } else { Err(Failure::NoSuchItem) }
}
