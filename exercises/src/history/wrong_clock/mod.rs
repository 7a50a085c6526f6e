//! What was recorded while the device's clock was wrong. It is kept apart: it owes no days and is in no series. Alarms count as any
//! others, at their place in the order of the entries.

use super::{History, Rating};
use crate::id::{ActivityId, ComplaintId, ItemId, LogId, PlanId, RunId};
use crate::log::{Entry, Log, LogEvent};
use crate::misdated::{LATE_DAYS, Misdated, ShownTime, TOLERANCE, WrongClock, may_be_now, misdated, utc_day};
use crate::run::Run;
use crate::time::{Stamp, days_since_1970};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// What is known of the time apart from the entries themselves.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Known {
    /// The days on which the plan's cards were issued, by revision.
    pub issued: BTreeMap<u16, NaiveDate>,
    /// What the device's clock shows to somebody who looks; `None` if nobody does.
    pub now: Option<Stamp>,
}

/// What was recorded while the device's clock was wrong.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct WrongClockRecord {
    /// The runs that were begun then, each as its last snapshot shows it.
    pub runs: BTreeMap<RunId, Run>,
    /// Ratings of a complaint's pain in the morning.
    pub mornings: Vec<Rating<ComplaintId>>,
    /// Ratings of the pain while doing an item.
    pub during: Vec<Rating<ItemId>>,
    /// Ratings of named activities.
    pub rated: Vec<Rating<ActivityId>>,
    marks: BTreeMap<u32, Misdated>,
    known: Known,
    /// The day of issue of the newest card that was taken.
    issued: Option<i64>,
    /// The latest day that any entry shows, and the latest of those that are not marked.
    newest: Option<(i64, Option<i64>)>,
}

impl WrongClockRecord {
    /// Finds the entries of `plan` that were made by a wrong clock.
    pub(super) fn find(log: &Log, plan: PlanId, known: Known) -> WrongClockRecord {
        let mut found = WrongClockRecord { known, ..WrongClockRecord::default() };
        let of_plan = || log.entries.iter().filter(|entry| entry.plan == plan);
        let shown: Vec<ShownTime> = of_plan().map(|entry| found.shown(entry)).collect();
        found.marks = misdated(&shown, found.known.now);
        for entry in of_plan() {
            found.note(entry.at, !found.marks.contains_key(&entry.n));
        }
        found
    }

    fn shown(&mut self, entry: &Entry) -> ShownTime {
        if let LogEvent::Taken { revision, .. } = &entry.event {
            self.issued = self.issued.max(self.known.issued.get(revision).copied().map(days_since_1970));
        }
        ShownTime { n: entry.n, at: entry.at, issued: self.issued }
    }

    fn note(&mut self, at: Stamp, is_true: bool) {
        let day = utc_day(at);
        let (newest, newest_true) = self.newest.unwrap_or((day, None));
        self.newest = Some((newest.max(day), newest_true.max(is_true.then_some(day))));
    }

    /// Adds an entry whose time changes no mark. Returns `false`, and nothing changes, if it may change one.
    pub(super) fn extend(&mut self, entry: &Entry) -> bool {
        let day = utc_day(entry.at);
        let issued = match &entry.event {
            LogEvent::Taken { revision, .. } => self.known.issued.get(revision).copied().map(days_since_1970),
            _ => None,
        };
        let placed = self.marks.values().all(|mark| mark.after.is_some());
        let agrees = self.newest.and_then(|(_, newest)| newest).is_none_or(|newest| newest <= day + LATE_DAYS);
        let card = issued <= self.issued && may_be_now(entry.at, self.issued);
        let look = self.known.now.is_none_or(|now| may_be_now(now, self.issued) && day <= utc_day(now) + TOLERANCE);
        let same = placed && agrees && card && look;
        if same {
            self.note(entry.at, true);
        }
        same
    }

    /// How the clock was wrong when entry `n` was made; `None` if nothing speaks against its time.
    pub fn mark(&self, n: u32) -> Option<Misdated> {
        self.marks.get(&n).copied()
    }

