//! Was the plan followed: when, how completely, and since when not?
//!
//! One rule per file. The figures follow the usual parameters of adherence, frequency and dose (Bailey 2020, Br J Sports Med
//! 54:326-331, 10.1136/bjsports-2017-098742): slots done out of the slots asked for, dose done out of the dose asked for, days kept
//! out of the days asked for. Slots skipped by a clock change or paused by an alarm were never asked for. Days without any record
//! are separate from days on which nothing was done; entries made afterwards are separate from timed ones (in a paper diary 90 %
//! were claimed and 11 % true: Stone 2002, BMJ 324:1193). No figure is corrected for overstatement.

mod broke_off;
mod counts;
mod days;
mod delay;
mod dose;
mod gap;
mod lately;
mod ratio;
mod rhythm;
#[cfg(test)]
mod samples;
mod stops;

use crate::history::Mark;
use crate::id::ItemId;
use crate::run::Share;
use crate::summary::RunTiming;
use crate::time::DayNumber;

pub use broke_off::{BreakOff, MIN_DAYS, MIN_DROP, MIN_GAIN, broke_off};
pub use counts::{SlotCounts, count};
pub use days::{DayCounts, day_counts};
pub use delay::unite_delays;
pub use dose::{DoseKept, DoseUnit, dose_kept, target};
pub use gap::{Gap, last_done, longest_gap};
pub use lately::{LATELY_DAYS, Lately, lately};
pub use ratio::{AS_AGREED_PERCENT, KofN, Level, PARTLY_PERCENT, Shares};
pub use rhythm::{Rhythm, rhythm};
pub use stops::{DoneAsNeeded, Extra, Stops, done_as_needed, extra, stops};

/// One slot that was asked for, combined over all devices.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SlotOn {
    /// Day number, counted from the plan's start.
    pub day: DayNumber,
    /// Day of the week, 0 for Monday.
    pub weekday: u8,
    /// Whether any device has an entry of that day.
    pub seen: bool,
    /// The item.
    pub item: ItemId,
    /// The plan's revision that asked for it.
    pub revision: u16,
    /// Its number within the item's day, from 0.
    pub number: u8,
    /// When it was due: the wall clock's minute, from midnight of its day; 1440 or more for the next day.
    pub minute: u16,
    /// Its outcome: the best of all devices.
    pub mark: Mark,
    /// Whether it counts as done only because of an entry made afterwards.
    pub written_in: bool,
    /// The dose of all runs for this slot, capped at what was asked for, in the units of [`Share`].
    pub dose: Share,
    /// The amount that those runs did beyond it, in the same units.
    pub over: u32,
    /// The unit of `dose` and `over`.
    pub unit: DoseUnit,
    /// When it was done, compared with when it was due.
    pub timing: RunTiming,
}

impl SlotOn {
    /// The share of its dose that was done, in thousandths.
    pub fn share_thousandths(&self) -> u32 {
        match self.mark {
            Mark::Done => 1000,
            Mark::Partly(_) if self.dose.of > 0 => thousandths(self.dose),
            Mark::Partly(share) if share.of > 0 => thousandths(share),
            _ => 0,
        }
    }

    /// Whether it was owed and is over.
    pub fn is_owed(&self) -> bool {
        matches!(self.mark, Mark::Done | Mark::Partly(_) | Mark::Skipped(_) | Mark::NotDone)
    }
}

/// A share of at most the whole in thousandths, of amounts as large as a summary can name.
fn thousandths(share: Share) -> u32 {
    (u64::from(share.done.min(share.of)) * 1000 / u64::from(share.of)) as u32
}

/// How one item was followed, through all revisions of the plan.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ItemAdherence {
    /// The item.
    pub item: ItemId,
    /// Whether the current revision still has it.
    pub in_force: bool,
    /// All slots by their outcome.
    pub slots: SlotCounts,
    /// Slots done in full out of the slots owed. `None` if nothing was owed. [`SlotCounts::partly`] counts those done in part.
    pub kept: Option<KofN>,
    /// The shares of all owed slots, summed.
    pub shares: Option<Shares>,
    /// Like [`ItemAdherence::kept`], but `k` counts only slots that were timed by the program, without entries made afterwards.
    pub kept_timed: Option<KofN>,
    /// Like [`ItemAdherence::kept`], with slots on days off counted as owed.
    #[cfg_attr(feature = "serde", serde(rename = "kept_with_excused"))]
    pub kept_with_days_off: Option<KofN>,
    /// The last fourteen days, beside the whole.
    pub last14: Option<Lately>,
    /// Slots that were done more than sixty minutes after they were due.
    pub late: u32,
    /// Slots that were done on another day.
    pub moved: u32,
    /// Dose done out of the dose asked for, over the slots of [`ItemAdherence::kept`].
    pub dose: Option<DoseKept>,
    /// Days kept out of the days asked for, and the days that are counted separately.
    pub days: DayCounts,
    /// Runs beyond what was asked for.
    pub extra: Extra,
    /// Runs while it was to be done whenever the patient needed it; `None` if it never was.
    pub as_needed: Option<DoneAsNeeded>,
    /// Slots done by weekday and by hour of the day.
    pub rhythm: Rhythm,
    /// The longest period in which nothing was done.
    pub longest_gap: Option<Gap>,
    /// Since when the item is no longer done, if that is the case.
    pub broke_off: Option<BreakOff>,
    /// The last day on which anything was done.
    pub last_done: Option<DayNumber>,
    /// Where in a run the person stopped.
    pub stops: Stops,
}
