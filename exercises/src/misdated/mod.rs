//! Which entries of a log were made by a clock that was wrong.
//!
//! Each entry has a number and a time. The numbers say for certain in which order entries were recorded. The times come from the device's
//! clock, which may have been years ahead or behind until somebody corrected it. An entry is misdated, that is, its time cannot be true,
//! in these cases (limits of our own choice, without a source):
//! - it lies more than a day after the *known now*: the device's own clock whenever somebody looks;
//! - it lies more than a day before the day on which the newest card taken by then was issued;
//! - it contradicts the order: of two entries the one recorded later has a time that is more than a week earlier. Then as many stretches
//!   of one day as possible are taken as true; of two ways that keep equally many, the one that keeps what was recorded last. Less than a
//!   week may be what somebody recorded from a file some days later, and both are days of the plan.
//!
//! If the device's clock is itself before that card when somebody looks, it says nothing about the entries. If it was before the card at
//! every entry, only the order decides until the clock is corrected. Times are compared in whole days of UTC, so that zones, summer time,
//! flights over the date line and deviations of less than a day never matter.
//!
//! A misdated entry is kept and shown with a mark. It owes no days and is in no series; alarms count all the same, at their place in
//! the order.

use crate::time::Stamp;
use std::collections::BTreeMap;

const MS_OF_A_DAY: i64 = 86_400_000;
/// Days by which a time may contradict the known now or a card.
pub(crate) const TOLERANCE: i64 = 1;
/// Days by which an entry may be earlier than one that was recorded before it.
pub(crate) const LATE_DAYS: i64 = 7;

/// When an entry says that it was made, in the order in which entries were recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ShownTime {
    /// The number of the entry.
    pub n: u32,
    /// What the clock showed.
    pub at: Stamp,
    /// The day of issue of the newest card that was taken by then, as days since 1970-01-01; `None` if it is not known.
    pub issued: Option<i64>,
}

/// How a clock was wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum WrongClock {
    /// It was ahead.
    Ahead,
    /// It was behind.
    Behind,
}

/// An entry that was made by a clock that was wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Misdated {
    /// How the clock was wrong.
    pub wrong: WrongClock,
    /// The time of the last entry before it whose time may be true.
    pub before: Option<Stamp>,
    /// The time of the first entry after it whose time may be true.
    pub after: Option<Stamp>,
}

impl Misdated {
    /// A time at which it may have been made: that of the last entry before it, else of the first one after it.
    pub fn placed(&self) -> Option<Stamp> {
        self.before.or(self.after)
    }
}

/// The day of an instant in UTC, as days since 1970-01-01.
pub fn utc_day(at: Stamp) -> i64 {
    at.utc_ms.div_euclid(MS_OF_A_DAY)
}

/// Whether a clock that shows `now` may be right while a card is followed that was issued on the day `issued`.
pub fn may_be_now(now: Stamp, issued: Option<i64>) -> bool {
    issued.is_none_or(|issued| utc_day(now) >= issued - TOLERANCE)
}

/// The misdated ones of `entries`, by number. `now` is the known now; `None` if nobody looks, so that order and cards alone decide.
pub fn misdated(entries: &[ShownTime], now: Option<Stamp>) -> BTreeMap<u32, Misdated> {
    let card = entries.iter().filter_map(|entry| entry.issued).max();
    let looks_right = now.is_none_or(|now| may_be_now(now, card));
    let latest = now.filter(|_| looks_right).map(|now| utc_day(now) + TOLERANCE);
    let after_card = |entry: &ShownTime| may_be_now(entry.at, entry.issued);
    let by_cards = looks_right || entries.iter().any(after_card);
    let earliest = |entry: &ShownTime| entry.issued.filter(|_| by_cards).map(|issued| issued - TOLERANCE);
    let possible = |entry: &ShownTime| {
        let day = utc_day(entry.at);
        latest.is_none_or(|latest| day <= latest) && earliest(entry).is_none_or(|earliest| day >= earliest)
    };
    let possible: Vec<bool> = entries.iter().map(possible).collect();
    let kept = consistent(entries, &possible);
    if kept.iter().all(|kept| *kept) {
        return BTreeMap::new();
    }
    let mut found = BTreeMap::new();
    let mut before = None;
    let mut ahead = entries.iter().zip(&kept).filter(|(_, kept)| **kept).map(|(entry, _)| entry).peekable();
    for (place, entry) in entries.iter().enumerate() {
        if kept[place] {
            before = Some(entry.at);
            ahead.next();
            continue;
        }
        let after = ahead.peek().map(|next| next.at);
        let day = utc_day(entry.at);
        let is_late = latest.is_some_and(|latest| day > latest);
        let is_early = earliest(entry).is_some_and(|earliest| day < earliest);
        let after_next = after.is_some_and(|after| day > utc_day(after) + LATE_DAYS);
        let before_last = before.is_some_and(|before| utc_day(before) > day + LATE_DAYS);
        let is_ahead = is_late || !is_early && (after_next || !before_last);
        let wrong = if is_ahead { WrongClock::Ahead } else { WrongClock::Behind };
        found.insert(entry.n, Misdated { wrong, before, after });
    }
    found
}

