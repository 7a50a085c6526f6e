//! Instants together with the offset from UTC that applied to them, and the offsets of a time zone as plain data.
//!
//! This crate holds no time zone database: callers pass the [`Offsets`] of the zone for the period that they ask about.

mod day_number;
mod minute_of_day;

use chrono::{DateTime, Datelike, NaiveDate, NaiveDateTime, Timelike};

pub use day_number::DayNumber;
pub use minute_of_day::{MinuteOfDay, NotATime};

/// Minutes in a day.
pub const DAY_MINUTES: u16 = 1440;
/// The minute at which a person's day begins and the one before it ends, counted from midnight.
pub const DAY_BEGINS: u16 = 3 * 60;
const MS_OF_A_DAY: i64 = 86_400_000;

/// A date as days since 1970-01-01.
pub fn days_since_1970(date: NaiveDate) -> i64 {
    i64::from(date.num_days_from_ce()) - 719_163
}

/// An instant, and what the wall clock showed at it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Stamp {
    /// Milliseconds since 1970-01-01T00:00:00Z.
    pub utc_ms: i64,
    /// Seconds by which the wall clock was ahead of UTC; negative west of Greenwich.
    pub offset_s: i32,
}

impl Stamp {
    /// The wall clock's date and time. Instants that the calendar cannot hold (beyond about year ±262,000) give 1970-01-01.
    pub fn local(self) -> NaiveDateTime {
        DateTime::from_timestamp_millis(self.utc_ms.saturating_add(i64::from(self.offset_s) * 1000))
            .unwrap_or_default()
            .naive_utc()
    }

    /// The wall clock's date.
    pub fn date(self) -> NaiveDate {
        self.local().date()
    }

    /// The wall clock's date as days since 1970-01-01. Computed without the calendar, because thousands of entries are sorted
    /// by it.
    pub fn day(self) -> i64 {
        self.utc_ms.saturating_add(i64::from(self.offset_s) * 1000).div_euclid(MS_OF_A_DAY)
    }

    /// The wall clock's minute of the day, 0 to 1439.
    pub fn minute(self) -> u16 {
        (self.local().time().num_seconds_from_midnight() / 60) as u16
    }

    /// The stamp `ms` milliseconds later (earlier if negative), with the same offset.
    pub fn plus_ms(self, ms: i64) -> Stamp {
        Stamp { utc_ms: self.utc_ms.saturating_add(ms), ..self }
    }

    /// Whole seconds from `earlier` to this instant, rounded down; negative if `earlier` is in fact later.
    pub fn seconds_since(self, earlier: Stamp) -> i64 {
        (self.utc_ms - earlier.utc_ms).div_euclid(1000)
    }
}

/// The offsets of a time zone over a period: the one that applies before the first change, then every change.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Offsets {
    /// Seconds ahead of UTC that apply before the first change.
    pub first_s: i32,
    /// The changes, oldest first, each as (seconds since 1970-01-01T00:00:00Z, seconds ahead of UTC from then on).
    pub changes: Vec<(i64, i32)>,
}

/// Which instant a time of the wall clock refers to in a zone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ResolvedTime {
    /// The wall clock shows this time once.
    Once(Stamp),
    /// The wall clock shows this time twice, because it is put back; the stamp is the first of the two.
    Twice(Stamp),
    /// The wall clock never shows this time, because it is put forward over it.
    Never,
}

impl Offsets {
    /// The offsets of a place whose clocks never change, in seconds ahead of UTC.
    pub fn fixed(offset_s: i32) -> Offsets {
        Offsets { first_s: offset_s, changes: Vec::new() }
    }

    /// The offset that applies at an instant, in seconds ahead of UTC.
    pub fn at(&self, utc_s: i64) -> i32 {
        let passed = self.changes.partition_point(|(from, _)| *from <= utc_s);
        passed.checked_sub(1).map_or(self.first_s, |last| self.changes[last].1)
    }

    /// The stamp of an instant in this zone.
    pub fn stamp(&self, utc_ms: i64) -> Stamp {
        Stamp { utc_ms, offset_s: self.at(utc_ms.div_euclid(1000)) }
    }

