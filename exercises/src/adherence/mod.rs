//! Did they do it: when, how fully, and since when not?
//!
//! One rule a file. Quantities after the parameters that adherence is usually told by, frequency and dose (Bailey 2020,
//! Br J Sports Med 54:326-331, 10.1136/bjsports-2017-098742): slots done of slots asked for, dose done of dose asked for,
//! days kept of days asked for. The clocks' missing hours and what an alarm paused were never asked for. Days without any
//! record stand apart from days on which nothing was done; entries written in afterwards stand apart from timed ones (in a
//! paper diary 90 % were claimed and 11 % true: Stone 2002, BMJ 324:1193). No figure is corrected for overstatement.

mod broke_off;
mod counts;
mod days;
mod delay;
mod dose;
mod gap;
mod ratio;
mod rhythm;
#[cfg(test)]
mod samples;
mod stops;

use crate::history::Mark;
use crate::id::ItemId;
use crate::run::Share;
use crate::time::DayNumber;

pub use broke_off::{BreakOff, MIN_DAYS, MIN_DROP, MIN_GAIN, broke_off};
pub use counts::{SlotCounts, count};
pub(crate) use days::by_day;
pub use days::{DayCounts, day_counts};
pub use delay::unite_delays;
pub use dose::{DoseKept, DoseUnit, dose_kept, target};
pub use gap::{Gap, last_done, longest_gap};
pub use ratio::{AS_AGREED_PERCENT, KofN, Level, PARTLY_PERCENT};
pub use rhythm::{Rhythm, rhythm};
pub use stops::{Extra, Stops, extra, stops};

/// One slot that was asked for, as all devices together know it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SlotOn {
    /// Day number, from the plan's start.
    pub day: DayNumber,
    /// Day of the week, 0 for Monday.
    pub weekday: u8,
    /// Whether any device has an entry of that day.
    pub seen: bool,
    /// The item.
    pub item: ItemId,
    /// The revision that asked for it.
    pub revision: u16,
    /// Its place in the item's day, from 0.
    pub number: u8,
    /// The wall clock's minute at which it was due, from midnight of its day; 1440 and more on the next day.
    pub minute: u16,
    /// How it went: the best of all devices.
    pub mark: Mark,
    /// Whether what was done rests on an entry written in afterwards alone.
    pub written_in: bool,
    /// The dose of all runs that filled it, capped at what was asked for, in the units of [`Share`].
    pub dose: Share,
    /// What those runs did beyond it.
    pub over: u32,
    /// The unit of `dose` and `over`.
    pub unit: DoseUnit,
}

/// How one item was done, through all revisions of the plan.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ItemAdherence {
    /// The item.
    pub item: ItemId,
    /// Whether the revision in force still has it.
    pub in_force: bool,
    /// Every slot by how it went.
    pub slots: SlotCounts,
    /// Slots done of slots asked for, on days with a record; days off left out. `None`: nothing was asked for.
    pub kept: Option<KofN>,
    /// Of [`ItemAdherence::kept`], those that were timed while they were done: entries written in afterwards left out of `k`.
    pub kept_timed: Option<KofN>,
    /// The same as [`ItemAdherence::kept`], with slots on days off counted as not done.
    #[cfg_attr(feature = "serde", serde(rename = "kept_with_excused"))]
    pub kept_with_days_off: Option<KofN>,
    /// The same as [`ItemAdherence::kept`], with the slots of days without any record counted as not done.
    pub kept_with_unrecorded: Option<KofN>,
    /// Dose done of dose asked for, over the slots of [`ItemAdherence::kept`].
    pub dose: Option<DoseKept>,
    /// Days kept of days asked for, and the days apart.
    pub days: DayCounts,
    /// Runs beyond what was asked for.
    pub extra: Extra,
    /// By weekday and by hour of the day.
    pub rhythm: Rhythm,
    /// The longest stretch of days with nothing done.
    pub longest_gap: Option<Gap>,
    /// Since when it broke off, if it did.
    pub broke_off: Option<BreakOff>,
    /// The last day on which anything was done.
    pub last_done: Option<DayNumber>,
    /// Where in a run it stopped.
    pub stops: Stops,
}
