//! When items are due, and what a run counts for.
//!
//! Due times follow the wall clock of the person's place: an hour that occurs twice counts once, at its first occurrence; one that
//! does not exist is marked and not counted. A slot belongs to the day on which its window opened.
//!
//! There are two kinds of due times (a proposal of ours):
//! - **By the hour** ([`Pattern::Every`]) it matters *when* something is done: a slot is open from its due time until the next one,
//!   sixty minutes at most.
//! - **At set times** ([`Pattern::At`]) it matters *that* it is done: each slot is open during the part of the person's day that is
//!   nearest to its due time. The borders lie midway between neighbouring due times; the first part begins when the day begins and
//!   the last one ends when it ends. The person's day runs from 03:00 to 03:00. Lateness is counted ([`Slot::late_at`]), never as
//!   missing. The reminder ends after sixty minutes; the slot stays open.
//!
//! Where the patient chooses the days of a week ([`Days::TimesAWeek`](crate::plan::Days::TimesAWeek)), a run on any day of that week, from Monday to Sunday, counts for one
//! of its slots, and none is missed before the week is over. The rule is in [`week`].

mod part;
pub mod week;

use crate::id::ItemId;
use crate::plan::{Item, Pattern, Plan, days};
use crate::time::{Offsets, ResolvedTime, Stamp, days_since_1970};
use chrono::NaiveDate;

pub use part::{own_date, own_day};
pub use week::Week;

/// Longest time for which a slot by the hour is open and for which any slot is announced, in minutes.
pub const OPEN_MINUTES: i64 = 60;
/// Time before a slot by the hour is due in which a run already counts for it, in minutes.
pub const EARLY_MINUTES: i64 = 10;

/// One time on one day at which an item is due.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SlotRef {
    /// The day on which its window opened.
    pub day: NaiveDate,
    /// The item.
    pub item: ItemId,
    /// Its index within the day, from 0, counted over the pattern whether the hour exists or not.
    pub number: u8,
}

/// A slot with its times. All of them are `None` if the hour at which it is due does not exist.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Slot {
    /// Its identity.
    pub slot: SlotRef,
    /// When it is due: the wall clock's minute, from midnight of its day; 1440 or more for the next day.
    pub minute: u16,
    /// When it is due.
    pub due: Option<Stamp>,
    /// From when on a run counts for it: when it is due, or at a set time when its part of the day begins.
    pub opens: Option<Stamp>,
    /// Until when a run counts for it.
    pub closes: Option<Stamp>,
    /// Until when it is announced: [`OPEN_MINUTES`] after it is due, or when it closes if that is earlier.
    pub announced_until: Option<Stamp>,
    /// Whether it is due at a set time and owns a part of the day, not by the hour.
    pub at_set_time: bool,
    /// The week within which a run on any day counts, where the patient chooses the days.
    pub week: Option<Week>,
}

impl Slot {
    /// Until when it can still be done: until it closes, or until its week is over.
    pub fn can_be_done_until(&self) -> Option<Stamp> {
        self.closes.map(|closes| self.week.map_or(closes, |week| week.ends))
    }

    /// Whether a run that starts at `at` counts for it because it is open.
    pub fn open_at(&self, at: Stamp) -> bool {
        within(self.opens, at, self.closes)
    }

    /// Whether it is due at `at` and may be announced.
    pub fn announced_at(&self, at: Stamp) -> bool {
        within(self.due, at, self.announced_until)
    }

    /// Whether a run that starts at `at` counts for it because it opens soon.
    pub fn soon_at(&self, at: Stamp) -> bool {
        let before = self.opens.map(|opens| opens.utc_ms - at.utc_ms);
        !self.at_set_time && before.is_some_and(|before| 0 < before && before <= EARLY_MINUTES * 60_000)
    }

    /// Whether a run that starts at `at` counts for it, and it is due within [`EARLY_MINUTES`]: Now then offers it.
    pub fn due_soon_at(&self, at: Stamp) -> bool {
        let before = self.due.map(|due| due.utc_ms - at.utc_ms);
        let soon = before.is_some_and(|before| 0 < before && before <= EARLY_MINUTES * 60_000);
        soon && (self.soon_at(at) || self.open_at(at))
    }

    /// Whether it is of the same day of the person's, which runs from 03:00 to 03:00, as `at`.
    pub fn is_on_own_day_of(&self, at: Stamp) -> bool {
        self.due.is_some_and(|due| own_day(due) == own_day(at))
    }

