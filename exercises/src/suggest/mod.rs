//! What to do next: advance, keep, step back, or stop and talk, each with its reason. The clinician decides.
//!
//! The rules are our proposal, built from published ones: target met in two consecutive sessions (2-for-2, Baechle & Earle,
//! NSCA text; recalled), pain during and by the next morning (Silbernagel 2007, Am J Sports Med 35:897-906,
//! 10.1177/0363546506298279, tested in Achilles tendinopathy only; zones of Thomee 1997, Phys Ther 77:1690-1703, recalled).
//! For acute, post-operative or nerve pain the clinician sets a lower limit on the item. Nothing is changed without being
//! shown: on the patient's side a step is only offered if the item's `may_step` allows it, and an uncleared alarm never leads
//! to a step forward.

mod advise;
mod facts;
mod gate;
mod in_use;
mod of_plan;
mod rising;
mod sessions;
mod step;
#[cfg(test)]
mod tests;

use crate::alarm::Trouble;
use crate::catalogue::{Dose, RungId};
use crate::id::{EntryRef, ItemId};
use crate::plan::Item;
use crate::score::Score;
use crate::time::DayNumber;

pub use advise::{ADVANCE_PAIN, BACK_PAIN, STEP_DAYS, advise};
pub use facts::Facts;
pub use gate::{Hindrance, gate_open};
pub use in_use::{in_use, in_use_here};
pub use of_plan::of_plan;
pub use rising::{RISE_POINTS, Rise, WEEK_RATINGS, rise};
pub use sessions::{Reached, Session};
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
    pub advice: Advice,
    /// The reason for the proposal.
    pub reason: Reason,
    /// The days of the sessions on which the proposal is based, oldest first.
    pub based_on: Vec<DayNumber>,
}

/// What is proposed for an item.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Advice {
    /// Make one step forward.
    Advance(Step),
    /// Keep the rung and the dose.
    Keep,
    /// Make one step back.
    StepBack(Step),
    /// Stop this item; the patient and the clinician should talk.
    StopAndTalk,
}

/// The reason for a proposal.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Reason {
    /// An alarm that no card has cleared pauses the item, or prevents a step forward.
    Alarm {
        /// The entry that raised the alarm.
        entry: EntryRef,
        /// What was wrong.
        trouble: Trouble,
    },
    /// Pain during the exercise was above the limit: step back, or stop and talk if this is already the easiest.
    PainTooHigh {
        /// The rating, 0 to 10.
        score: Score,
        /// The limit that was exceeded, 0 to 10: that of the rules or that of the item, whichever is lower.
        limit: Score,
    },
    /// Pain had not settled by the next morning.
    NotSettled,
    /// In each of the last two weeks the median of pain was at least 2 points above the base that [`Rise`] describes.
    PainRising(Rise),
    /// The target was missed in two sessions: step back, or keep if this is already the easiest.
    MissedTwice,
    /// The target was met in two consecutive sessions with little pain: advance.
    MetTwice,
    /// The target was met in only one session so far.
    MetOnce,
    /// The target was not met in the last session, but not missed in two sessions either.
    NotMet,
    /// Pain was too high for a step forward, but within what is allowed.
    PainBetween {
        /// The rating, 0 to 10.
        score: Score,
    },
    /// Pain was not rated after one of the two sessions.
    PainUnanswered,
    /// "Settled by this morning?" was not answered after one of the two sessions.
    MorningUnanswered,
    /// There were fewer than two sessions at this rung and dose.
    TooFewSessions {
        /// Number of sessions.
        sessions: u16,
    },
    /// The last step was less than a week ago.
    StepThisWeek {
        /// The day of the last step.
        stepped: DayNumber,
    },
    /// The next step is not allowed, for this reason.
    Hindered(Hindrance),
}

impl Suggestion {
    /// The proposed step; `None` if no step is proposed.
    pub fn step(&self) -> Option<&Step> {
        match &self.advice {
            Advice::Advance(step) | Advice::StepBack(step) => Some(step),
            Advice::Keep | Advice::StopAndTalk => None,
        }
    }

    /// The step that the patient's copy may offer; `None` if the clinician has not allowed steps for `item`.
    pub fn offered(&self, item: &Item) -> Option<&Step> {
        self.step().filter(|_| item.may_step && item.id == self.item)
    }
}
