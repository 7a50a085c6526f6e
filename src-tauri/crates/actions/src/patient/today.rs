//! The Now page, and what can be said about a slot.

use super::plans::{self, Carried, append};
use super::recording;
use crate::{Answer, House, Moment};
use exercises::history::Mark;
use exercises::id::PlanId;
use exercises::log::What;
use exercises::run::{Doing, Run, RunEnd};
use exercises::slots::{self, Slot, SlotRef};
use exercises::today::{Followed, Today, compose};
use std::borrow::Cow;
use std::sync::Arc;
use wire::Failure;
use wire::patient::{Excusing, LeavingOut, SlotAsk};

/// A reminder is put off by so many minutes.
pub const PUT_OFF_MINUTES: u16 = 10;

/// The Now page.
pub fn page(house: &House, moment: &Moment) -> Answer<Today> {
    let carried = plans::all(house)?;
    let mut catalogue = Cow::Borrowed(&house.catalogue);
    for exercise in carried.iter().flat_map(|one| one.exercises()) {
        if catalogue.get(&exercise.id).is_none() {
            catalogue.to_mut().exercises.push(exercise);
        }
    }
    let steps: Vec<_> = carried.iter().map(|one| (one.plan().header.id, recording::steps(one, moment))).collect();
    let followed: Vec<&Followed> = carried.iter().map(|one| &one.followed).collect();
    let today = compose(&followed, &catalogue, moment.now, &moment.zone);
    Ok(steps.iter().fold(today, |today, (plan, steps)| today.with_steps(*plan, steps)))
}

/// Logs that the program was opened, once a day for each plan: the day has a record.
pub fn opened(house: &mut House, moment: &Moment) -> Answer<()> {
    let today = moment.now.date();
    let unseen: Vec<PlanId> = plans::all(house)?
        .iter()
        .filter(|one| !one.followed.history.seen.contains(&today))
        .map(|one| one.plan().header.id)
        .collect();
    unseen.into_iter().try_for_each(|plan| append(house, plan, moment.now, &What::Opened).map(drop))
}

/// Puts a slot's reminder off by ten minutes.
pub fn put_off(house: &mut House, moment: &Moment, ask: &SlotAsk) -> Answer<Today> {
    let (one, slot) = find(house, moment, ask.plan, ask.slot)?;
    unfilled(&one, &slot, moment)?;
    append(house, ask.plan, moment.now, &What::PutOff { slot: ask.slot, minutes: PUT_OFF_MINUTES })?;
    page(house, moment)
}

/// Leaves a slot out, with a reason in one tap.
pub fn leave_out(house: &mut House, moment: &Moment, ask: &LeavingOut) -> Answer<Today> {
    let (one, slot) = find(house, moment, ask.plan, ask.slot)?;
    unfilled(&one, &slot, moment)?;
    append(house, ask.plan, moment.now, &What::LeftOut { slot: ask.slot, reason: ask.reason })?;
    page(house, moment)
}

/// "I already did it": a run that was not timed, kept apart from those that were. Balance trials cannot be written in
/// afterwards, since their time is the result.
pub fn did_it(house: &mut House, moment: &Moment, ask: &SlotAsk) -> Answer<Today> {
    let (one, slot) = find(house, moment, ask.plan, ask.slot)?;
    let due = slot.due.filter(|due| due.utc_ms <= moment.now.utc_ms).ok_or(Failure::NoSuchSlot)?;
    let item = one.item(ask.slot.item)?;
    if one.followed.history.mark(&slot, item, moment.now) == Mark::Done {
        return Err(Failure::NoSuchSlot);
    }
    let doing = Doing::in_full(item.dose, item.side.in_turn()).ok_or(Failure::NoSuchSlot)?;
    let run = Run {
        id: one.followed.history.next_run(),
        item: item.id,
        exercise: item.exercise.clone(),
        rung: item.rung.clone(),
        dose: item.dose,
        slot: Some(ask.slot),
        started: due,
        live: false,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        doing,
    };
    append(house, ask.plan, moment.now, &What::Run(run))?;
    page(house, moment)
}

/// Excuses days.
pub fn excuse(house: &mut House, moment: &Moment, ask: &Excusing) -> Answer<Today> {
    let one = plans::one(house, Some(ask.plan))?;
    if ask.from > ask.until || ask.from < one.plan().header.start || ask.until > one.plan().prescription.review {
        return Err(Failure::EmptyPeriod);
    }
    append(house, ask.plan, moment.now, &What::Excused { from: ask.from, until: ask.until, why: ask.why })?;
    page(house, moment)
}

/// The plan and the slot of that name.
pub(crate) fn find(house: &House, moment: &Moment, plan: PlanId, slot: SlotRef) -> Answer<(Arc<Carried>, Slot)> {
    let one = plans::one(house, Some(plan))?;
    let day = slots::of_day(one.plan(), slot.day, &moment.zone, one.followed.taken);
    let found = day.into_iter().find(|other| other.slot == slot).ok_or(Failure::NoSuchSlot)?;
    Ok((one, found))
}

fn unfilled(one: &Carried, slot: &Slot, moment: &Moment) -> Answer<()> {
    match one.followed.history.mark(slot, one.item(slot.slot.item)?, moment.now) {
        Mark::Done => Err(Failure::NoSuchSlot),
        _ => Ok(()),
    }
}
