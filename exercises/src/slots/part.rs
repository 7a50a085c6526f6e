//! How long a slot is open.

use super::{OPEN_MINUTES, due_at};
use crate::plan::Item;
use crate::time::{DAY_BEGINS, Offsets, ResolvedTime, Stamp};
use chrono::NaiveDate;

/// The minute at which the person's day begins, to count with.
const BEGINS: i64 = DAY_BEGINS as i64;

/// From when until when a run counts for a slot.
pub(super) struct Part {
    pub opens: Stamp,
    pub closes: Stamp,
}

/// All times at which `item` is due around `day`, in order: a window may go on after midnight, the person's day ends at 03:00,
/// and a zone can leave out a whole day.
pub(super) fn around(item: &Item, day: NaiveDate, until: Option<NaiveDate>, minutes: &[u16], zone: &Offsets) -> Vec<Stamp> {
    let days = (-2..=2).filter_map(|days| day.checked_add_signed(chrono::Duration::days(days)));
    let days = days.filter(|day| item.is_due_on(*day, until));
    let mut dues: Vec<Stamp> =
        days.flat_map(|day| minutes.iter().filter_map(move |minute| due_at(day, *minute, zone))).collect();
    dues.sort_unstable_by_key(|due| due.utc_ms);
    dues
}

/// By the hour: until the next due time, [`OPEN_MINUTES`] at most.
pub(super) fn of_hour(due: Stamp, around: &[Stamp], zone: &Offsets) -> Part {
    let latest = zone.stamp(due.utc_ms + OPEN_MINUTES * 60_000);
    let next = around.iter().find(|next| next.utc_ms > due.utc_ms);
    Part { opens: due, closes: next.filter(|next| next.utc_ms < latest.utc_ms).copied().unwrap_or(latest) }
}

/// At a set time: the part of the person's day that is nearer to it than to any other due time.
pub(super) fn of_set_time(due: Stamp, around: &[Stamp], zone: &Offsets) -> Part {
    let day = own_day(due);
    let same_day = |other: &&Stamp| own_day(**other) == day;
    let midway = |other: &Stamp| zone.stamp((due.utc_ms + other.utc_ms).div_euclid(2));
    let before = around.iter().rev().find(|other| other.utc_ms < due.utc_ms).filter(same_day);
    let after = around.iter().find(|other| other.utc_ms > due.utc_ms).filter(same_day);
    Part {
        opens: before.map_or_else(|| begins(day, zone), midway),
        closes: after.map_or_else(|| begins(day + 1, zone), midway),
    }
}

/// The person's day of an instant, as days since 1970-01-01: until 03:00 it is still the day before.
pub fn own_day(at: Stamp) -> i64 {
    at.plus_ms(-BEGINS * 60_000).day()
}

/// The person's day of an instant.
pub fn own_date(at: Stamp) -> NaiveDate {
    at.plus_ms(-BEGINS * 60_000).date()
}

/// When a person's day begins: when the wall clock first shows 03:00 or, if the clocks jump over it, a later time.
pub(super) fn begins(day: i64, zone: &Offsets) -> Stamp {
    let shown = (BEGINS..2 * 24 * 60).step_by(15).find_map(|minute| match zone.resolve_s(day * 86_400 + minute * 60) {
        ResolvedTime::Once(stamp) | ResolvedTime::Twice(stamp) => Some(stamp),
        ResolvedTime::Never => None,
    });
    shown.unwrap_or_else(|| zone.stamp((day * 86_400 + BEGINS * 60) * 1000))
}
