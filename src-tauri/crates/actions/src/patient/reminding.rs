//! What the reminder loop shows next.
//!
//! The loop asks at short intervals; only a slot that is open at that moment is announced, so after sleep or a clock change
//! there is never a pile of old ones. Each slot is announced once, and once more when it was put off.

use super::plans::{self, Carried, append};
use super::today;
use crate::{Answer, House, Moment};
use chrono::Duration;
use exercises::alarm;
use exercises::catalogue::Sidedness;
use exercises::history::Mark;
use exercises::id::PlanId;
use exercises::log::{Barrier, What};
use exercises::plan::Side;
use exercises::slots::{self, Slot, SlotRef};
use wire::Failure;
use wire::patient::{LeavingOut, SlotAsk};

/// A reminder to show now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reminder {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// About how long it takes, in seconds.
    pub takes_s: u32,
    /// How long the slot stays open from now, in milliseconds: a notification is of no use after that.
    pub open_ms: u32,
}

/// What a person chose on a reminder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// Open the slot's page.
    Open,
    /// Put it off by ten minutes.
    PutOff,
    /// Leave it out, without saying why.
    LeaveOut,
}

/// The reminder to show at this moment, if any; showing it is logged. The newest open slot comes first, and older open ones
/// of the same moment are not announced any more.
pub fn due(house: &mut House, moment: &Moment) -> Answer<Option<Reminder>> {
    let carried = plans::all(house)?;
    let wanted =
        carried.iter().flat_map(|one| near(one, moment, -1..=0).into_iter().filter_map(|slot| of_slot(one, &slot, moment)));
    let Some(reminder) = wanted.min_by_key(|reminder| std::cmp::Reverse(reminder.open_ms)) else { return Ok(None) };
    append(house, reminder.plan, moment.now, &What::Reminded { slot: reminder.slot })?;
    Ok(Some(reminder))
}

/// The slots of the days around the moment: yesterday's windows may reach over midnight.
fn near(one: &Carried, moment: &Moment, days: std::ops::RangeInclusive<i64>) -> Vec<Slot> {
    let days = days.map(|days| moment.now.date() + Duration::days(days));
    days.flat_map(|day| slots::of_day(one.plan(), day, &moment.zone, one.followed.taken)).collect()
}

/// The reminder of a slot that is open, not yet announced (or put off until now), not filled and not held back.
fn of_slot(one: &Carried, slot: &Slot, moment: &Moment) -> Option<Reminder> {
    let item = one.plan().item(slot.slot.item).filter(|_| slot.open_at(moment.now))?;
    let history = &one.followed.history;
    let wanted = match history.put_off.get(&slot.slot) {
        Some(until) => until.utc_ms <= moment.now.utc_ms && !announced_since(one, slot.slot),
        None => !history.reminded.contains_key(&slot.slot),
    };
    let held_back = alarm::blocking(&history.alarms, item, one.plan(), &one.catalogue).is_some();
    if !wanted || held_back || history.mark(slot, item, moment.now) != Mark::Due {
        return None;
    }
    let sides = if item.side == Side::Both { Sidedness::EachSide } else { Sidedness::None };
    Some(Reminder {
        plan: one.plan().id,
        slot: slot.slot,
        takes_s: item.dose.whole_s(sides),
        open_ms: u32::try_from(slot.closes?.utc_ms - moment.now.utc_ms).ok()?,
    })
}

/// Does what a person chose on a reminder. Putting off or leaving out a slot that was filled meanwhile changes nothing.
pub fn choose(house: &mut House, moment: &Moment, reminder: &Reminder, choice: Choice) -> Answer<()> {
    let Reminder { plan, slot, .. } = *reminder;
    let done = match choice {
        Choice::Open => {
            house.open_slot = Some(slot);
            return Ok(());
        }
        Choice::PutOff => today::put_off(house, moment, &SlotAsk { plan, slot }),
        Choice::LeaveOut => today::leave_out(house, moment, &LeavingOut { plan, slot, reason: Barrier::RatherNotSay }),
    };
    match done {
        Ok(_) | Err(Failure::NoSuchSlot) => Ok(()),
        Err(failure) => Err(failure),
    }
}

/// Whether a slot that was put off has been announced again since.
fn announced_since(one: &Carried, slot: SlotRef) -> bool {
    let history = &one.followed.history;
    history.put_off.get(&slot).zip(history.reminded_last.get(&slot)).is_some_and(|(until, last)| last.utc_ms >= until.utc_ms)
}

/// When anything could next be due, in milliseconds since 1970 UTC: the loop need not look before.
pub fn next_look(house: &House, moment: &Moment) -> Answer<Option<i64>> {
    let carried = plans::all(house)?;
    let ahead = carried.iter().flat_map(|one| {
        let dues = near(one, moment, -1..=1).into_iter().filter_map(|slot| slot.due);
        dues.chain(one.followed.history.put_off.values().copied())
    });
    Ok(ahead.map(|at| at.utc_ms).filter(|at| *at > moment.now.utc_ms).min())
}
