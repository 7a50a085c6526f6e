//! Decides which reminder is due at a moment.

use super::Settings;
use crate::catalogue::Catalogue;
use crate::history::{History, Mark};
use crate::id::PlanId;
use crate::plan::Item;
use crate::run::RunEnd;
use crate::slots::{OPEN_MINUTES, Slot, SlotRef};
use crate::suspension;
use crate::time::{Offsets, Stamp};
use crate::today::Followed;
use chrono::Duration;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::RangeInclusive;

/// A plan that is followed, with the exercises of the catalogue.
#[derive(Debug, Clone, Copy)]
pub struct PlanInForce<'a> {
    /// The plan, when it was taken, and its history.
    pub followed: &'a Followed,
    /// The exercises.
    pub catalogue: &'a Catalogue,
}

/// A reminder of one slot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Reminder {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// When the slot is due.
    pub due: Stamp,
    /// Approximate duration of the exercise, in seconds.
    pub takes_s: u32,
    /// When the slot closes. From then on the reminder is useless.
    pub closes: Stamp,
    /// Whether it comes without a sound.
    pub light: bool,
}

/// Everything that decides which reminder is due.
#[derive(Debug, Clone)]
pub struct ReminderContext<'a> {
    of: Vec<PlanInForce<'a>>,
    settings: &'a Settings,
    zone: &'a Offsets,
    /// When each slot was last reminded of.
    shown: BTreeMap<(PlanId, SlotRef), Stamp>,
}

