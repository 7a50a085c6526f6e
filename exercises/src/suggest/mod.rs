//! What next: advance, keep, step back, or stop and talk; with the reason, for a clinician to decide.
//!
//! The rules are our proposal, built from published ones: target met in two consecutive sessions (2-for-2, Baechle & Earle,
//! NSCA text; recalled), pain during and by the next morning (Silbernagel 2007, Am J Sports Med 35:897-906,
//! 10.1177/0363546506298279, tested in Achilles tendinopathy only; zones of Thomee 1997, Phys Ther 77:1690-1703, recalled).
//! For acute, post-operative or nerve pain the clinician sets a lower limit on the item. Nothing is ever changed silently:
//! on the patient's side a step is only offered where the item's `may_step` allows it, and an uncleared alarm never leads
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
    /// The item.
    pub item: ItemId,
    /// The rung in use, from which a step would go.
    pub rung: Option<RungId>,
    /// The dose in use.
    pub dose: Dose,
    /// What to do.
    pub advice: Advice,
    /// Why.
    pub reason: Reason,
    /// The days of the sessions that it rests on, oldest first.
    pub based_on: Vec<DayNumber>,
}

/// What to do.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Advice {
    /// One step forward.
    Advance(Step),
    /// As it is.
    Keep,
    /// One step back.
    StepBack(Step),
    /// Stop this item, and the patient and the clinician talk.
    StopAndTalk,
}

/// Why.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Reason {
    /// An alarm that no card has cleared holds the item back.
    Alarm {
        /// Its name.
        entry: EntryRef,
        /// What was wrong.
        trouble: Trouble,
    },
    /// Pain during was over the limit: stepping back, or at the easiest already (stop and talk).
    PainTooHigh {
        /// The rating.
        score: Score,
        /// The limit that held: the rule's or the item's, whichever is lower.
        limit: Score,
    },
    /// Pain had not settled by the next morning.
    NotSettled,
    /// The weekly median of pain rose, two weeks in a row.
    PainRising(Rise),
    /// The target was missed in two sessions: stepping back, or at the easiest already (keep).
    MissedTwice,
    /// The target was met in two consecutive sessions, with little pain: advance.
    MetTwice,
    /// The target was met once so far.
    MetOnce,
    /// The target was not met in the last session, nor missed twice.
    NotMet,
    /// Pain was over what allows a step, and within what is allowed.
    PainBetween {
        /// The rating.
        score: Score,
    },
    /// Pain was not answered after one of the two sessions.
    PainUnanswered,
    /// "Settled by this morning?" was not answered after one of the two sessions.
    MorningUnanswered,
    /// Fewer than two sessions at this rung and dose.
    TooFewSessions {
        /// How many.
        sessions: u16,
    },
    /// The last step was less than a week ago.
    StepThisWeek {
        /// The day of the last step.
        stepped: DayNumber,
    },
    /// The next step is not to be had.
    Hindered(Hindrance),
}

impl Suggestion {
    /// The step, if one is proposed.
    pub fn step(&self) -> Option<&Step> {
        match &self.advice {
            Advice::Advance(step) | Advice::StepBack(step) => Some(step),
            Advice::Keep | Advice::StopAndTalk => None,
        }
    }

    /// The step that the patient's copy may offer: only where the clinician allowed it for `item`.
    pub fn offered(&self, item: &Item) -> Option<&Step> {
        self.step().filter(|_| item.may_step && item.id == self.item)
    }
}
