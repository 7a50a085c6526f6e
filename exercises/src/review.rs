//! The clinician's page about one patient: six questions, answered from the summaries of all the patient's devices.

pub mod union;

use crate::adherence::ItemAdherence;
use crate::alarm::Trouble;
use crate::catalogue::{Eyes, Surface};
use crate::change::{ActivityChange, PainChange, StanceChange};
use crate::history::Mark;
use crate::id::{ActivityId, ComplaintId, EntryRef, ItemId};
use crate::log::Barrier;
use crate::plan::Leg;
use crate::run::SetUp;
use crate::suggest::Suggestion;
use chrono::NaiveDate;

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
    /// The revision in force.
    pub revision: u16,
    /// Did anything alarming happen? Newest first.
    pub alarms: Vec<ReviewAlarm>,
    /// Did they do it? By item, in the plan's order.
    pub adherence: Vec<ItemAdherence>,
    /// When, and since when not? Day by day.
    pub days: Vec<DayString>,
    /// Did it hurt? By complaint.
    pub pain: Vec<PainSeries>,
    /// Is it working? By leg, surface, eyes, set-up and cap.
    pub balance: Vec<StanceSeries>,
    /// Named activities.
    pub activities: Vec<ActivitySeries>,
    /// What got in the way? Those that need attention first, then by number.
    pub barriers: Vec<(Barrier, u16)>,
    /// What next? By item, in the plan's order.
    pub items: Vec<Suggestion>,
    /// Notes that the patient added.
    pub notes: Vec<String>,
}

/// An alarm on the review.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ReviewAlarm {
    /// Its name, for the card that clears it.
    pub entry: EntryRef,
    /// Day number and date.
    pub day: u16,
    /// The date.
    pub date: NaiveDate,
    /// What was wrong.
    pub trouble: Trouble,
    /// During which item.
    pub item: Option<ItemId>,
    /// Whether the newest revision clears it.
    pub cleared: bool,
}

/// One day as a string with its knots.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DayString {
    /// Day number.
    pub day: u16,
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
    /// The visit's own rating, shown beside the series.
    pub at_visit: Option<u8>,
    /// `(day, score)`: the day's own rating where given, else the highest of the day.
    pub points: Vec<(u16, u8)>,
    /// Whether it changed.
    pub change: PainChange,
}

/// Single-leg stance of one leg under one set of conditions.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceSeries {
    /// The leg stood on.
    pub leg: Leg,
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
}

/// One day of a stance series.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceDay {
    /// The day.
    pub day: u16,
    /// Trials that were measured.
    pub trials: u16,
    /// The best, in seconds.
    pub best_s: f64,
    /// The median, in seconds.
    pub median_s: f64,
    /// Whether the best reached the cap: it is then a lower bound.
    pub capped: bool,
}

/// Ratings of one named activity.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ActivitySeries {
    /// The activity.
    pub activity: ActivityId,
    /// The visit's own rating.
    pub at_visit: Option<u8>,
    /// `(day, score)`.
    pub points: Vec<(u16, u8)>,
    /// Whether it changed.
    pub change: ActivityChange,
}
