//! The clinician's page about one patient: six questions, answered from the summaries of all the patient's devices.

mod build;
mod norms;
mod ratings;
#[cfg(test)]
pub(crate) mod samples;
mod stance;
mod strings;
#[cfg(test)]
mod tests;

use crate::adherence::ItemAdherence;
use crate::alarm::Trouble;
use crate::catalogue::{ExerciseId, Eyes, RungId, Surface};
use crate::change::{ActivitiesTogether, ActivityChange, Conditions, PainChange, SideToSide, StanceChange, SwaySeries};
use crate::history::Mark;
use crate::id::{ActivityId, ComplaintId, EntryRef, ItemId, LogId};
use crate::log::Barrier;
use crate::plan::{BodySide, StanceBaseline};
use crate::run::SetUp;
use crate::score::Score;
use crate::suggest::Suggestion;
use crate::summary::WeekDelay;
use crate::time::DayNumber;
use chrono::NaiveDate;

pub use crate::change::StanceDay;
pub use build::{build, build_against};
pub use norms::AgainstNorms;
#[cfg(test)]
pub(crate) use norms::not_compared as norms_not_compared;

/// The clinician's page about one patient. Each field answers one question.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Review {
    /// The plan's first day.
    pub start: NaiveDate,
    /// First and last day with a record, if there is any.
    pub covered: Option<(NaiveDate, NaiveDate)>,
    /// Devices that have sent a summary.
    pub logs: u16,
    /// Those devices whose record ends before the last day that is covered: what they know since is not here yet.
    pub behind: Vec<LaggingDevice>,
    /// The revision in force.
    pub revision: u16,
    /// Did anything alarming happen? Newest first.
    pub alarms: Vec<ReviewAlarm>,
    /// Did they do it? By item, in the plan's order.
    pub adherence: Vec<ItemAdherence>,
    /// When, and since when not? Day by day.
    pub days: Vec<DayString>,
    /// How long after the reminder runs began, by week, oldest first.
    pub delays: Vec<WeekDelay>,
    /// Did it hurt? By complaint.
    pub pain: Vec<PainSeries>,
    /// Is it working? By exercise, rung, leg, surface, eyes, set-up and cap.
    pub balance: Vec<StanceSeries>,
    /// The involved leg against the other, where both were done under the same conditions.
    pub sides: Vec<Sides>,
    /// Stance times taken at the visits, with the day of issue, oldest first.
    pub baselines: Vec<(DayNumber, StanceBaseline)>,
    /// Named activities.
    pub activities: Vec<ActivitySeries>,
    /// All named activities together, where two or more were rated at both ends.
    pub activities_together: Option<ActivitiesTogether>,
    /// What got in the way? Those that need attention first, then by number.
    pub barriers: Vec<(Barrier, u16)>,
    /// What next? By item, in the plan's order.
    pub items: Vec<Suggestion>,
    /// Notes that the patient added.
    pub notes: Vec<String>,
    /// How many entries the patient has put right, on all devices. Everything else is as corrected.
    pub corrected: u32,
}

/// An alarm on the review.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ReviewAlarm {
    /// Its name, for the card that clears it.
    pub entry: EntryRef,
    /// Day number and date.
    pub day: DayNumber,
    /// The date.
    pub date: NaiveDate,
    /// What was wrong.
    pub trouble: Trouble,
    /// During which item.
    pub item: Option<ItemId>,
    /// Whether the newest revision clears it.
    pub cleared: bool,
    /// Whether the patient says that it was raised by mistake. It pauses all the same.
    pub said_mistaken: bool,
}

/// One day as a string with its knots.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DayString {
    /// Day number.
    pub day: DayNumber,
    /// The date.
    pub date: NaiveDate,
    /// Whether any device has an entry: "no record" is told apart from "not done".
    pub seen: bool,
    /// The knots by minute of the day.
    pub knots: Vec<Knot>,
}

/// One knot of a day's string.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Knot {
    /// The item.
    pub item: ItemId,
    /// Place within the item's day.
    pub number: u8,
    /// Minute of the wall clock, from midnight of the day.
    pub minute: u16,
    /// How it went; the best of all devices.
    pub mark: Mark,
}

/// Pain of one complaint.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PainSeries {
    /// The complaint.
    pub complaint: ComplaintId,
    /// The visits' own ratings, shown beside the series: `(day of issue, score)`, oldest first.
    pub at_visits: Vec<(DayNumber, Score)>,
    /// `(day, score)`: the day's own rating where given, else the highest of the day.
    pub points: Vec<(DayNumber, Score)>,
    /// Whether it changed.
    pub change: PainChange,
}

/// Single-leg stance of one leg under one set of conditions.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceSeries {
    /// The exercise.
    pub exercise: ExerciseId,
    /// Its rung.
    pub rung: Option<RungId>,
    /// The leg stood on.
    pub leg: BodySide,
    /// What was stood on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// Where the phone was.
    pub set_up: SetUp,
    /// The cap in seconds.
    pub target_s: u16,
    /// Days, oldest first.
    pub days: Vec<StanceDay>,
    /// Whether it changed.
    pub change: StanceChange,
    /// Sway, where a sensor took part.
    pub sway: Option<SwaySeries>,
    /// The last day beside the norms.
    pub norms: AgainstNorms,
}

/// The involved leg against the other under the same conditions.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Sides {
    /// The conditions, with the involved leg.
    pub conditions: Conditions,
    /// The comparison.
    pub sides: SideToSide,
}

/// A device whose record ends before the last day that is covered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct LaggingDevice {
    /// The device's log.
    pub log: LogId,
    /// The last day that it covers.
    pub until: NaiveDate,
}

/// Ratings of one named activity.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ActivitySeries {
    /// The activity.
    pub activity: ActivityId,
    /// The visits' own ratings: `(day of issue, score)`, oldest first.
    pub at_visits: Vec<(DayNumber, Score)>,
    /// `(day, score)`.
    pub points: Vec<(DayNumber, Score)>,
    /// Whether it changed.
    pub change: ActivityChange,
}

impl StanceSeries {
    /// What stays the same within the series.
    pub fn conditions(&self) -> Conditions {
        Conditions {
            exercise: self.exercise.clone(),
            rung: self.rung.clone(),
            surface: self.surface,
            eyes: self.eyes,
            set_up: self.set_up,
            target_s: self.target_s,
            leg: self.leg,
        }
    }
}