    /// The instant at which the wall clock shows `local`.
    ///
    /// Every offset that applies within two days of `local` is tried. Those with which the wall clock really shows `local`
    /// give its instants; the earliest of them is used.
    pub fn resolve(&self, local: NaiveDateTime) -> ResolvedTime {
        self.resolve_s(local.and_utc().timestamp())
    }

    /// Same as [`Offsets::resolve`], for a wall clock time given in seconds since 1970-01-01.
    pub(crate) fn resolve_s(&self, naive_s: i64) -> ResolvedTime {
        let near = || self.changes.iter().filter(|(from, _)| (from - naive_s).abs() <= 2 * 86_400);
        let before = self.at(naive_s - 2 * 86_400);
        if near().next().is_none() && self.at(naive_s - i64::from(before)) == before {
            return ResolvedTime::Once(Stamp { utc_ms: (naive_s - i64::from(before)) * 1000, offset_s: before });
        }
        let mut tried: Vec<i32> = near().map(|(_, offset)| *offset).collect();
        tried.push(before);
        let mut found: Vec<Stamp> = tried
            .into_iter()
            .filter(|offset| self.at(naive_s - i64::from(*offset)) == *offset)
            .map(|offset| Stamp { utc_ms: (naive_s - i64::from(offset)) * 1000, offset_s: offset })
            .collect();
        found.sort();
        found.dedup();
        match found.as_slice() {
            [] => ResolvedTime::Never,
            [only] => ResolvedTime::Once(*only),
            [first, ..] => ResolvedTime::Twice(*first),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;

    /// Clocks are put forward one hour at 01:00Z on 29 March 2026, and back at 01:00Z on 25 October 2026.
    fn zone() -> Offsets {
        Offsets { first_s: 3600, changes: vec![(1_774_746_000, 7200), (1_792_890_000, 3600)] }
    }

    fn local(month: u32, day: u32, hour: u32, minute: u32) -> NaiveDateTime {
        NaiveDate::from_ymd_opt(2026, month, day).expect("a date").and_hms_opt(hour, minute, 0).expect("a time")
    }

    #[test]
    fn a_plain_hour_happens_once() {
        let ResolvedTime::Once(stamp) = zone().resolve(local(6, 1, 9, 0)) else { panic!("once") };
        assert_eq!((stamp.offset_s, stamp.local()), (7200, local(6, 1, 9, 0)));
    }

    #[test]
    fn the_jumped_hour_never_happens() {
        assert_eq!(zone().resolve(local(3, 29, 2, 30)), ResolvedTime::Never);
        assert!(matches!(zone().resolve(local(3, 29, 3, 0)), ResolvedTime::Once(_)), "the hour after the jump exists");
    }

    #[test]
    fn the_doubled_hour_counts_at_its_first_occurrence() {
        let ResolvedTime::Twice(stamp) = zone().resolve(local(10, 25, 2, 30)) else { panic!("twice") };
        assert_eq!(stamp.offset_s, 7200, "the first occurrence is still on summer time");
    }

    #[test]
    fn a_day_is_counted_as_the_calendar_counts_it() {
        let epoch = NaiveDate::from_ymd_opt(1970, 1, 1).expect("a date");
        assert_eq!((days_since_1970(epoch), days_since_1970(epoch - chrono::Duration::days(400))), (0, -400));
        let edges = [-1, 0, 1, 1_792_890_000_000, 1_792_882_799_999, 1_792_882_800_000, -86_400_001];
        for (utc_ms, offset_s) in edges.into_iter().flat_map(|utc_ms| [-43_200, 0, 7200].map(|offset| (utc_ms, offset))) {
            let stamp = Stamp { utc_ms, offset_s };
            assert_eq!(stamp.day(), days_since_1970(stamp.date()), "{stamp:?}");
        }
    }

    #[test]
    fn a_stamp_shows_its_own_wall_clock() {
        let stamp = zone().stamp(1_792_890_000_000);
        assert_eq!((stamp.local(), stamp.minute(), stamp.date()), (local(10, 25, 2, 0), 120, local(10, 25, 0, 0).date()));
    }
}
