//! The review of one patient: the clinician's questions, answered from the summaries of all the patient's devices.
//!
//! What alarms suspend, which ratings count and what is proposed is worked out over all devices together. The person's own "then and now"
//! ([`then_and_now()`]) is made of the same review, from one device.

mod alarms;
mod build;
mod by_week;
mod counts;
mod in_short;
mod norms;
mod ratings;
#[cfg(test)]
pub(crate) mod samples;
mod stance;
mod standing;
mod strings;
#[cfg(test)]
mod tests;
mod then_and_now;
mod weeks;

use crate::adherence::ItemAdherence;
use crate::alarm::{Circumstance, ClearedAlarm, Trouble};
use crate::catalogue::{ExerciseId, Eyes, RungId, Surface};
use crate::change::{ActivitiesTogether, ActivityChange, Conditions, SideToSide, StanceChange, SwaySeries};
use crate::history::Mark;
use crate::id::{ActivityId, AlarmId, ComplaintId, ItemId, LogId};
use crate::log::Barrier;
use crate::plan::{BodySide, StanceBaseline};
use crate::run::SetUp;
use crate::score::Score;
use crate::suggest::Suggestion;
use crate::summary::WeekDelay;
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::collections::BTreeSet;

pub use crate::change::{CountDay, DuringSeries, PainSeries, StanceDay};
use crate::statistics::Verdict;
pub use build::{build, build_against};
pub use by_week::{ItemWeek, WeekSlots, item_weeks};
pub use in_short::{DoneInShort, InShort, Progress, in_short};
pub use norms::AgainstNorms;
#[cfg(test)]
pub(crate) use norms::not_compared as norms_not_compared;
pub use standing::{Standing, standing};
pub use then_and_now::{Compared, ThenAndNow, then_and_now};

/// The clinician's review of one patient. Fields that answer one of the clinician's questions begin with it.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Review {
    /// The plan's first day.
    pub start: NaiveDate,
    /// The first and the last day with a record; `None` if no day has one.
    pub covered: Option<(NaiveDate, NaiveDate)>,
    /// The last day that any summary covers.
    pub until: DayNumber,
    /// Number of devices that have sent a summary.
    pub logs: u16,
    /// The devices whose summaries end before the last day covered; what they recorded after that is missing.
    pub behind: Vec<LaggingDevice>,
    /// When a device's log began to go on under another id, because it had been copied, moved or put back; oldest first.
    pub renewed: Vec<NaiveDate>,
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
    /// Is it working? Results of tests by repetitions, by exercise, rung and time.
    pub counts: Vec<CountSeries>,
    /// The named activities and their ratings.
    pub activities: Vec<ActivitySeries>,
    /// All named activities taken together; `None` unless two or more were rated both at the beginning and at the end.
    pub activities_together: Option<ActivitiesTogether>,
    /// What got in the way? Reasons for skipping with the number of times each was given: first those that need attention,
    /// then the others, the most frequent first.
    pub barriers: Vec<(Barrier, u16)>,
    /// Pain while doing each item, in the plan's order.
    pub during: Vec<DuringSeries>,
    /// What next? By item, in the plan's order.
    pub items: Vec<Suggestion>,
    /// The notes that the patient added to summaries.
    pub notes: Vec<String>,
    /// Number of entries that the patient corrected, on all devices. All other fields hold the corrected values.
    pub corrected: u32,
    /// What was recorded while a device's clock was wrong. No other field holds any of it, except the alarms.
    pub wrong_clock: WrongClockNotes,
}

/// What was recorded while a device's clock was wrong.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct WrongClockNotes {
    /// What counts for no day: runs first, then ratings.
    pub entries: Vec<WrongClockEntry>,
    /// Days by which a device's clock was ahead of the clinic's when it made its newest summary; of several devices the most. `None` if
    /// none was.
    pub ahead_days: Option<u16>,
}

/// Something that was recorded while a device's clock was wrong, so that its day is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum WrongClockEntry {
    /// A run of an item.
    Run {
        /// The item.
        item: ItemId,
    },
    /// A rating of a complaint's pain in the morning.
    Morning {
        /// The complaint.
        complaint: ComplaintId,
        /// 0 (none) to 10.
        score: Score,
    },
    /// A rating of the pain while doing an item.
    During {
        /// The item.
        item: ItemId,
        /// 0 (none) to 10.
        score: Score,
    },
    /// A rating of a named activity.
    Rated {
        /// The activity.
        activity: ActivityId,
        /// 0 (cannot do it) to 10 (as before).
        score: Score,
    },
}

/// An alarm, as the review shows it.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ReviewAlarm {
    /// Its name, by which a card clears it.
    pub id: AlarmId,
    /// The number of the day on which it was raised, as the device's clock showed it.
    pub day: DayNumber,
    /// The date of that day.
    pub date: NaiveDate,
    /// Whether the device's clock was wrong then, so that the day is not known. It suspends all the same.
    pub wrong_clock: bool,
    /// What was wrong.
    pub trouble: Trouble,
    /// The item during which it happened, if any.
    pub item: Option<ItemId>,
    /// What was answered about it.
    pub circumstances: BTreeSet<Circumstance>,
    /// The items that it suspends, in the plan's order; empty once a card has cleared it.
    pub suspended: Vec<ItemId>,
    /// Of a rating above the limit: the rating and the limit.
    pub above: Option<(Score, Score)>,
    /// The revision in force on that day, if it is known.
    pub revision: Option<u16>,
    /// Whether the newest revision clears it.
    pub cleared: bool,
    /// Whether the patient says that it was raised by mistake. Even then it suspends exercises until a card clears it.
    pub said_mistaken: bool,
}

impl ReviewAlarm {
    /// What a card lists to clear it.
    pub fn clearing(&self) -> ClearedAlarm {
        ClearedAlarm { id: self.id, seen: Some((self.trouble, self.day)) }
    }
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

/// Stance times of one leg under one set of conditions.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceSeries {
    /// The exercise that was done.
    pub exercise: ExerciseId,
    /// The rung of the exercise.
    pub rung: Option<RungId>,
    /// The leg that the person stood on; `None` for an exercise on both feet.
    pub leg: Option<BodySide>,
    /// The surface under the foot.
    pub surface: Surface,
    /// Whether the eyes were open or closed.
    pub eyes: Eyes,
    /// Where the phone was.
    pub set_up: SetUp,
    /// The time at which a trial ends as complete, in seconds; the highest one of the series.
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

/// Results of a test by repetitions under the same conditions.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CountSeries {
    /// The exercise that was done.
    pub exercise: ExerciseId,
    /// The rung of the exercise.
    pub rung: Option<RungId>,
    /// The time in which movements were counted, in seconds.
    pub seconds: u16,
    /// The result of each day, oldest first; never empty.
    pub days: Vec<CountDay>,
    /// The highest result.
    pub best: u8,
    /// The error with which people who test themselves measure, in tenths of a movement; `None` if none is known.
    pub error_tenths: Option<u16>,
    /// Whether the result has changed; `None` if no error is known.
    pub change: Option<Verdict>,
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
            leg: self.leg,
        }
    }
}
