//! The append-only list of what happened on one installation.

mod correction;

use crate::alarm::{Circumstance, Trouble};
use crate::choice::array;
use crate::id::{ActivityId, AlarmId, ComplaintId, ItemId, LogId, PlanId, RunId};
use crate::plan::Schedule;
use crate::run::Run;
use crate::score::Score;
use crate::slots::SlotRef;
use crate::sway::Sensed;
use crate::time::Stamp;
use chrono::NaiveDate;
use std::collections::BTreeSet;
use strum::VariantArray;

pub use correction::Correction;

/// One entry of the log.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Entry {
    /// The entry's number within the log, from 1.
    pub n: u32,
    /// The plan that the entry belongs to.
    pub plan: PlanId,
    /// When the entry was made.
    pub at: Stamp,
    /// What happened.
    pub event: LogEvent,
}

/// A whole log, or a part of one.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Log {
    /// The installation that the log belongs to.
    pub id: LogId,
    /// The ids that the log had before it was copied, moved or put back, the oldest first.
    pub former: Vec<FormerLog>,
    /// The entries in the order in which they were made.
    pub entries: Vec<Entry>,
}

/// An id that a log had before it was copied, moved or put back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct FormerLog {
    /// The id.
    pub id: LogId,
    /// The number of the last entry that was made under it.
    pub entries: u32,
}

impl Log {
    /// The id under which entry `n` was made.
    pub fn id_of(&self, n: u32) -> LogId {
        self.former.iter().find(|former| n <= former.entries).map_or(self.id, |former| former.id)
    }
}

/// What happened, as one entry of the log records it.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum LogEvent {
    /// The program was opened. The day then counts as recorded, even if nothing was done on it.
    Opened,
    /// The patient's copy took a card.
    Taken {
        /// The card's revision, from 1.
        revision: u16,
        /// The schedules that the person agreed to, where they differ from those of the card.
        agreed: Vec<(ItemId, Schedule)>,
    },
    /// A snapshot of a run. A run is recorded several times while it goes on; the last snapshot counts.
    Run(Run),
    /// A reminder was shown.
    Reminded {
        /// The slot that the reminder was for.
        slot: SlotRef,
    },
    /// A reminder was put off.
    PutOff {
        /// The slot that the reminder was for.
        slot: SlotRef,
        /// Minutes by which the reminder is put off.
        minutes: u16,
    },
    /// A slot was skipped.
    Skipped {
        /// The slot that was skipped.
        slot: SlotRef,
        /// The reason that the person chose.
        reason: Barrier,
    },
    /// Days off, on which no session is due.
    DaysOff {
        /// First day off.
        from: NaiveDate,
        /// Last day off, included.
        until: NaiveDate,
        /// The reason.
        why: DayOffReason,
    },
    /// The pain of a complaint this morning.
    Morning {
        /// The complaint that was rated.
        complaint: ComplaintId,
        /// 0 (none) to 10.
        score: Score,
    },
    /// The pain while doing an item.
    During {
        /// The item.
        item: ItemId,
        /// 0 (none) to 10.
        score: Score,
    },
    /// A rating of pain of version 1, in which one number meant both: after a run it is read as the pain while doing its item, else
    /// as this morning's.
    Pain {
        /// The complaint that was rated.
        complaint: ComplaintId,
        /// 0 (none) to 10.
        score: Score,
        /// The run after which pain was asked about; `None` for the day's rating, or a rating that the person gave unasked.
        after: Option<RunId>,
    },
    /// The answer to "settled by this morning?" of version 1. The morning's rating says it now.
    Settled {
        /// The complaint that the question was about.
        complaint: ComplaintId,
        /// Whether the pain had settled.
        settled: bool,
    },
    /// A rating of an activity that the patient had named as hard.
    Rated {
        /// The activity that was rated.
        activity: ActivityId,
        /// 0 (cannot do it) to 10 (as before).
        score: Score,
    },
    /// The person said that something was wrong; this raises an alarm.
    Trouble {
        /// What was wrong.
        trouble: Trouble,
        /// The item during which it happened, or that is meant; `None` if it happened at another time.
        item: Option<ItemId>,
        /// The alarm's name; `None` in version 1, see [`AlarmId::of_entry`].
        id: Option<AlarmId>,
        /// What was answered about it.
        circumstances: BTreeSet<Circumstance>,
    },
    /// "I am well again": ends what a passing illness suspends.
    WellAgain,
    /// What the motion sensor measured in one trial of a run. If a trial has several such entries, the last one counts.
    Sensed {
        /// The run that the trial belongs to.
        run: RunId,
        /// The trial's place in the run, from 0.
        trial: u16,
        /// The result in short form.
        sensed: Sensed,
        /// All details as one line of JSON, see [`crate::sway::detail`].
        detail: String,
    },
    /// A summary was encrypted for the clinician.
    Sealed {
        /// The summary's number within the log, from 1.
        counter: u32,
    },
    /// An earlier entry was a mistake. That entry stays in the log; this one says what it should have been.
    Corrected {
        /// The number of the earlier entry.
        entry: u32,
        /// What the earlier entry should have been.
        to: Correction,
    },
}

/// Why a slot was skipped (our own list, based on barriers reported by Jack 2010, Man Ther 15:220-8, and Escolar-Reina 2010,
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
    /// It hurt, or the person feared that it would.
    Pain,
    /// Not sure how to do it.
    NotSureHow,
    /// Felt fine and saw no need.
    FeltFine,
    /// It did not seem to help.
    NoHelp,
    /// Tired or unwell.
    Unwell,
    /// No support or free space nearby.
    NoSupport,
    /// Something else.
    Other,
    /// Would rather not say.
    RatherNotSay,
}

impl Barrier {
    /// All of them, in the order in which they are offered. The place is the code in a summary: append only.
    pub const ALL: [Barrier; Barrier::VARIANTS.len()] = array(Barrier::VARIANTS);

    /// Whether the clinician is shown this reason before the others.
    pub fn first(self) -> bool {
        matches!(self, Barrier::Pain | Barrier::Unwell)
    }
}

/// Why the person takes days off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum DayOffReason {
    /// Ill.
    Ill,
    /// Travelling.
    Travelling,
    /// On holiday.
    Holiday,
    /// Another reason, the clinician's or the person's own.
    Other,
}

impl DayOffReason {
    /// All of them. The place is the code in a summary: append only.
    pub const ALL: [DayOffReason; DayOffReason::VARIANTS.len()] = array(DayOffReason::VARIANTS);
}