/// Entries that follow each other on one day.
struct Stretch {
    day: i64,
    entries: std::ops::Range<usize>,
}

/// Which of the `possible` entries are kept so that none of them lies more than [`LATE_DAYS`] after one that was recorded later.
fn consistent(entries: &[ShownTime], possible: &[bool]) -> Vec<bool> {
    let mut kept = possible.to_vec();
    let mut newest = i64::MIN;
    let agree = (0..entries.len()).filter(|place| possible[*place]).all(|place| {
        let day = utc_day(entries[place].at);
        newest = newest.max(day);
        newest <= day + LATE_DAYS
    });
    if agree {
        return kept;
    }
    for stretch in left_out(&stretches(entries, possible)) {
        kept[stretch].fill(false);
    }
    kept
}

/// The possible entries by days: those between two of a stretch that are not possible do not divide it.
fn stretches(entries: &[ShownTime], possible: &[bool]) -> Vec<Stretch> {
    let mut all: Vec<Stretch> = Vec::new();
    for place in (0..entries.len()).filter(|place| possible[*place]) {
        let day = utc_day(entries[place].at);
        match all.last_mut().filter(|last| last.day == day) {
            Some(last) => last.entries.end = place + 1,
            None => all.push(Stretch { day, entries: place..place + 1 }),
        }
    }
    all
}

/// The stretches that are left out so that as many as possible remain and agree with the order.
///
/// Going through them from the last to the first, what remains to be decided depends only on the earliest day that was kept so far. So
/// for each stretch and each such day the best number of kept ones is worked out from the first stretch on.
fn left_out(stretches: &[Stretch]) -> Vec<std::ops::Range<usize>> {
    let mut days: Vec<i64> = stretches.iter().map(|stretch| stretch.day).collect();
    days.sort_unstable();
    days.dedup();
    let place_of = |day: i64| days.partition_point(|other| *other < day);
    // One more than there are days: nothing was kept yet.
    let states = days.len() + 1;
    let mut best = vec![0_u32; states];
    let mut keeps: Vec<bool> = Vec::with_capacity(states * stretches.len());
    for stretch in stretches {
        let own = place_of(stretch.day);
        let with = |state: usize, best: &[u32]| {
            let fits = days.get(state).is_none_or(|earliest| stretch.day <= earliest + LATE_DAYS);
            (fits && 1 + best[own.min(state)] >= best[state]).then(|| 1 + best[own.min(state)])
        };
        let next: Vec<Option<u32>> = (0..states).map(|state| with(state, &best)).collect();
        keeps.extend(next.iter().map(Option::is_some));
        best = next.into_iter().zip(best).map(|(with, without)| with.unwrap_or(without)).collect();
    }
    let mut state = days.len();
    let mut out = Vec::new();
    for (number, stretch) in stretches.iter().enumerate().rev() {
        if keeps[number * states + state] {
            state = state.min(place_of(stretch.day));
        } else {
            out.push(stretch.entries.clone());
        }
    }
    out
}

#[cfg(test)]
mod tests;