    /// Whether the last entries were recorded while the clock was ahead, and none since somebody corrected it.
    pub fn is_last_ahead(&self) -> bool {
        self.marks.values().any(|mark| mark.wrong == WrongClock::Ahead && mark.after.is_none())
    }

    /// Whether the marks are the same for somebody who looks at `now`.
    pub fn is_same_at(&self, now: Option<Stamp>) -> bool {
        let newest = self.newest.map(|(newest, _)| newest);
        let agrees = |now: Option<Stamp>| {
            now.is_none_or(|now| {
                may_be_now(now, self.issued) && newest.is_none_or(|newest| newest <= utc_day(now) + TOLERANCE)
            })
        };
        now.map(utc_day) == self.known.now.map(utc_day) || agrees(now) && agrees(self.known.now)
    }

    /// Somebody looks at `now`, which changes no mark: see [`WrongClockRecord::is_same_at`].
    pub fn look_at(&mut self, now: Option<Stamp>) {
        self.known.now = now;
    }
}

/// The latest time of an entry of `plan` that is not marked; `None` if there is none.
pub fn last_true(log: &Log, plan: PlanId, known: &Known) -> Option<Stamp> {
    let record = WrongClockRecord::find(log, plan, known.clone());
    let entries = log.entries.iter().filter(|entry| entry.plan == plan && record.mark(entry.n).is_none());
    entries.map(|entry| entry.at).max_by_key(|at| at.utc_ms)
}

impl History {
    /// When entry `n`, which says `at`, may have been made: `at` itself unless the clock was wrong.
    pub fn placed(&self, n: u32, at: Stamp) -> Stamp {
        let mark = self.wrong_clock.mark(n);
        mark.map_or(at, |mark| mark.placed().or(self.wrong_clock.known.now).unwrap_or(at))
    }

    /// How the clock was wrong when an entry was made, if it was, and when it may have been made.
    pub fn made(&self, entry: &Entry) -> (Option<WrongClock>, Stamp) {
        (self.wrong_clock.mark(entry.n).map(|mark| mark.wrong), self.placed(entry.n, entry.at))
    }

    /// Takes an entry that was made while the clock was wrong, or one about a run that was begun then.
    pub(super) fn take_misdated(&mut self, log: LogId, entry: &Entry, event: &LogEvent, mark: Option<Misdated>) {
        let (n, at) = (entry.n, entry.at);
        match event {
            LogEvent::Run(run) => drop(self.wrong_clock.runs.insert(run.id, run.clone())),
            LogEvent::Morning { complaint, score } | LogEvent::Pain { complaint, score, after: None } => {
                self.wrong_clock.mornings.push(Rating { n, at, of: *complaint, score: *score });
            }
            LogEvent::During { item, score } => {
                self.wrong_clock.during.push(Rating { n, at, of: *item, score: *score });
            }
            LogEvent::Pain { score, after: Some(run), .. } => {
                if let Some(item) = self.run(*run).map(|run| run.item) {
                    self.wrong_clock.during.push(Rating { n, at, of: item, score: *score });
                }
            }
            LogEvent::Rated { activity, score } => {
                self.wrong_clock.rated.push(Rating { n, at, of: *activity, score: *score });
            }
            // A card owes no days from before it was known to be there.
            LogEvent::Taken { .. } => {
                let at = mark.and_then(|mark| mark.after).unwrap_or_else(|| self.placed(n, at));
                self.take(log, n, at, event);
            }
            // What these say does not depend on the time at which it was said. An alarm keeps its own, by which a card names it.
            LogEvent::Trouble { .. } | LogEvent::WellAgain | LogEvent::DaysOff { .. } | LogEvent::Sealed { .. } => {
                self.take(log, n, at, event);
            }
            LogEvent::Opened
            | LogEvent::Corrected { .. }
            | LogEvent::Reminded { .. }
            | LogEvent::PutOff { .. }
            | LogEvent::Skipped { .. }
            | LogEvent::Settled { .. }
            | LogEvent::Sensed { .. } => {}
        }
    }
}

#[cfg(test)]
mod tests;
