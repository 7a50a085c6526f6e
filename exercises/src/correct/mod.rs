//! A mistaken entry put right. Nothing of the log is erased: a later entry names the mistaken one and says what it should
//! have been, and the fold takes it so.
//!
//! What can be put right is what a person said or may have tapped by mistake: answers, a slot left out, an excused stretch,
//! a run. An alarm cannot: what it holds back stays held back until a card clears it. That it was raised by mistake is noted
//! beside it, for the clinician to judge.

mod list;
mod page;

pub use list::{Correctable, Said, list};
pub use page::{Change, Choices, Day, FIRST_DAYS, by_day, further_back};

use crate::id::{PlanId, RunId};
use crate::log::{Barrier, Entry, Excuse, Log, What};
use crate::plan::MAX_SCORE;
use chrono::NaiveDate;
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// What an earlier entry should have been.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Correction {
    /// As it was first said: an earlier correction is taken back.
    Stands,
    /// It did not happen, or was not meant. Of an alarm: it was raised by mistake, which does not lift it.
    Never,
    /// Another score of pain or of an activity, 0 to [`MAX_SCORE`].
    Score(u8),
    /// The other answer about the morning after.
    Settled(bool),
    /// Another reason for leaving the slot out.
    Reason(Barrier),
    /// Other days, or another reason for them.
    Excused {
        /// First day.
        from: NaiveDate,
        /// Last day.
        until: NaiveDate,
        /// Why.
        why: Excuse,
    },
}

impl Correction {
    /// Whether an entry that says `what` can be put right so.
    pub fn fits(self, what: &What) -> bool {
        match self {
            Correction::Stands | Correction::Never => matches!(
                what,
                What::Pain { .. }
                    | What::Settled { .. }
                    | What::Rated { .. }
                    | What::LeftOut { .. }
                    | What::Excused { .. }
                    | What::Run(_)
                    | What::Trouble { .. }
            ),
            Correction::Score(score) => score <= MAX_SCORE && matches!(what, What::Pain { .. } | What::Rated { .. }),
            Correction::Settled(_) => matches!(what, What::Settled { .. }),
            Correction::Reason(_) => matches!(what, What::LeftOut { .. }),
            Correction::Excused { from, until, .. } => from <= until && matches!(what, What::Excused { .. }),
        }
    }

    /// What the entry should have said; `None` where it should not be there. Call it only where it [`fits`](Self::fits).
    pub fn of(self, what: &What) -> Option<What> {
        Some(match (self, what) {
            (_, What::Trouble { .. }) => what.clone(),
            (Correction::Never, _) => return None,
            (Correction::Score(score), What::Pain { complaint, after, .. }) => {
                What::Pain { complaint: *complaint, score, after: *after }
            }
            (Correction::Score(score), What::Rated { activity, .. }) => What::Rated { activity: *activity, score },
            (Correction::Settled(settled), What::Settled { complaint, .. }) => {
                What::Settled { complaint: *complaint, settled }
            }
            (Correction::Reason(reason), What::LeftOut { slot, .. }) => What::LeftOut { slot: *slot, reason },
            (Correction::Excused { from, until, why }, What::Excused { .. }) => What::Excused { from, until, why },
            _ => what.clone(),
        })
    }
}

/// The corrections in force in one log of one plan: of several of one entry the last one.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Corrected {
    /// Answers about pain, the morning after and activities, by entry.
    pub answers: BTreeMap<u32, Correction>,
    /// Slots left out and excused stretches, by entry.
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
            if let What::Corrected { entry: n, to } = entry.what
                && let Some(named) = named(log, entry, n)
                && to.fits(&named.what)
            {
                found.take(named, to);
            }
        }
        found
    }

    fn take(&mut self, named: &Entry, to: Correction) {
        let stands = to == Correction::Stands;
        match &named.what {
            What::Run(run) if stands => drop(self.runs.remove(&run.id)),
            What::Run(run) => drop(self.runs.insert(run.id)),
            What::Trouble { .. } if stands => drop(self.alarms.remove(&named.n)),
            What::Trouble { .. } => drop(self.alarms.insert(named.n)),
            What::LeftOut { .. } | What::Excused { .. } => put(&mut self.days, named.n, to),
            _ => put(&mut self.answers, named.n, to),
        }
    }

    /// What `entry` says, corrected; `None` where it should not be there.
    pub fn of<'a>(&self, entry: &'a Entry) -> Option<Cow<'a, What>> {
        let to = match &entry.what {
            What::Run(run) => return (!self.runs.contains(&run.id)).then_some(Cow::Borrowed(&entry.what)),
            What::Sensed { run, .. } => return (!self.runs.contains(run)).then_some(Cow::Borrowed(&entry.what)),
            What::LeftOut { .. } | What::Excused { .. } => self.days.get(&entry.n),
            What::Pain { .. } | What::Settled { .. } | What::Rated { .. } => self.answers.get(&entry.n),
            _ => None,
        };
        to.map_or(Some(Cow::Borrowed(&entry.what)), |to| to.of(&entry.what).map(Cow::Owned))
    }

    /// The correction of `entry` that is in force.
    pub fn correction(&self, entry: &Entry) -> Option<Correction> {
        let never = |is: bool| is.then_some(Correction::Never);
        match &entry.what {
            What::Run(run) => never(self.runs.contains(&run.id)),
            What::Trouble { .. } => never(self.alarms.contains(&entry.n)),
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