    /// Whether a run that starts at `at` is late for it: more than [`OPEN_MINUTES`] after it is due, by the wall clock of the place
    /// of the run. A person who travels follows the clock there, and where the due time is worked out later the place may be another.
    pub fn late_at(&self, at: Stamp) -> bool {
        let due_ms = (days_since_1970(self.slot.day) * 24 * 60 + i64::from(self.minute)) * 60_000;
        self.due.is_some() && at.utc_ms + i64::from(at.offset_s) * 1000 - due_ms > OPEN_MINUTES * 60_000
    }
}

fn within(from: Option<Stamp>, at: Stamp, until: Option<Stamp>) -> bool {
    matches!((from, until), (Some(from), Some(until)) if from.utc_ms <= at.utc_ms && at.utc_ms < until.utc_ms)
}

/// The slots of one item whose window opens on `day`, in a plan without end; empty on a day without the item.
pub fn of_item(item: &Item, day: NaiveDate, zone: &Offsets) -> Vec<Slot> {
    of_item_until(item, None, day, zone)
}

/// The slots of one item whose window opens on `day`, in a plan that ends on `until`.
fn of_item_until(item: &Item, until: Option<NaiveDate>, day: NaiveDate, zone: &Offsets) -> Vec<Slot> {
    if !item.is_due_on(day, until) {
        return Vec::new();
    }
    let week = Week::of(item, until, day, zone);
    let minutes = item.schedule.pattern.minutes();
    let dues: Vec<Option<Stamp>> = minutes.iter().map(|minute| due_at(day, *minute, zone)).collect();
    let at_set_time = matches!(item.schedule.pattern, Pattern::At { .. });
    let around = part::around(item, day, until, &minutes, zone);
    let slots = minutes.iter().enumerate().map(|(number, minute)| {
        let slot = SlotRef { day, item: item.id, number: number as u8 };
        let Some(due) = dues[number] else {
            let (opens, closes) = (None, None);
            return Slot { slot, minute: *minute, due: None, opens, closes, announced_until: None, at_set_time, week };
        };
        let part = if at_set_time { part::of_set_time(due, &around, zone) } else { part::of_hour(due, &around, zone) };
        let latest = zone.stamp(due.utc_ms + OPEN_MINUTES * 60_000);
        Slot {
            slot,
            minute: *minute,
            due: Some(due),
            opens: Some(part.opens),
            closes: Some(part.closes),
            announced_until: Some(latest.min(part.closes)),
            at_set_time,
            week,
        }
    });
    slots.collect()
}

fn due_at(day: NaiveDate, minute: u16, zone: &Offsets) -> Option<Stamp> {
    match zone.resolve_s(days_since_1970(day) * 86_400 + i64::from(minute) * 60) {
        ResolvedTime::Once(stamp) | ResolvedTime::Twice(stamp) => Some(stamp),
        ResolvedTime::Never => None,
    }
}

/// All slots of a plan whose windows open on `day`, by due time, without those before `taken` (when the card was taken) or after the
/// review date.
pub fn of_day(plan: &Plan, day: NaiveDate, zone: &Offsets, taken: Stamp) -> Vec<Slot> {
    if day > plan.prescription.review {
        return Vec::new();
    }
    let until = Some(plan.prescription.review);
    let all = plan.prescription.items.iter().flat_map(|item| of_item_until(item, until, day, zone));
    let later_day = days_since_1970(day) > taken.day();
    let mut slots: Vec<Slot> = all.filter(|slot| slot.due.map_or(later_day, |due| due.utc_ms >= taken.utc_ms)).collect();
    slots.sort_by_key(|slot| (slot.minute, slot.slot.item));
    slots
}

/// The slots of `item` for which a run that starts at `at` could count, by due time.
pub fn near(plan: &Plan, item: ItemId, at: Stamp, zone: &Offsets, taken: Stamp) -> Vec<Slot> {
    let reach = plan.item(item).map_or(0, |item| item.schedule.days.reach());
    let days = (-(reach.max(1) + 1)..=1).filter_map(|days| at.date().checked_add_signed(chrono::Duration::days(days)));
    days.flat_map(|day| of_day(plan, day, zone, taken)).filter(|slot| slot.slot.item == item).collect()
}

/// The slots of `item`, of which the patient chooses the days, in the week of `day`, also those before the card was taken; empty for
/// every other item.
pub fn of_week(plan: &Plan, item: &Item, day: NaiveDate, zone: &Offsets) -> Vec<Slot> {
    let until = Some(plan.prescription.review);
    let week = days::monday(day).iter_days().take(7).filter(|_| item.schedule.days.are_chosen());
    week.flat_map(|day| of_item_until(item, until, day, zone)).collect()
}

#[cfg(test)]
mod tests;
