//! Times without reminders: those that come every day, and a meeting that ends by itself.

use crate::plan::schedule::DAY_MINUTES;
use crate::time::{Offsets, Stamp};
use chrono::{Duration, NaiveTime};
use std::collections::BTreeSet;

/// Most quiet times of a day.
pub const MAX_QUIET: usize = 8;
/// The longest meeting, in minutes. A proposal of ours: one that lasts longer is a day off.
pub const MAX_MEETING: u16 = 720;
/// The meetings that are offered by one tap, in minutes; the longest is the one that the tray offers. A proposal of ours.
pub const MEETINGS: [u16; 3] = [30, 60, 120];

/// A quiet time of every day, by the wall clock: its beginning belongs to it, its end does not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Span {
    /// First minute, 0 to 1439.
    pub from: u16,
    /// The minute at which it is over, 0 to 1439; where that is not after `from`, on the next day.
    pub to: u16,
}

impl Span {
    /// Whether both are minutes of the day, and not the same: a whole day's quiet would be no reminders at all.
    pub fn fits(self) -> bool {
        self.from < DAY_MINUTES && self.to < DAY_MINUTES && self.from != self.to
    }

    /// Whether `minute` of the day, 0 to 1439, lies in it.
    pub fn holds(self, minute: u16) -> bool {
        if self.from < self.to { (self.from..self.to).contains(&minute) } else { minute >= self.from || minute < self.to }
    }
}

/// A clock that is put right by no more than this does not end a meeting, in milliseconds. A proposal of ours: a device that
/// asks a time server is off by less.
const PUT_RIGHT_MS: i64 = 60_000;

/// "Not for the next two hours."
///
/// It has a beginning too, so that one that began by a clock that was wrong does not silence a clock that is right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Meeting {
    /// When it was asked for.
    pub from: Stamp,
    /// When it ends by itself.
    pub until: Stamp,
}

/// What a person chose about reminders.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Settings {
    /// Quiet times of every day, up to [`MAX_QUIET`].
    pub quiet: Vec<Span>,
    /// The last meeting asked for, if it was not ended early.
    pub meeting: Option<Meeting>,
}

impl Meeting {
    /// From when on it silences, milliseconds since 1970 UTC.
    fn silences_from_ms(self) -> i64 {
        self.from.utc_ms.saturating_sub(PUT_RIGHT_MS)
    }

    fn holds(self, now: Stamp) -> bool {
        (self.silences_from_ms()..self.until.utc_ms).contains(&now.utc_ms)
    }
}

impl Settings {
    /// Whether no reminder comes at `now`.
    pub fn is_silent(&self, now: Stamp) -> bool {
        self.meeting_at(now).is_some() || self.quiet.iter().any(|span| span.holds(now.minute()))
    }

    /// The meeting that goes on at `now`.
    pub fn meeting_at(&self, now: Stamp) -> Option<Meeting> {
        self.meeting.filter(|meeting| meeting.holds(now))
    }

    /// Until when no reminder comes, seen at `now`; `None` where one may come now, or where quiet times fill the whole day.
    pub fn silent_until(&self, now: Stamp, zone: &Offsets) -> Option<Stamp> {
        if !self.is_silent(now) {
            return None;
        }
        let moments = self.moments(now.utc_ms, now.utc_ms + 3 * 86_400_000, zone);
        moments.into_iter().map(|ms| zone.stamp(ms)).find(|at| !self.is_silent(*at))
    }

    /// Every instant after `from` up to `until` (milliseconds since 1970 UTC) at which silence may begin or end. Some of them
    /// change nothing.
    pub(super) fn moments(&self, from: i64, until: i64, zone: &Offsets) -> BTreeSet<i64> {
        // Where clocks change, a wall-clock minute is met twice, or passed over: every offset of the stretch is tried.
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
