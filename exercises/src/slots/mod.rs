//! When items are due.
//!
//! Both ends of a window count. Due times follow the wall clock of the person's place: an hour that occurs twice counts once, at its
//! first occurrence; one that does not exist is marked and not counted. A slot belongs to the day on which its window opened. A slot
//! opens at its due time and closes at the next due time or after sixty minutes, whichever comes first.

use crate::id::ItemId;
use crate::plan::{Item, Plan};
use crate::time::{Offsets, ResolvedTime, Stamp, days_since_1970};
use chrono::{Datelike, NaiveDate};

/// Longest time for which a slot is open, in minutes.
pub const OPEN_MINUTES: i64 = 60;
/// Time before a slot is due in which a run already counts for it, in minutes.
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

/// A slot with its times.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Slot {
    /// Its identity.
    pub slot: SlotRef,
    /// When it is due: the wall clock's minute, from midnight of its day; 1440 or more for the next day.
    pub minute: u16,
    /// When it is due and opens; `None` if that hour does not exist.
    pub due: Option<Stamp>,
    /// When it closes; `None` if that hour does not exist.
    pub closes: Option<Stamp>,
}

impl Slot {
    /// Whether a run that starts at `at` counts for it because it is open.
    pub fn open_at(&self, at: Stamp) -> bool {
        matches!((self.due, self.closes), (Some(due), Some(closes)) if due.utc_ms <= at.utc_ms && at.utc_ms < closes.utc_ms)
    }

    /// Whether a run that starts at `at` counts for it because it opens soon.
    pub fn soon_at(&self, at: Stamp) -> bool {
        self.due.is_some_and(|due| at.utc_ms < due.utc_ms && due.utc_ms - at.utc_ms <= EARLY_MINUTES * 60_000)
    }
}

/// The slots of one item whose window opens on `day`; empty on a day without the item.
pub fn of_item(item: &Item, day: NaiveDate, zone: &Offsets) -> Vec<Slot> {
    if !item.schedule.days.contains(day.weekday()) {
        return Vec::new();
    }
    let minutes = item.schedule.pattern.minutes();
    let dues: Vec<Option<Stamp>> = minutes.iter().map(|minute| due_at(day, *minute, zone)).collect();
    // A window that ends late at night may still be open when the next day's begins; a zone can skip a whole day.
    let next_days = day.iter_days().skip(1).take(2).filter(|next| item.schedule.days.contains(next.weekday()));
    let next_first = next_days.flat_map(|next| minutes.iter().filter_map(move |minute| due_at(next, *minute, zone))).next();
    let next_due = |number: usize| dues[number + 1..].iter().flatten().next().or(next_first.as_ref());
    let slots = minutes.iter().enumerate().map(|(number, minute)| {
        let closes = dues[number].map(|due| {
            let latest = zone.stamp(due.utc_ms + OPEN_MINUTES * 60_000);
            next_due(number).filter(|next| next.utc_ms < latest.utc_ms).copied().unwrap_or(latest)
        });
        Slot { slot: SlotRef { day, item: item.id, number: number as u8 }, minute: *minute, due: dues[number], closes }
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
    let all = plan.prescription.items.iter().flat_map(|item| of_item(item, day, zone));
    let later_day = days_since_1970(day) > taken.day();
    let mut slots: Vec<Slot> = all.filter(|slot| slot.due.map_or(later_day, |due| due.utc_ms >= taken.utc_ms)).collect();
    slots.sort_by_key(|slot| (slot.minute, slot.slot.item));
    slots
}

/// The slot for which a run of `item` that starts at `at` counts: the open one, otherwise the next from ten minutes before it is
/// due; `None` for an extra run.
pub fn counts_for(plan: &Plan, item: ItemId, at: Stamp, zone: &Offsets, taken: Stamp) -> Option<SlotRef> {
    let days = [at.date().pred_opt(), Some(at.date()), at.date().succ_opt()];
    let near: Vec<Slot> = days
        .into_iter()
        .flatten()
        .flat_map(|day| of_day(plan, day, zone, taken))
        .filter(|slot| slot.slot.item == item)
        .collect();
    let open = near.iter().find(|slot| slot.open_at(at));
    open.or_else(|| near.iter().find(|slot| slot.soon_at(at))).map(|slot| slot.slot)
}

#[cfg(test)]
mod tests;
