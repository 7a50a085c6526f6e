//! What a patient takes to the visit: a period's log, reduced to what the clinician needs.
//!
//! Days are numbered from the plan's start; there are no dates, names or names of devices in it, and no clock times but those of
//! the schedule that both sides know and the hour in which a run began. The delay after the reminder goes as weekly quartiles:
//! of a week with three runs or fewer these are the delays themselves.

mod pain;
mod reduce;
pub mod union;

use crate::alarm::Trouble;
use crate::catalogue::{Eyes, RungId, Surface};
use crate::history::Mark;
use crate::id::{ActivityId, ComplaintId, ItemId, LogId, PlanId, RunId};
use crate::plan::Schedule;
use crate::run::{RunEnd, SetUp, Share, Trial};
use crate::score::Score;
use crate::sway::{ReportedFigures, SourceKind};
use crate::time::DayNumber;
use std::collections::BTreeSet;

pub(crate) use pain::pain_points;
pub use reduce::{Period, Sealing, reduce};

/// Longest note that a person may add, in characters.
pub const MAX_NOTE: usize = 280;
/// Most days that one summary covers.
pub const MAX_DAYS: u16 = 400;

/// A period's log of one installation, reduced.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Summary {
    /// The plan.
    pub plan: PlanId,
    /// The installation.
    pub log: LogId,
    /// Grows with each summary of one log; of two that say different things about the same day or run, the higher counts.
    pub counter: u32,
    /// First day covered, counted from the plan's start (day 0).
    pub from: DayNumber,
    /// Last day covered.
    pub until: DayNumber,
    /// Cards taken, all since the plan's start.
    pub taken: Vec<TakenOn>,
    /// Days within the period with any entry.
    pub seen: BTreeSet<DayNumber>,
    /// Slots by item and day.
    pub days: Vec<ItemDay>,
    /// Runs.
    pub runs: Vec<RunOn>,
    /// Pain ratings.
    pub pain: Vec<PainOn>,
    /// Answers about the morning after.
    pub settled: Vec<SettledOn>,
    /// Ratings of named activities.
    pub rated: Vec<RatedOn>,
    /// Alarms.
    pub alarms: Vec<AlarmOn>,
    /// Delay between reminder and run, by week.
    pub delays: Vec<WeekDelay>,
    /// A note that the person chose to add.
    pub note: Option<String>,
    /// What was corrected in the log until the sealing. All the rest is as corrected.
    pub corrections: Corrections,
}

/// What was put right: an older summary may still tell it as it was first said.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Corrections {
    /// Runs that did not happen.
    pub runs: BTreeSet<RunId>,
    /// Entries of answers that were not meant.
    pub gone: BTreeSet<u32>,
    /// Entries of answers that were given another value.
    pub changed: BTreeSet<u32>,
    /// How many skipped slots and days off were corrected.
    pub days: u16,
    /// Entries of alarms that were raised by mistake, as the person says. They stay alarms.
    pub alarms: BTreeSet<u32>,
}

impl Corrections {
    /// How many entries were corrected.
    pub fn count(&self) -> u32 {
        let lists = self.runs.len() + self.gone.len() + self.changed.len() + self.alarms.len();
        u32::try_from(lists).unwrap_or(u32::MAX).saturating_add(self.days.into())
    }
}

/// A card taken.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TakenOn {
    /// The day.
    pub day: DayNumber,
    /// The revision.
    pub revision: u16,
    /// Schedules agreed to that differ from the plan's.
    pub agreed: Vec<(ItemId, Schedule)>,
}

/// One item's slots of one day, by number from 0.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ItemDay {
    /// The day.
    pub day: DayNumber,
    /// The item.
    pub item: ItemId,
    /// The revision in force.
    pub revision: u16,
    /// `(number within the day, how it went)`, ascending. Slots before the taking of the card are not among them.
    pub slots: Vec<(u8, Mark)>,
}

/// One run.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct RunOn {
    /// Its number within the log.
    pub run: RunId,
    /// The day it counts for.
    pub day: DayNumber,
    /// The item.
    pub item: ItemId,
    /// The rung.
    pub rung: Option<RungId>,
    /// The slot it filled; `None` for an extra run.
    pub slot: Option<u8>,
    /// The hour of the wall clock in which it began, 0 to 23.
    pub hour: u8,
    /// Timed live, or written in afterwards.
    pub live: bool,
    /// How it ended.
    pub end: RunEnd,
    /// Of the dose: holds' milliseconds, repetitions, or trials.
    pub dose: Share,
    /// Of whole holds, repetitions, or trials.
    pub parts: Share,
    /// Balance trials.
    pub stance: Option<StanceOn>,
}

/// The trials of a balance run, with what they were done on.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceOn {
    /// Where the phone was.
    pub set_up: SetUp,
    /// What was stood on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// The cap, in seconds.
    pub target_s: u16,
    /// The trials.
    pub trials: Vec<Trial>,
    /// What the sensor said, by place of the trial; empty where none took part.
    pub sway: Vec<SwayOn>,
}

/// What the sensor said of one trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SwayOn {
    /// The trial's place in the run, from 0.
    pub trial: u8,
    /// The kind of source.
    pub kind: SourceKind,
    /// Touch-downs that are definite or were confirmed.
    pub touch_downs: u8,
    /// What was measured.
    pub figures: Option<ReportedFigures>,
    /// Whether contact in a gap of the record cannot be excluded.
    pub gap: bool,
    /// Whether the hold is still to be confirmed: the sensor proposed, and the person did not say yes or no.
    pub to_confirm: bool,
}

/// A pain rating.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PainOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day.
    pub day: DayNumber,
    /// The complaint.
    pub complaint: ComplaintId,
    /// 0 to 10.
    pub score: Score,
    /// After a run of this item; `None` for the day's rating.
    pub after: Option<ItemId>,
}

/// An answer about the morning after.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SettledOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day on which it was answered.
    pub day: DayNumber,
    /// The complaint.
    pub complaint: ComplaintId,
    /// Whether it had settled.
    pub settled: bool,
}

/// A rating of a named activity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct RatedOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day.
    pub day: DayNumber,
    /// The activity.
    pub activity: ActivityId,
    /// 0 to 10.
    pub score: Score,
}

/// An alarm.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct AlarmOn {
    /// The entry's number within the log; with the log's id it names the alarm on the card that clears it.
    pub n: u32,
    /// The day.
    pub day: DayNumber,
    /// What was wrong.
    pub trouble: Trouble,
    /// During which item.
    pub item: Option<ItemId>,
}

/// How long after the reminder runs began, over one week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct WeekDelay {
    /// Weeks since the plan's start.
    pub week: u16,
    /// Runs that followed a reminder.
    pub runs: u16,
    /// Lower quartile, seconds.
    pub lower_s: u16,
    /// Median, seconds.
    pub median_s: u16,
    /// Upper quartile, seconds.
    pub upper_s: u16,
}
