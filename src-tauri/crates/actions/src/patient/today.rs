//! The Now page, and what the person can do with a slot.

use super::plans::{self, FollowedPlan, append};
use super::record;
use crate::{ActionResult, DataFolder, Moment};
use exercises::history::Mark;
use exercises::id::PlanId;
use exercises::log::LogEvent;
use exercises::run::{Run, RunEnd, Work};
use exercises::slots::{Slot, SlotRef};
use exercises::today::{Today, compose};
use std::sync::Arc;
use wire::Failure;
use wire::patient::{SkipRequest, SlotRequest};

/// Minutes by which a reminder is put off.
pub const PUT_OFF_MINUTES: u16 = 10;

/// The Now page.
pub fn page(folder: &DataFolder, moment: &Moment) -> ActionResult<Today> {
    let followed = plans::all_at(folder, moment)?;
    let steps: Vec<_> = followed.iter().map(|one| (one.plan().header.id, record::steps(folder, one, moment))).collect();
    let plans: Vec<_> = followed.iter().map(|one| (&one.followed, &one.catalogue)).collect();
    let today = compose(&plans, moment.now, &moment.zone);
    Ok(steps.iter().fold(today, |today, (plan, steps)| today.with_steps(*plan, steps)))
}

/// Logs that the program was opened, once a day for each plan, so that the day has a record. Once more after the clock was put back by
/// more than a day: then the log itself shows that it was ahead.
pub fn opened(folder: &mut DataFolder, moment: &Moment) -> ActionResult<()> {
    let today = moment.now.date();
    let unseen: Vec<PlanId> = plans::all_at(folder, moment)?
        .iter()
        .filter(|one| {
            let history = &one.followed.history;
            !history.seen.contains(&today) || history.wrong_clock.is_last_ahead()
        })
        .map(|one| one.plan().header.id)
        .collect();
    unseen.into_iter().try_for_each(|plan| append(folder, plan, moment.now, &LogEvent::Opened).map(drop))
}

/// Puts a slot's reminder off by ten minutes.
pub fn put_off(folder: &mut DataFolder, moment: &Moment, request: &SlotRequest) -> ActionResult<Today> {
    let (one, slot) = find(folder, moment, request.plan, request.slot)?;
    unfilled(&one, &slot, moment)?;
    append(folder, request.plan, moment.now, &LogEvent::PutOff { slot: request.slot, minutes: PUT_OFF_MINUTES })?;
    page(folder, moment)
}

/// Skips a slot, with a reason.
pub fn skip(folder: &mut DataFolder, moment: &Moment, request: &SkipRequest) -> ActionResult<Today> {
    log_skipped(folder, moment, request)?;
    page(folder, moment)
}

/// Logs that a slot was skipped.
pub(crate) fn log_skipped(folder: &mut DataFolder, moment: &Moment, request: &SkipRequest) -> ActionResult<()> {
    let (one, slot) = find(folder, moment, request.plan, request.slot)?;
    unfilled(&one, &slot, moment)?;
    let event = LogEvent::Skipped { slot: request.slot, reason: request.reason };
    append(folder, request.plan, moment.now, &event).map(drop)
}

/// "I already did it": a run that was not timed, counted separately from timed ones. Balance trials cannot be entered afterwards,
/// because their time is the result.
pub fn did_it(folder: &mut DataFolder, moment: &Moment, request: &SlotRequest) -> ActionResult<Today> {
    log_done(folder, moment, request)?;
    page(folder, moment)
}

/// Logs that a slot was done without being timed.
pub(crate) fn log_done(folder: &mut DataFolder, moment: &Moment, request: &SlotRequest) -> ActionResult<()> {
    let (one, slot) = find(folder, moment, request.plan, request.slot)?;
    let due = slot.due.filter(|due| due.utc_ms <= moment.now.utc_ms).ok_or(Failure::NoSuchSlot)?;
    let item = &*one.item_on(request.slot.item, request.slot.day)?;
    if one.followed.history.mark(&slot, item, moment.now) == Mark::Done {
        return Err(Failure::NoSuchSlot);
    }
    // What one press does is done at that moment, and not entered afterwards.
    let at_once = item.dose.kind().rules().is_one_press();
    let work = Work::in_full(item.dose, item.side.in_turn()).ok_or(Failure::NoSuchSlot)?;
    let run = Run {
        id: one.followed.history.next_run(),
        item: item.id,
        exercise: item.exercise.clone(),
        rung: item.rung.clone(),
        dose: item.dose,
        slot: Some(request.slot),
        started: if at_once { moment.now } else { due },
        live: at_once,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        work,
    };
    append(folder, request.plan, moment.now, &LogEvent::Run(run)).map(drop)
}

/// Finds the plan and the slot of a request.
pub(crate) fn find(
    folder: &DataFolder,
    moment: &Moment,
    plan: PlanId,
    slot: SlotRef,
) -> ActionResult<(Arc<FollowedPlan>, Slot)> {
    let one = plans::one_at(folder, moment, Some(plan))?;
    let day = one.followed.slots_on(slot.day, &moment.zone);
    let found = day.into_iter().find(|other| other.slot == slot).ok_or(Failure::NoSuchSlot)?;
    Ok((one, found))
}

fn unfilled(one: &FollowedPlan, slot: &Slot, moment: &Moment) -> ActionResult<()> {
    match one.followed.history.mark(slot, one.item(slot.slot.item)?, moment.now) {
        Mark::Done => Err(Failure::NoSuchSlot),
        _ => Ok(()),
    }
}
