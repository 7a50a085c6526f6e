//! Times without reminders: daily quiet times, and a meeting that ends by itself.

use crate::time::DAY_MINUTES;
use crate::time::{Offsets, Stamp};
use chrono::{Duration, NaiveTime};
use std::collections::BTreeSet;

/// Largest number of quiet times in a day.
pub const MAX_QUIET: usize = 8;
/// Longest meeting, in minutes. A proposal of ours: for a longer one there is the day off.
pub const MAX_MEETING: u16 = 720;
/// The meetings that can be chosen with one tap, in minutes; the tray offers the longest one. A proposal of ours.
pub const MEETINGS: [u16; 3] = [30, 60, 120];

/// A daily quiet time, by the wall clock. Its first minute belongs to it, its last one does not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Span {
    /// First minute of the day, 0 to 1439.
    pub from: u16,
    /// Minute of the day at which it ends, 0 to 1439. If it is not after `from`, it is on the next day.
    pub to: u16,
}

impl Span {
    /// Whether both are minutes of the day and different. A quiet time of a whole day would mean no reminders at all.
    pub fn fits(self) -> bool {
        self.from < DAY_MINUTES && self.to < DAY_MINUTES && self.from != self.to
    }

    /// Whether `minute` of the day, 0 to 1439, belongs to it.
    pub fn holds(self, minute: u16) -> bool {
        if self.from < self.to { (self.from..self.to).contains(&minute) } else { minute >= self.from || minute < self.to }
    }
}

/// Largest correction of the clock that does not end a meeting, in milliseconds. A proposal of ours: devices that synchronise with a
/// time server are corrected by less.
const PUT_RIGHT_MS: i64 = 60_000;

/// A single time without reminders, such as "not for the next two hours".
///
/// It has a beginning too, so that a meeting that began while the clock was wrong does not suppress reminders once the clock is
/// right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Meeting {
    /// When it was requested.
    pub from: Stamp,
    /// When it ends by itself.
    pub until: Stamp,
}

/// The person's choices about reminders.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Settings {
    /// Daily quiet times, at most [`MAX_QUIET`].
    pub quiet: Vec<Span>,
    /// The last meeting that was requested, unless it was ended early.
    pub meeting: Option<Meeting>,
}

impl Meeting {
    /// When it begins to suppress reminders, milliseconds since 1970 UTC.
    fn silences_from_ms(self) -> i64 {
        self.from.utc_ms.saturating_sub(PUT_RIGHT_MS)
    }

    fn holds(self, now: Stamp) -> bool {
        (self.silences_from_ms()..self.until.utc_ms).contains(&now.utc_ms)
    }
}

impl Settings {
    /// Whether reminders are suppressed at `now`.
    pub fn is_silent(&self, now: Stamp) -> bool {
        self.meeting_at(now).is_some() || self.quiet.iter().any(|span| span.holds(now.minute()))
    }

    /// The meeting in progress at `now`.
    pub fn meeting_at(&self, now: Stamp) -> Option<Meeting> {
        self.meeting.filter(|meeting| meeting.holds(now))
    }

    /// Until when reminders are suppressed, as of `now`; `None` if they are not suppressed now, or if quiet times fill the whole
    /// day.
    pub fn silent_until(&self, now: Stamp, zone: &Offsets) -> Option<Stamp> {
        if !self.is_silent(now) {
            return None;
        }
        let moments = self.moments(now.utc_ms, now.utc_ms + 3 * 86_400_000, zone);
        moments.into_iter().map(|ms| zone.stamp(ms)).find(|at| !self.is_silent(*at))
    }

    /// Every instant after `from` up to `until` (milliseconds since 1970 UTC) at which a time without reminders may begin or end.
    /// Some of them change nothing.
    pub(super) fn moments(&self, from: i64, until: i64, zone: &Offsets) -> BTreeSet<i64> {
        // At a clock change, a wall-clock minute occurs twice or is skipped, so every offset within the time is tried.
        let changes = zone.changes.iter().filter(|(at, _)| (from..=until).contains(&(at * 1000)));
        let mut offsets: BTreeSet<i32> = changes.clone().map(|(_, offset)| *offset).collect();
        offsets.insert(zone.at(from.div_euclid(1000)));
        let ends: BTreeSet<u16> = self.quiet.iter().flat_map(|span| [span.from, span.to]).collect();
        let first = zone.stamp(from).date() - Duration::days(1);
        let days = (until - from).div_euclid(86_400_000) + 4;
        let midnights = first.iter_days().take(usize::try_from(days).unwrap_or(0)).map(|day| day.and_time(NaiveTime::MIN));
        let mut all: BTreeSet<i64> = changes.map(|(at, _)| at * 1000).collect();
        for midnight in midnights {
            let wall_ms = midnight.and_utc().timestamp_millis();
            let at = |minute: &u16, offset: &i32| wall_ms + i64::from(*minute) * 60_000 - i64::from(*offset) * 1000;
            all.extend(ends.iter().flat_map(|minute| offsets.iter().map(move |offset| at(minute, offset))));
        }
        all.extend(self.meeting.iter().flat_map(|meeting| [meeting.silences_from_ms(), meeting.until.utc_ms]));
        all.retain(|at| from < *at && *at <= until);
        all
    }
}
