//! What to do next with each item: talk, ease, reduce, progress or keep, with the reasons in numbers. The clinician decides.
//!
//! The rules are a proposal of ours, in the order of [`propose()`], built from published ones: target met in two consecutive sessions
//! (2-for-2, Baechle & Earle, NSCA text; recalled), pain during and by the next morning (Silbernagel 2007, Am J Sports Med
//! 35:897-906, 10.1177/0363546506298279, tested in Achilles tendinopathy only; zones of Thomee 1997, Phys Ther 77:1690-1703,
//! recalled). For acute, post-operative or nerve pain the clinician sets a lower limit on the item. Nothing is changed without being
//! shown: on the patient's side a step is only offered if the item's `may_step` allows it.

mod changed;
mod facts;
mod gate;
mod in_use;
mod of_plan;
mod propose;
mod reduction;
mod sessions;
mod step;
#[cfg(test)]
mod tests;

use crate::alarm::Trouble;
use crate::catalogue::{Dose, RungId};
use crate::id::{AlarmId, ItemId};
use crate::log::Barrier;
use crate::plan::Item;
use crate::score::Score;
use crate::time::DayNumber;

pub use facts::{ItemFacts, PlanFacts};
pub use gate::{Hindrance, gate_open};
pub use in_use::{eased_by, in_use, in_use_here};
pub use of_plan::of_plan;
pub use propose::{EASY_PAIN, MANY_OWED, SETTLED_DAYS, STEP_DAYS, propose};
pub use reduction::{HalfOfDay, Reduction};
pub use sessions::Session;
pub use step::{Step, StepConditions, back, next, undo};

/// What the rules propose for one item.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Suggestion {
    /// The item that the proposal is about.
    pub item: ItemId,
    /// The rung in use, from which a step would start.
    pub rung: Option<RungId>,
    /// The dose in use.
    pub dose: Dose,
    /// What is proposed.
    pub proposal: Proposal,
    /// Why, the most important first; never empty.
    pub reasons: Vec<Reason>,
    /// What the clinician should ask before following it. The answer makes it final or changes it.
    pub ask: Vec<Ask>,
}

/// What is proposed for an item.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Proposal {
    /// Stop this item; the patient and the clinician should talk.
    Talk,
    /// One factor back.
    Ease(Step),
    /// Ask for less.
    Reduce(Reduction),
    /// One factor forward.
    Progress(Step),
    /// Go on as it is.
    Keep,
}

/// What the clinician should ask.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ask {
    /// How much it hurts while doing it.
    Pain,
    /// Why it is not done.
    Reason,
}

/// A reason for a proposal, in numbers.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Reason {
    /// An alarm that no card has cleared suspends the item.
    Alarm {
        /// The alarm.
        id: AlarmId,
        /// What was wrong.
        trouble: Trouble,
    },
    /// Nothing at all was done.
    NothingDone {
        /// Number of owed slots.
        owed: u32,
    },
    /// A rating while doing it was above the limit.
    AboveLimit {
        /// The rating, 0 to 10.
        score: Score,
        /// The limit, 0 to 10.
        limit: Score,
        /// The day.
        day: DayNumber,
    },
    /// Mornings on which the pain had not settled.
    Unsettled {
        /// Their days, oldest first.
        days: Vec<DayNumber>,
    },
    /// The target was missed in sessions that were carried to their end.
    TargetMissed {
        /// How many of them missed it.
        missed: u32,
        /// How many of them were looked at.
        of: u32,
    },
    /// A near fall in it.
    NearFall {
        /// The day of the last one.
        day: DayNumber,
    },
    /// The seconds fall.
    BalanceFalling,
    /// Little was done.
    LittleDone {
        /// The shares of the owed slots, summed, in thousandths of a slot.
        thousandths: u32,
        /// Number of owed slots.
        owed: u32,
    },
    /// The reason that the patient gave most often for skipping it.
    Given {
        /// The reason.
        barrier: Barrier,
        /// How often it was given.
        times: u32,
    },
    /// The patient gave no reason for skipping it.
    NoneGiven,
    /// The target was met on the last two days with a session.
    TargetMet {
        /// The two days.
        days: [DayNumber; 2],
    },
    /// The ratings while doing it were low.
    LowPain {
        /// The highest, 0 to 10.
        most: Score,
        /// The number of ratings.
        known: u32,
    },
    /// Fewer than two ratings while doing it are known.
    PainUnknown {
        /// The number of ratings.
        known: u32,
    },
    /// It, its level or its dose was changed less than a week ago.
    ChangedLately {
        /// The day of the change.
        day: DayNumber,
    },
    /// Sessions on too few days.
    FewSessions {
        /// Number of days with a session.
        days: u32,
    },
    /// The target was not met on each of the last two days with a session.
    NotMet,
    /// A rating while doing it was too high for a step forward, though within the limit.
    PainTooHighToProgress {
        /// The rating, 0 to 10.
        score: Score,
    },
    /// The pain of the complaint has become worse.
    PainWorse,
    /// An alarm suspended it less than a week ago; whether a card has cleared it does not matter.
    AlarmLately {
        /// What was wrong.
        trouble: Trouble,
        /// The day.
        day: DayNumber,
    },
    /// A flare goes on or ended less than a week ago.
    FlareLately {
        /// Its last day.
        to: DayNumber,
    },
    /// There is no further step, for this reason.
    Hindered(Hindrance),
}

impl Suggestion {
    /// The proposed step; `None` if no step is proposed.
    pub fn step(&self) -> Option<&Step> {
        match &self.proposal {
            Proposal::Progress(step) | Proposal::Ease(step) => Some(step),
            Proposal::Talk | Proposal::Reduce(_) | Proposal::Keep => None,
        }
    }

    /// The step that the patient's copy may offer: only if the clinician has allowed steps for `item`, never to another load, which is the
    /// clinician's, and a step forward only if two ratings while doing it are known.
    pub fn offered(&self, item: &Item) -> Option<&Step> {
        let own = |step: &&Step| !matches!(step, Step::Load { .. });
        self.step().filter(own).filter(|_| item.may_step && item.id == self.item && self.ask.is_empty())
    }
}
