//! What a patient takes to the visit: the log of a period, reduced to what the clinician needs.
//!
//! A summary holds no dates, names or device names; its days are numbered from the plan's start. The only times of day in it
//! are those of the schedule, which both sides know, and the hour in which a run began. How long after the reminder runs
//! began is given as quartiles of each week; in a week with three runs or fewer these are the delays themselves.

mod from_paper;
mod mornings;
mod part;
mod reduce;
pub mod union;
mod wrong_clock;

use crate::alarm::{Circumstance, Trouble};
use crate::catalogue::{Eyes, RungId, Surface};
use crate::history::Mark;
use crate::id::{ActivityId, AlarmId, ComplaintId, ItemId, LogId, PlanId, RunId};
use crate::plan::Schedule;
use crate::run::{RunEnd, SetUp, Share, Trial};
use crate::score::Score;
use crate::sway::{ReportedFigures, SourceKind};
use crate::time::DayNumber;
use std::collections::BTreeSet;
use strum::VariantArray;

pub use from_paper::{MAX_SESSIONS, PaperContext, PaperDay, due_on, from_paper, paper_days};
pub(crate) use mornings::morning_points;
pub use part::SummaryPart;
pub use reduce::{Period, Sealing, reduce};
pub use wrong_clock::{ByWrongClock, as_known_on};

/// Length of the longest note that a person may add, in characters.
pub const MAX_NOTE: usize = 280;
/// Largest number of days that one summary covers.
pub const MAX_DAYS: u16 = 400;

/// The log of one installation over a period, reduced to what the clinician needs.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Summary {
    /// The plan that the summary is about.
    pub plan: PlanId,
    /// The installation that the log belongs to.
    pub log: LogId,
    /// The ids that the log had before it was copied, moved or put back, the oldest first.
    pub former: Vec<FormerPart>,
    /// The summary's number within its log, rising from 1. If two summaries differ about the same day or run, the one with
    /// the higher number counts.
    pub counter: u32,
    /// First day covered, counted from the plan's start (day 0).
    pub from: DayNumber,
    /// Last day covered.
    pub until: DayNumber,
    /// All cards taken from the plan's start until the last day covered.
    pub taken: Vec<TakenOn>,
    /// Days within the period on which any entry was made.
    pub seen: BTreeSet<DayNumber>,
    /// How the slots went, by item and day.
    pub days: Vec<ItemDay>,
    /// The runs.
    pub runs: Vec<RunOn>,
    /// Ratings of the pain in the morning.
    pub mornings: Vec<MorningOn>,
    /// Ratings of the pain while doing an item.
    pub during: Vec<DuringOn>,
    /// Answers to "settled by this morning?", which logs of version 1 have.
    pub settled: Vec<SettledOn>,
    /// When the person said to be well again.
    pub well_again: Vec<WellAgainOn>,
    /// Ratings of named activities.
    pub rated: Vec<RatedOn>,
    /// The alarms.
    pub alarms: Vec<AlarmOn>,
    /// How long after the reminder runs began, by week.
    pub delays: Vec<WeekDelay>,
    /// The note that the person chose to add, at most [`MAX_NOTE`] characters.
    pub note: Option<String>,
    /// What was corrected in the log until the summary was made. All other fields hold the corrected values.
    pub corrections: Corrections,
    /// What was recorded while the device's clock was wrong.
    pub wrong_clock: ByWrongClock,
}

/// The part of a log that was made under an id that it had before it was copied, moved or put back. What happened in it is known by that
/// id, so that it counts once, whichever summary it comes in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct FormerPart {
    /// The id.
    pub log: LogId,
    /// The number of the last entry that was made under it.
    pub entries: u32,
    /// The number of the last run that was begun under it; 0 if there was none.
    pub runs: u32,
    /// The day on which the first entry was made after it.
    pub until: DayNumber,
}

impl Summary {
    /// The id under which entry `n` was made.
    pub fn log_of_entry(&self, n: u32) -> LogId {
        self.former.iter().find(|part| n <= part.entries).map_or(self.log, |part| part.log)
    }

    /// The id under which a run was begun.
    pub fn log_of_run(&self, run: RunId) -> LogId {
        self.former.iter().find(|part| run.0 <= part.runs).map_or(self.log, |part| part.log)
    }

    /// The first id of the log, which stays the same however often it is moved.
    pub fn first_log(&self) -> LogId {
        self.former.first().map_or(self.log, |part| part.log)
    }
}

/// What the patient corrected; summaries sent earlier may still contain the mistakes.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Corrections {
    /// Runs that did not happen.
    pub runs: BTreeSet<RunId>,
    /// Entries of answers that were withdrawn.
    pub gone: BTreeSet<u32>,
    /// Entries of answers that were changed.
    pub changed: BTreeSet<u32>,
    /// Number of skipped slots and days off that were corrected.
    pub days: u16,
    /// Entries of alarms that the person says were raised by mistake. They remain alarms.
    pub alarms: BTreeSet<u32>,
}

impl Corrections {
    /// Number of entries that were corrected.
    pub fn count(&self) -> u32 {
        let lists = self.runs.len() + self.gone.len() + self.changed.len() + self.alarms.len();
        u32::try_from(lists).unwrap_or(u32::MAX).saturating_add(self.days.into())
    }
}

