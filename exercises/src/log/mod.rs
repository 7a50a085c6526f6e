//! The append-only list of what happened on one installation.

mod correction;

use crate::alarm::Trouble;
use crate::choice::array;
use crate::id::{ActivityId, ComplaintId, ItemId, LogId, PlanId, RunId};
use crate::plan::Schedule;
use crate::run::Run;
use crate::slots::SlotRef;
use crate::sway::Sensed;
use crate::time::Stamp;
use chrono::NaiveDate;
use strum::VariantArray;

pub use correction::Correction;

/// One entry.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Entry {
    /// Counted from 1 within the log.
    pub n: u32,
    /// The plan it belongs to.
    pub plan: PlanId,
    /// When it was made.
    pub at: Stamp,
    /// What happened.
    pub event: LogEvent,
}

/// A whole log, or a stretch of one.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Log {
    /// The installation.
    pub id: LogId,
    /// In the order in which they were made.
    pub entries: Vec<Entry>,
}

/// What happened.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum LogEvent {
    /// The program was opened: the day has a record, even if nothing was done.
    Opened,
    /// A card was taken.
    Taken {
        /// Its revision.
        revision: u16,
        /// The schedules that the person agreed to, where they differ from the plan's.
        agreed: Vec<(ItemId, Schedule)>,
    },
    /// A run as far as it had got; for the same run the last one counts.
    Run(Run),
    /// A reminder was shown.
    Reminded {
        /// For this slot.
        slot: SlotRef,
    },
    /// The reminder was put off.
    PutOff {
        /// The slot.
        slot: SlotRef,
        /// By so many minutes.
        minutes: u16,
    },
    /// A slot was skipped.
    Skipped {
        /// The slot.
        slot: SlotRef,
        /// Why, in one tap.
        reason: Barrier,
    },
    /// Days on which nothing is asked for.
    DaysOff {
        /// First day.
        from: NaiveDate,
        /// Last day.
        until: NaiveDate,
        /// Why.
        why: DayOffReason,
    },
    /// Pain, 0 to 10.
    Pain {
        /// Of this complaint.
        complaint: ComplaintId,
        /// 0 (none) to 10.
        score: u8,
        /// After this run; `None` for the day's rating or one the person wanted to give.
        after: Option<RunId>,
    },
    /// The answer to "settled by this morning?".
    Settled {
        /// The complaint asked about.
        complaint: ComplaintId,
        /// Whether it had settled.
        settled: bool,
    },
    /// A named activity, 0 (cannot) to 10 (as before).
    Rated {
        /// The activity.
        activity: ActivityId,
        /// 0 to 10.
        score: u8,
    },
    /// Something was wrong.
    Trouble {
        /// What.
        trouble: Trouble,
        /// During which item.
        item: Option<ItemId>,
    },
    /// What the sensor said about one trial of a run; for the same trial the last one counts.
    Sensed {
        /// The run.
        run: RunId,
        /// The trial's place in the run, from 0.
        trial: u16,
        /// The brief form.
        sensed: Sensed,
        /// Everything about it as one line of JSON: [`crate::sway::detail`].
        detail: String,
    },
    /// A summary was sealed.
    Sealed {
        /// Its counter, from 1 within the log.
        counter: u32,
    },
    /// An earlier entry was a mistake: it stays where it is, and this says what it should have been.
    Corrected {
        /// The earlier entry's number.
        entry: u32,
        /// What it should have been.
        to: Correction,
    },
}

/// Why a slot was skipped (own list, after barriers reported by Jack 2010, Man Ther 15:220-8, and Escolar-Reina 2010,
/// BMC Health Serv Res 10:60).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Barrier {
    /// Forgot, or missed the prompt.
    Forgot,
    /// No time, or could not get away.
    NoTime,
    /// Not in a suitable place.
    NoPlace,
    /// It hurt, or it was feared that it would.
    Pain,
    /// Not sure how.
    NotSureHow,
    /// Felt fine, no need.
    FeltFine,
    /// It did not seem to help.
    NoHelp,
    /// Tired or unwell.
    Unwell,
    /// No support or space near.
    NoSupport,
    /// Something else.
    Other,
    /// Would rather not say.
    RatherNotSay,
}

impl Barrier {
    /// All of them, in the order in which they are offered. The place is the code in a summary: append only.
    pub const ALL: [Barrier; Barrier::VARIANTS.len()] = array(Barrier::VARIANTS);

    /// Whether it comes to the clinician's attention first.
    pub fn first(self) -> bool {
        matches!(self, Barrier::Pain | Barrier::Unwell)
    }
}

/// Why a stretch of days is taken off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum DayOffReason {
    /// Ill.
    Ill,
    /// Travelling.
    Travelling,
    /// On holiday.
    Holiday,
    /// The clinician or the person said so.
    Other,
}

impl DayOffReason {
    /// All of them. The place is the code in a summary: append only.
    pub const ALL: [DayOffReason; DayOffReason::VARIANTS.len()] = array(DayOffReason::VARIANTS);
}
