//! What can be put right, as facts for a screen.

use super::Corrected;
use crate::alarm::Trouble;
use crate::id::{ActivityId, ComplaintId, ItemId, RunId};
use crate::log::Correction;
use crate::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use crate::plan::Plan;
use crate::run::Share;
use crate::score::Score;
use crate::slots::SlotRef;
use crate::time::Stamp;
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

/// What an entry says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum EntryContent {
    /// Pain.
    Pain {
        /// Of this complaint.
        complaint: ComplaintId,
        /// 0 to 10.
        score: Score,
        /// After a run of this item.
        after: Option<ItemId>,
    },
    /// The answer about the morning after.
    Settled {
        /// The complaint.
        complaint: ComplaintId,
        /// Whether it had settled.
        settled: bool,
    },
    /// A named activity.
    Rated {
        /// The activity.
        activity: ActivityId,
        /// 0 to 10.
        score: Score,
    },
    /// A skipped slots.
    #[cfg_attr(feature = "serde", serde(rename = "LeftOut"))]
    Skipped {
        /// The slot.
        slot: SlotRef,
        /// Why.
        reason: Barrier,
    },
    /// Days off.
    #[cfg_attr(feature = "serde", serde(rename = "Excused"))]
    DaysOff {
        /// First day.
        from: NaiveDate,
        /// Last day.
        until: NaiveDate,
        /// Why.
        why: DayOffReason,
    },
    /// A run, as its last snapshot shows it.
    Run {
        /// Its item.
        item: ItemId,
        /// The slot that it names.
        slot: Option<SlotRef>,
        /// When it began.
        started: Stamp,
        /// Timed live, or written in afterwards.
        live: bool,
        /// Whole holds, repetitions or trials.
        parts: Share,
    },
    /// Something was wrong. It can only be noted to be a mistake.
    Trouble {
        /// What.
        trouble: Trouble,
        /// During which item.
        item: Option<ItemId>,
    },
}

/// An entry that can be put right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Correctable {
    /// Its number, which a correction names.
    pub n: u32,
    /// When it was made.
    pub at: Stamp,
    /// What it said at first.
    pub said: EntryContent,
    /// The correction in force, if there is one.
    pub correction: Option<Correction>,
    /// What counts now; `None` where it should not be there.
    pub now: Option<EntryContent>,
}

/// All entries about `plan` from `from` on that can be put right, newest first; each run once.
pub fn list(log: &Log, plan: &Plan, from: NaiveDate) -> Vec<Correctable> {
    let corrected = Corrected::find(log, plan.header.id);
    let mut listed: BTreeSet<RunId> = BTreeSet::new();
    let runs: BTreeMap<RunId, ItemId> =
        log.entries.iter().filter(|entry| entry.plan == plan.header.id).filter_map(run).collect();
    let newest = log.entries.iter().rev().filter(|entry| entry.plan == plan.header.id && entry.at.date() >= from);
    let lines = newest.filter_map(|entry| {
        let said = said(&entry.event, plan, &runs)?;
        if let LogEvent::Run(run) = &entry.event
            && !listed.insert(run.id)
        {
            return None;
        }
        let correction = corrected.correction(entry);
        // An alarm counts whatever is noted beside it.
        let now = corrected.of(entry).and_then(|event| self::said(&event, plan, &runs));
        Some(Correctable { n: entry.n, at: entry.at, said, correction, now })
    });
    lines.collect()
}

fn run(entry: &Entry) -> Option<(RunId, ItemId)> {
    if let LogEvent::Run(run) = &entry.event { Some((run.id, run.item)) } else { None }
}

fn said(event: &LogEvent, plan: &Plan, runs: &BTreeMap<RunId, ItemId>) -> Option<EntryContent> {
    Some(match event {
        LogEvent::Pain { complaint, score, after } => {
            EntryContent::Pain { complaint: *complaint, score: *score, after: after.and_then(|run| runs.get(&run).copied()) }
        }
        LogEvent::Settled { complaint, settled } => EntryContent::Settled { complaint: *complaint, settled: *settled },
        LogEvent::Rated { activity, score } => EntryContent::Rated { activity: *activity, score: *score },
        LogEvent::Skipped { slot, reason } => EntryContent::Skipped { slot: *slot, reason: *reason },
        LogEvent::DaysOff { from, until, why } => EntryContent::DaysOff { from: *from, until: *until, why: *why },
        LogEvent::Run(run) => {
            let sides = plan.item(run.item).map_or(1, |item| item.side.in_turn().len() as u32);
            let parts = run.parts(sides);
            EntryContent::Run { item: run.item, slot: run.slot, started: run.started, live: run.live, parts }
        }
        LogEvent::Trouble { trouble, item } => EntryContent::Trouble { trouble: *trouble, item: *item },
        _ => return None,
    })
}
