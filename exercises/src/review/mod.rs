//! The clinician's review of one patient: six questions, answered from the summaries of all the patient's devices.

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

/// The clinician's review of one patient. Fields that answer one of the six questions begin with it.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Review {
    /// The plan's first day.
    pub start: NaiveDate,
    /// The first and the last day with a record; `None` if no day has one.
    pub covered: Option<(NaiveDate, NaiveDate)>,
    /// Number of devices that have sent a summary.
    pub logs: u16,
    /// The devices whose summaries end before the last day covered; what they recorded after that is missing.
    pub behind: Vec<LaggingDevice>,
    /// The revision of the card in force.
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
    /// Is it working? By exercise, rung, leg, surface, eyes, place of the phone and target.
    pub balance: Vec<StanceSeries>,
    /// The involved leg compared with the other, where both were tested under the same conditions.
    pub sides: Vec<Sides>,
    /// Stance times measured at visits, with the number of the day, oldest first.
    pub baselines: Vec<(DayNumber, StanceBaseline)>,
    /// The named activities and their ratings.
    pub activities: Vec<ActivitySeries>,
    /// All named activities taken together; `None` unless two or more were rated both at the beginning and at the end.
    pub activities_together: Option<ActivitiesTogether>,
    /// What got in the way? Reasons for skipping with the number of times each was given: first those that need attention,
    /// then the others, the most frequent first.
    pub barriers: Vec<(Barrier, u16)>,
    /// What next? By item, in the plan's order.
    pub items: Vec<Suggestion>,
    /// The notes that the patient added to summaries.
    pub notes: Vec<String>,
    /// Number of entries that the patient corrected, on all devices. All other fields hold the corrected values.
    pub corrected: u32,
}

/// An alarm, as the review shows it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ReviewAlarm {
    /// The alarm's entry, to which the card that clears it refers.
    pub entry: EntryRef,
    /// The number of the day on which it was raised.
    pub day: DayNumber,
    /// The date of that day.
    pub date: NaiveDate,
    /// What was wrong.
    pub trouble: Trouble,
    /// The item during which it happened, if any.
    pub item: Option<ItemId>,
    /// Whether the newest revision clears it.
    pub cleared: bool,
    /// Whether the patient says that it was raised by mistake. Even then it pauses exercises until a card clears it.
    pub said_mistaken: bool,
}

/// One day as a string with a knot for each slot.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DayString {
    /// The number of the day.
    pub day: DayNumber,
    /// The date.
    pub date: NaiveDate,
    /// Whether an entry was made on any device that day. It distinguishes "no record" from "not done".
    pub seen: bool,
    /// The knots, in order of time.
    pub knots: Vec<Knot>,
}

/// One knot of a day's string: one slot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Knot {
    /// The item that was due.
    pub item: ItemId,
    /// The slot's number within the item's day, from 0.
    pub number: u8,
    /// Minutes of the wall clock from midnight of the day; 1440 and more are on the next day.
    pub minute: u16,
    /// How the slot went; of several devices the best mark.
    pub mark: Mark,
}

/// Pain of one complaint.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PainSeries {
    /// The complaint that was rated.
    pub complaint: ComplaintId,
    /// The ratings at visits, shown beside the series, as (day of issue, score), oldest first.
    pub at_visits: Vec<(DayNumber, Score)>,
    /// One rating for each day, as (day, score), oldest first: the patient's rating of the day, or the highest of that day's
    /// ratings after runs.
    pub points: Vec<(DayNumber, Score)>,
    /// Whether the pain has changed.
    pub change: PainChange,
}

/// Stance times of one leg under one set of conditions.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceSeries {
    /// The exercise that was done.
    pub exercise: ExerciseId,
    /// The rung of the exercise.
    pub rung: Option<RungId>,
    /// The leg that the person stood on.
    pub leg: BodySide,
    /// The surface under the foot.
    pub surface: Surface,
    /// Whether the eyes were open or closed.
    pub eyes: Eyes,
    /// Where the phone was.
    pub set_up: SetUp,
    /// The time at which a trial ends as complete, in seconds.
    pub target_s: u16,
    /// The results of each day, oldest first.
    pub days: Vec<StanceDay>,
    /// Whether the stance time has changed.
    pub change: StanceChange,
    /// Sway, if a motion sensor was used.
    pub sway: Option<SwaySeries>,
    /// The last day's result compared with the norms.
    pub norms: AgainstNorms,
}

/// The involved leg compared with the other under the same conditions.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Sides {
    /// The conditions; their leg is the involved one.
    pub conditions: Conditions,
    /// The result of the comparison.
    pub sides: SideToSide,
}

/// A device whose summaries end before the last day covered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct LaggingDevice {
    /// The device's log.
    pub log: LogId,
    /// The last day that its summaries cover.
    pub until: NaiveDate,
}

/// The ratings of one named activity.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ActivitySeries {
    /// The activity that was rated.
    pub activity: ActivityId,
    /// The ratings at visits, as (day of issue, score), oldest first.
    pub at_visits: Vec<(DayNumber, Score)>,
    /// The patient's ratings, as (day, score), one for each day, oldest first.
    pub points: Vec<(DayNumber, Score)>,
    /// Whether the activity has changed.
    pub change: ActivityChange,
}

impl StanceSeries {
    /// The conditions, which are the same throughout the series.
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
