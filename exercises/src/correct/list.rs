//! The entries that can be corrected, as data for a screen.

use super::Corrected;
use crate::alarm::Trouble;
use crate::id::{ActivityId, ComplaintId, ItemId, RunId};
use crate::log::Correction;
use crate::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use crate::misdated::WrongClock;
use crate::plan::Plan;
use crate::run::Share;
use crate::score::Score;
use crate::slots::SlotRef;
use crate::time::Stamp;
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

/// What an entry of the log says, for the page on which entries are corrected.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum EntryContent {
    /// A rating of a complaint's pain in the morning.
    Morning {
        /// The complaint that was rated.
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
    /// A rating of pain of version 1.
    Pain {
        /// The complaint that was rated.
        complaint: ComplaintId,
        /// 0 (none) to 10.
        score: Score,
        /// The item after whose run pain was asked about; `None` if it was not asked for after a run.
        after: Option<ItemId>,
    },
    /// The answer to "settled by this morning?".
    Settled {
        /// The complaint that the question was about.
        complaint: ComplaintId,
        /// Whether the pain had settled.
        settled: bool,
    },
    /// A rating of a named activity.
    Rated {
        /// The activity that was rated.
        activity: ActivityId,
        /// 0 (cannot do it) to 10 (as before).
        score: Score,
    },
    /// A slot that was skipped.
    #[cfg_attr(feature = "serde", serde(rename = "LeftOut"))]
    Skipped {
        /// The slot.
        slot: SlotRef,
        /// The reason that the person chose.
        reason: Barrier,
    },
    /// Days off.
    #[cfg_attr(feature = "serde", serde(rename = "Excused"))]
    DaysOff {
        /// First day off.
        from: NaiveDate,
        /// Last day off, included.
        until: NaiveDate,
        /// The reason.
        why: DayOffReason,
    },
    /// A run, as its last snapshot shows it.
    Run {
        /// The item that was done.
        item: ItemId,
        /// The slot that the run was done for; `None` for an extra run.
        slot: Option<SlotRef>,
        /// When the run began.
        started: Stamp,
        /// Whether it was timed while it was done; otherwise it was written in afterwards.
        live: bool,
        /// How many whole holds, repetitions or trials were done.
        parts: Share,
    },
    /// Something was wrong. The alarm stays in force; the person can only note that it was raised by mistake.
    Trouble {
        /// What was wrong.
        trouble: Trouble,
        /// The item during which it happened, if any.
        item: Option<ItemId>,
    },
}

/// An entry that can be corrected.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Correctable {
    /// The entry's number, by which a correction refers to it.
    pub n: u32,
    /// When the entry was made, as the device's clock showed it.
    pub at: Stamp,
    /// How the clock was wrong then; `None` if nothing speaks against it.
    pub wrong_clock: Option<WrongClock>,
    /// What the entry said when it was made.
    pub said: EntryContent,
    /// The correction in force; `None` if there is none.
    pub correction: Option<Correction>,
    /// What the entry says after correction; `None` if it was withdrawn.
    pub now: Option<EntryContent>,
}

/// All entries about `plan` made on or after `from` that can be corrected, newest first. Each run is listed once. `made` says of an entry
/// how the clock was wrong when it was made, if it was, and when it may have been made.
pub fn list(
    log: &Log,
    plan: &Plan,
    from: NaiveDate,
    made: impl Fn(&Entry) -> (Option<WrongClock>, Stamp),
) -> Vec<Correctable> {
    let corrected = Corrected::find(log, plan.header.id);
    let mut listed: BTreeSet<RunId> = BTreeSet::new();
    let runs: BTreeMap<RunId, ItemId> =
        log.entries.iter().filter(|entry| entry.plan == plan.header.id).filter_map(run).collect();
    let is_listed = |entry: &&Entry| entry.plan == plan.header.id && made(entry).1.date() >= from;
    let newest = log.entries.iter().rev().filter(is_listed);
    let lines = newest.filter_map(|entry| {
        let said = said(&entry.event, plan, &runs)?;
        if let LogEvent::Run(run) = &entry.event
            && !listed.insert(run.id)
        {
            return None;
        }
        let correction = corrected.correction(entry);
        // For an alarm this is the alarm itself, even if it is noted as raised by mistake.
        let now = corrected.of(entry).and_then(|event| self::said(&event, plan, &runs));
        Some(Correctable { n: entry.n, at: entry.at, wrong_clock: made(entry).0, said, correction, now })
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
        LogEvent::Morning { complaint, score } => EntryContent::Morning { complaint: *complaint, score: *score },
        LogEvent::During { item, score } => EntryContent::During { item: *item, score: *score },
        LogEvent::Settled { complaint, settled } => EntryContent::Settled { complaint: *complaint, settled: *settled },
        LogEvent::Rated { activity, score } => EntryContent::Rated { activity: *activity, score: *score },
        LogEvent::Skipped { slot, reason } => EntryContent::Skipped { slot: *slot, reason: *reason },
        LogEvent::DaysOff { from, until, why } => EntryContent::DaysOff { from: *from, until: *until, why: *why },
        LogEvent::Run(run) => {
            let sides = plan.item(run.item).map_or(1, |item| item.side.in_turn().len() as u32);
            let parts = run.parts(sides);
            EntryContent::Run { item: run.item, slot: run.slot, started: run.started, live: run.live, parts }
        }
        LogEvent::Trouble { trouble, item, .. } => EntryContent::Trouble { trouble: *trouble, item: *item },
        _ => return None,
    })
}