/// A card that the patient's copy took.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TakenOn {
    /// The day on which it was taken.
    pub day: DayNumber,
    /// The card's revision, from 1.
    pub revision: u16,
    /// The schedules that the patient agreed to, where they differ from those of the card.
    pub agreed: Vec<(ItemId, Schedule)>,
}

/// How one item's slots of one day went.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ItemDay {
    /// The day.
    pub day: DayNumber,
    /// The item.
    pub item: ItemId,
    /// The revision of the card in force.
    pub revision: u16,
    /// The slots as (number within the day from 0, how it went), ascending. Slots that were due before the card was taken are
    /// left out.
    pub slots: Vec<(u8, Mark)>,
}

/// One run of an item.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct RunOn {
    /// Its number within the log.
    pub run: RunId,
    /// The day that the run counts for.
    pub day: DayNumber,
    /// The item.
    pub item: ItemId,
    /// The rung.
    pub rung: Option<RungId>,
    /// The number within the day of the slot that the run was done for, from 0; `None` for an extra run.
    pub slot: Option<u8>,
    /// The hour of the wall clock in which it began, 0 to 23.
    pub hour: u8,
    /// Whether it was timed while it was done; otherwise it was written in afterwards.
    pub live: bool,
    /// When it was done, compared with when it was due.
    pub timing: RunTiming,
    /// How it ended.
    pub end: RunEnd,
    /// How much of the dose was done: milliseconds of holding, repetitions or trials.
    pub dose: Share,
    /// How many whole holds, repetitions or trials were done.
    pub parts: Share,
    /// The trials, if it was a run of a balance exercise.
    pub stance: Option<StanceOn>,
    /// The result, if it was a test by repetitions.
    pub tally: Option<TallyOn>,
}

/// The result of a test by repetitions in a set time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TallyOn {
    /// The time set, in seconds.
    pub seconds: u16,
    /// The number of movements.
    pub count: u8,
    /// Whether it was done to its end; otherwise it is no result.
    pub whole: bool,
}

/// When a run was done, compared with the slot that it counts for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum RunTiming {
    /// Before it was due, or up to sixty minutes after it; also an extra run.
    InTime,
    /// More than sixty minutes after it was due.
    Late,
    /// On another day.
    Moved,
}

/// The trials of a balance run, with the conditions under which they were done.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceOn {
    /// Where the phone was.
    pub set_up: SetUp,
    /// The surface under the foot.
    pub surface: Surface,
    /// Whether the eyes were open or closed.
    pub eyes: Eyes,
    /// The time at which a trial ends as complete, in seconds.
    pub target_s: u16,
    /// The trials.
    pub trials: Vec<Trial>,
    /// What the motion sensor measured, in the order of the trials; empty if no sensor was used.
    pub sway: Vec<SwayOn>,
}

/// What the motion sensor measured in one trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SwayOn {
    /// The trial's place in the run, from 0.
    pub trial: u8,
    /// Where the motion data came from.
    pub kind: SourceKind,
    /// Number of touch-downs that are certain or that the person confirmed.
    pub touch_downs: u8,
    /// The sway that was measured; `None` if there is no valid measurement.
    pub figures: Option<ReportedFigures>,
    /// Whether the sensor's record has a gap in which the foot may have touched down.
    pub gap: bool,
    /// Whether the time is still to be confirmed: the sensor proposed one, and the person has not answered.
    pub to_confirm: bool,
}

/// A rating of a complaint's pain in the morning.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct MorningOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day.
    pub day: DayNumber,
    /// The complaint that was rated.
    pub complaint: ComplaintId,
    /// 0 (none) to 10.
    pub score: Score,
}

/// A rating of the pain while doing an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DuringOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day of the session.
    pub day: DayNumber,
    /// The item.
    pub item: ItemId,
    /// 0 (none) to 10.
    pub score: Score,
}

/// "I am well again."
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct WellAgainOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day.
    pub day: DayNumber,
}

/// An answer to "settled by this morning?".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SettledOn {
    /// The entry's number within the log.
    pub n: u32,
    /// The day on which it was answered.
    pub day: DayNumber,
    /// The complaint that the question was about.
    pub complaint: ComplaintId,
    /// Whether the pain had settled.
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
    /// The activity that was rated.
    pub activity: ActivityId,
    /// 0 (cannot do it) to 10 (as before).
    pub score: Score,
}

/// An alarm.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct AlarmOn {
    /// The entry's number within the log.
    pub n: u32,
    /// Its name, by which a card clears it.
    pub id: AlarmId,
    /// The day.
    pub day: DayNumber,
    /// What was wrong.
    pub trouble: Trouble,
    /// The item during which it happened, if any.
    pub item: Option<ItemId>,
    /// What was answered about it.
    pub circumstances: BTreeSet<Circumstance>,
}

/// How long after the reminder runs began, in one week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct WeekDelay {
    /// The week, counted in whole weeks from the plan's start, from 0.
    pub week: u16,
    /// Number of runs that followed a reminder.
    pub runs: u16,
    /// Lower quartile of the delay, in seconds.
    pub lower_s: u16,
    /// Median of the delay, in seconds.
    pub median_s: u16,
    /// Upper quartile of the delay, in seconds.
    pub upper_s: u16,
}
