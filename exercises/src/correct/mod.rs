//! A mistaken entry put right. Nothing of the log is erased: a later entry names the mistaken one and says what it should
//! have been, and the fold takes it so.
//!
//! What can be put right is what a person said or may have tapped by mistake: answers, a skipped slots, a stretch of days off,
//! a run. An alarm cannot: what it pauses stays paused until a card clears it. That it was raised by mistake is noted
//! beside it, for the clinician to judge.

mod list;
mod page;

pub use list::{Correctable, EntryContent, list};
pub use page::{Change, Choices, Day, FIRST_DAYS, by_day, earlier_days};

use crate::id::{PlanId, RunId};
use crate::log::{Correction, Entry, Log, LogEvent};
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// The corrections in force in one log of one plan: of several of one entry the last one.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Corrected {
    /// Answers about pain, the morning after and activities, by entry.
    pub answers: BTreeMap<u32, Correction>,
    /// Slots left out and days off, by entry.
    pub days: BTreeMap<u32, Correction>,
    /// Runs that did not happen.
    pub runs: BTreeSet<RunId>,
    /// Alarms that were raised by mistake, by entry. They stay alarms.
    pub alarms: BTreeSet<u32>,
}

impl Corrected {
    /// What the corrections of `plan` in `log` come to. One that names no earlier entry, or one that cannot be put right so,
    /// says nothing.
    pub fn find(log: &Log, plan: PlanId) -> Corrected {
        let mut found = Corrected::default();
        for entry in log.entries.iter().filter(|entry| entry.plan == plan) {
            if let LogEvent::Corrected { entry: n, to } = entry.event
                && let Some(named) = named(log, entry, n)
                && to.fits(&named.event)
            {
                found.take(named, to);
            }
        }
        found
    }

    fn take(&mut self, named: &Entry, to: Correction) {
        let stands = to == Correction::Stands;
        match &named.event {
            LogEvent::Run(run) if stands => drop(self.runs.remove(&run.id)),
            LogEvent::Run(run) => drop(self.runs.insert(run.id)),
            LogEvent::Trouble { .. } if stands => drop(self.alarms.remove(&named.n)),
            LogEvent::Trouble { .. } => drop(self.alarms.insert(named.n)),
            LogEvent::Skipped { .. } | LogEvent::DaysOff { .. } => put(&mut self.days, named.n, to),
            _ => put(&mut self.answers, named.n, to),
        }
    }

    /// What `entry` says, corrected; `None` where it should not be there.
    pub fn of<'a>(&self, entry: &'a Entry) -> Option<Cow<'a, LogEvent>> {
        let to = match &entry.event {
            LogEvent::Run(run) => return (!self.runs.contains(&run.id)).then_some(Cow::Borrowed(&entry.event)),
            LogEvent::Sensed { run, .. } => return (!self.runs.contains(run)).then_some(Cow::Borrowed(&entry.event)),
            LogEvent::Skipped { .. } | LogEvent::DaysOff { .. } => self.days.get(&entry.n),
            LogEvent::Pain { .. } | LogEvent::Settled { .. } | LogEvent::Rated { .. } => self.answers.get(&entry.n),
            _ => None,
        };
        to.map_or(Some(Cow::Borrowed(&entry.event)), |to| to.of(&entry.event).map(Cow::Owned))
    }

    /// The correction of `entry` that is in force.
    pub fn correction(&self, entry: &Entry) -> Option<Correction> {
        let never = |is: bool| is.then_some(Correction::Never);
        match &entry.event {
            LogEvent::Run(run) => never(self.runs.contains(&run.id)),
            LogEvent::Trouble { .. } => never(self.alarms.contains(&entry.n)),
            _ => self.days.get(&entry.n).or_else(|| self.answers.get(&entry.n)).copied(),
        }
    }
}

fn put(all: &mut BTreeMap<u32, Correction>, n: u32, to: Correction) {
    if to == Correction::Stands {
        all.remove(&n);
    } else {
        all.insert(n, to);
    }
}

/// The entry of that number, if it was made before `correction` and about the same plan.
fn named<'a>(log: &'a Log, correction: &Entry, n: u32) -> Option<&'a Entry> {
    let place = log.entries.binary_search_by_key(&n, |entry| entry.n).ok()?;
    log.entries.get(place).filter(|named| named.n < correction.n && named.plan == correction.plan)
}

#[cfg(test)]
mod tests;
