//! Correcting mistaken entries. Nothing is erased from the log: a later entry refers to the mistaken one and says what it
//! should have been, and the log is then read accordingly.
//!
//! Only what a person answered or may have tapped by mistake can be corrected: answers, skipped slots, days off and runs. An
//! alarm cannot be corrected: what it pauses stays paused until a card clears it. The person can note that it was raised by
//! mistake, for the clinician to judge. Only the alarm that a rating above an item's limit raises is withdrawn with its rating.

mod list;
mod page;

pub use list::{Correctable, EntryContent, list};
pub use page::{Change, Choices, Day, FIRST_DAYS, by_day, earlier_days};

use crate::alarm::Trouble;
use crate::id::{PlanId, RunId};
use crate::log::{Correction, Entry, Log, LogEvent};
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// The corrections in force in one log of one plan. If an entry was corrected several times, the last correction counts.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Corrected {
    /// Corrections of answers about pain, the morning after and activities, by entry number.
    pub answers: BTreeMap<u32, Correction>,
    /// Corrections of skipped slots and days off, by entry number.
    pub days: BTreeMap<u32, Correction>,
    /// Runs that did not happen.
    pub runs: BTreeSet<RunId>,
    /// Alarms that the person says were raised by mistake, by entry number. They remain alarms.
    pub alarms: BTreeSet<u32>,
}

impl Corrected {
    /// The corrections of `plan` in force in `log`. A correction is ignored if it refers to no earlier entry, or to one that
    /// cannot be corrected in this way.
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

    /// What `entry` says after correction; `None` if it was withdrawn.
    pub fn of<'a>(&self, entry: &'a Entry) -> Option<Cow<'a, LogEvent>> {
        let to = match &entry.event {
            LogEvent::Run(run) => return (!self.runs.contains(&run.id)).then_some(Cow::Borrowed(&entry.event)),
            LogEvent::Sensed { run, .. } => return (!self.runs.contains(run)).then_some(Cow::Borrowed(&entry.event)),
            // It was raised by the rating before it, and goes with it.
            LogEvent::Trouble { trouble: Trouble::PainAboveLimit, .. } => {
                let rating = entry.n.checked_sub(1).and_then(|rating| self.answers.get(&rating));
                return (rating != Some(&Correction::Never)).then_some(Cow::Borrowed(&entry.event));
            }
            LogEvent::Skipped { .. } | LogEvent::DaysOff { .. } => self.days.get(&entry.n),
            LogEvent::Morning { .. }
            | LogEvent::During { .. }
            | LogEvent::Pain { .. }
            | LogEvent::Settled { .. }
            | LogEvent::Rated { .. } => self.answers.get(&entry.n),
            _ => None,
        };
        to.map_or(Some(Cow::Borrowed(&entry.event)), |to| to.of(&entry.event).map(Cow::Owned))
    }

    /// The correction of `entry` that is in force; `None` if there is none.
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

/// The entry with that number, if it was made before `correction` and is about the same plan.
fn named<'a>(log: &'a Log, correction: &Entry, n: u32) -> Option<&'a Entry> {
    let place = log.entries.binary_search_by_key(&n, |entry| entry.n).ok()?;
    log.entries.get(place).filter(|named| named.n < correction.n && named.plan == correction.plan)
}

#[cfg(test)]
mod tests;