impl<'a> ReminderContext<'a> {
    /// For all plans that are followed on one device.
    pub fn new(of: Vec<PlanInForce<'a>>, settings: &'a Settings, zone: &'a Offsets) -> ReminderContext<'a> {
        let shown = of.iter().flat_map(|one| {
            let plan = one.followed.plan.header.id;
            one.followed.history.reminded_last.iter().map(move |(slot, at)| ((plan, *slot), *at))
        });
        ReminderContext { shown: shown.collect(), of, settings, zone }
    }

    /// The reminder to show at `now`, if any: the newest of all slots that need one.
    pub fn due(&self, now: Stamp) -> Option<Reminder> {
        if self.settings.is_silent(now) {
            return None;
        }
        let near: Vec<(PlanInForce<'_>, Slot, &Item)> =
            self.of.iter().flat_map(|one| open(*one, now, self.zone).into_iter()).collect();
        let wanted = near.iter().filter(|one| {
            self.wanted_since(one, now).is_some_and(|since| !near.iter().any(|other| self.waits(other, since, now)))
        });
        let (of, slot, item) = wanted.min_by_key(|(_, slot, _)| std::cmp::Reverse(slot.due.map(|due| due.utc_ms)))?;
        let asked = item.on(slot.slot.day, of.followed.plan.header.issued);
        let plan = of.followed.plan.header.id;
        Some(Reminder {
            plan,
            slot: slot.slot,
            takes_s: asked.dose.total_s(item.side.sidedness()),
            due: slot.due?,
            closes: announced_until(of.followed, slot)?,
            light: self.heeded((plan, slot.slot), now),
        })
    }

    /// Whether a reminder of `slot` that was shown is still useful at `now`: the slot is open, was not begun since, skipped or on a
    /// day off, is not paused by an alarm, and was not put off.
    pub fn still_applies(&self, plan: PlanId, slot: SlotRef, now: Stamp) -> bool {
        let same = |(of, open, _): &(PlanInForce<'_>, Slot, &Item)| of.followed.plan.header.id == plan && open.slot == slot;
        let found = self.of.iter().flat_map(|one| open(*one, now, self.zone)).find(same);
        found.is_some_and(|one| {
            let (of, Slot { slot, .. }, item) = one;
            let Followed { plan, history, .. } = of.followed;
            let shown = self.shown.get(&(plan.header.id, slot));
            let put_off = history.put_off.get(&slot).zip(shown).is_some_and(|(until, at)| until.utc_ms > at.utc_ms);
            let paused = suspension::blocking(&history.suspended(plan, now), item, plan, of.catalogue).is_some();
            let undone = self.undone(&one, shown.copied().unwrap_or(now), now);
            undone && !being_done(history, slot) && !put_off && !paused
        })
    }

    /// The stamp of an instant in the person's time zone.
    pub(super) fn stamp(&self, utc_ms: i64) -> Stamp {
        self.zone.stamp(utc_ms)
    }

    /// Records that the reminder was shown at `now`.
    pub fn show(&mut self, reminder: &Reminder, now: Stamp) {
        self.shown.insert((reminder.plan, reminder.slot), now);
    }

    /// Since when an open slot needs a reminder: since it was due, or since the time to which it was put off. `None` if it was
    /// already reminded of, is done, excused or paused for safety, or if a run of it is in progress or part of it was done since.
    fn wanted_since(&self, one: &(PlanInForce<'_>, Slot, &Item), now: Stamp) -> Option<Stamp> {
        let (of, slot, item) = one;
        let Followed { plan, history, .. } = of.followed;
        let shown = self.shown.get(&(plan.header.id, slot.slot));
        let since = match history.put_off.get(&slot.slot) {
            Some(until) => Some(*until).filter(|until| shown.is_none_or(|at| at.utc_ms < until.utc_ms)),
            None => slot.due.filter(|_| shown.is_none()),
        };
        let paused = suspension::blocking(&history.suspended(plan, now), item, plan, of.catalogue).is_some();
        let begun = || being_done(history, slot.slot) && matches!(history.mark(slot, item, now), Mark::Partly(_));
        since.filter(|since| since.utc_ms <= now.utc_ms && !paused && self.undone(one, *since, now) && !begun())
    }

    /// Whether the reminder of an open slot, shown at or after `since`, is still to be acted on: nothing of the slot was done since
    /// or a run of it is in progress, and it was not put off again.
    fn waits(&self, one: &(PlanInForce<'_>, Slot, &Item), since: Stamp, now: Stamp) -> bool {
        let (of, slot, _) = one;
        let Followed { plan, history, .. } = of.followed;
        let Some(shown) = self.shown.get(&(plan.header.id, slot.slot)) else { return false };
        let put_off = history.put_off.get(&slot.slot).is_some_and(|until| until.utc_ms > shown.utc_ms);
        let waits = being_done(history, slot.slot) || self.undone(one, *shown, now);
        (since.utc_ms..=now.utc_ms).contains(&shown.utc_ms) && !put_off && waits
    }

    /// Whether an open slot still has to be done, as seen from a reminder at the moment `by`: nothing of it was done, or a part that
    /// was recorded by then, and it was neither skipped nor excused.
    fn undone(&self, (of, slot, item): &(PlanInForce<'_>, Slot, &Item), by: Stamp, now: Stamp) -> bool {
        let history = &of.followed.history;
        match history.mark(slot, item, now) {
            Mark::Due => true,
            Mark::Partly(_) => {
                let given_up = history.skipped.contains_key(&slot.slot) || history.day_off(slot.slot.day).is_some();
                !given_up && history.recorded.get(&slot.slot).is_none_or(|at| at.utc_ms <= by.utc_ms)
            }
            _ => false,
        }
    }

    /// Whether the last other slot that was reminded of until `now` was done at least in part.
    fn heeded(&self, slot: (PlanId, SlotRef), now: Stamp) -> bool {
        let before = self.shown.iter().filter(|(other, at)| **other != slot && at.utc_ms <= now.utc_ms);
        let Some(((plan, last), _)) = before.max_by_key(|(_, at)| at.utc_ms) else { return false };
        let of = self.of.iter().find(|one| one.followed.plan.header.id == *plan);
        let mut runs = of.into_iter().flat_map(|one| one.followed.history.runs.values().rev());
        runs.any(|run| run.slot == Some(*last) && run.tried())
    }

    /// The next moment at which a reminder may come after `now`; it is not necessary to ask earlier. `None` if not within the next
    /// two days.
    pub fn next_possible(&self, now: Stamp) -> Option<Stamp> {
        let first = self.moments(now.utc_ms, now.utc_ms + 2 * 86_400_000).into_iter().next();
        first.map(|at| self.zone.stamp(at))
    }

    /// Every instant after `from` up to `until` (milliseconds since 1970 UTC) at which a reminder may become due simply because time
    /// passes.
    pub(super) fn moments(&self, from: i64, until: i64) -> BTreeSet<i64> {
        let mut all = self.settings.moments(from, until, self.zone);
        let last = (until - from).div_euclid(86_400_000) + 1;
        for one in &self.of {
            let slots = near(*one, self.zone.stamp(from), -1..=last, self.zone);
            all.extend(
                slots.iter().flat_map(|slot| [slot.due, announced_until(one.followed, slot)]).flatten().map(|at| at.utc_ms),
            );
            all.extend(one.followed.history.put_off.values().map(|until| until.utc_ms));
        }
        all.retain(|at| from < *at && *at <= until);
        all
    }
}

/// Whether the last of all runs is still in progress and belongs to `slot`. A run that was in progress when the slot was put off was
/// cut off, because nobody puts off what they are doing.
fn being_done(history: &History, slot: SlotRef) -> bool {
    let goes_on = history.runs.values().next_back().is_some_and(|run| run.end == RunEnd::Going && run.slot == Some(slot));
    let put_off = history.put_off_at.get(&slot).zip(history.recorded.get(&slot));
    goes_on && put_off.is_none_or(|(asked, recorded)| recorded.utc_ms > asked.utc_ms)
}

/// Until when `slot` is announced. One at a set time that was put off is announced from that moment on as long as if it were due then.
fn announced_until(followed: &Followed, slot: &Slot) -> Option<Stamp> {
    let put_off = followed.history.put_off.get(&slot.slot).filter(|_| slot.at_set_time);
    let put_off = put_off.map(|until| until.plus_ms(OPEN_MINUTES * 60_000));
    slot.announced_until.max(put_off).min(slot.closes)
}

/// The slots of the days around `now`: yesterday's slots may reach over midnight.
fn near(of: PlanInForce<'_>, now: Stamp, days: RangeInclusive<i64>, zone: &Offsets) -> Vec<Slot> {
    let days = days.map(|days| now.date() + Duration::days(days));
    days.flat_map(|day| of.followed.slots_on(day, zone)).collect()
}

/// The slots of which a reminder may be shown at `now`, with their items.
fn open<'a>(of: PlanInForce<'a>, now: Stamp, zone: &Offsets) -> Vec<(PlanInForce<'a>, Slot, &'a Item)> {
    let announced = |slot: &Slot| {
        let until = announced_until(of.followed, slot);
        slot.due.zip(until).is_some_and(|(due, until)| due.utc_ms <= now.utc_ms && now.utc_ms < until.utc_ms)
    };
    let slots = near(of, now, -1..=0, zone).into_iter().filter(announced);
    slots.filter_map(|slot| Some((of, slot, of.followed.plan.item(slot.slot.item)?))).collect()
}
