//! Imports a history from a file: each line is carried out as if it were done in the window at its moment.

use super::plans::{self, FollowedPlan};
use super::{answering, running, today};
use crate::clock::Moment;
use crate::{ActionResult, DataFolder, platform};
use exercises::file_fault::{FaultKind, FileFault, RunsFault};
use exercises::id::PlanId;
use exercises::log::LogEvent;
use exercises::plan::{BodySide, Side};
use exercises::run::{HoldRecord, Run, RunEnd, SetRecord, Tally, Trial, Work};
use exercises::slots;
use exercises::time::Offsets;
use format::runs_file::{Parts, RunsFileEntry, RunsFileEvent};
use wire::Failure;
use wire::patient::{RunSnapshot, SkipRequest, SlotRequest};

/// Records entries in the order of their moments. Each uses the zone `place`, or its own offset if that differs.
///
/// # Errors
/// The failure of the first line that does not fit the plan; then nothing of the file is recorded.
pub fn record(
    folder: &mut DataFolder,
    plan: Option<PlanId>,
    place: &Offsets,
    file: &str,
    entries: &[RunsFileEntry],
) -> ActionResult<usize> {
    let plan = plans::one(folder, plan)?.plan().header.id;
    let mut ordered: Vec<&RunsFileEntry> = entries.iter().collect();
    ordered.sort_by_key(|entry| entry.at.utc_ms);
    folder.all_or_nothing(|folder| {
        for entry in &ordered {
            let same = place.at(entry.at.utc_ms.div_euclid(1000)) == entry.at.offset_s;
            let zone = if same { place.clone() } else { Offsets::fixed(entry.at.offset_s) };
            let moment = Moment { now: entry.at, zone };
            one(folder, plan, &moment, &entry.event).map_err(|failure| at_line(failure, file, entry.line))?;
        }
        Ok(ordered.len())
    })
}

/// Adds the line's number to a failure that the contents of a line can cause; returns any other unchanged.
fn at_line(failure: Failure, file: &str, line: u32) -> Failure {
    let fault = match failure {
        Failure::NoSuchItem => RunsFault::NoSuchItem,
        Failure::NoSuchSlot => RunsFault::NoOpenSlot,
        Failure::Paused(_) => RunsFault::Paused,
        Failure::EmptyPeriod => RunsFault::DaysOutsidePlan,
        other => return other,
    };
    platform::not_understood(file)(FileFault::at(line, FaultKind::Runs(fault)))
}

fn one(folder: &mut DataFolder, plan: PlanId, moment: &Moment, event: &RunsFileEvent) -> ActionResult<()> {
    match event {
        RunsFileEvent::Entry(LogEvent::Opened) => today::opened(folder, moment),
        RunsFileEvent::Run { item, live: true, parts } => {
            let (mut run, item) = running::log_begun(folder, moment, plan, *item)?;
            run.work = work(&run, item.side, parts)?;
            run.end = end(&run, item.side);
            running::log_checkpoint(folder, moment, &RunSnapshot { plan, run }).map(drop)
        }
        RunsFileEvent::Run { item, live: false, .. } => {
            let slot = open_slot(&*plans::one_at(folder, moment, Some(plan))?, *item, moment)?;
            today::log_done(folder, moment, &SlotRequest { plan, slot })
        }
        RunsFileEvent::Skipped { item, reason } => {
            let slot = open_slot(&*plans::one_at(folder, moment, Some(plan))?, *item, moment)?;
            today::log_skipped(folder, moment, &SkipRequest { plan, slot, reason: *reason })
        }
        RunsFileEvent::Entry(event) => answering::say(folder, moment, plan, event),
    }
}

fn open_slot(one: &FollowedPlan, item: exercises::id::ItemId, moment: &Moment) -> ActionResult<slots::SlotRef> {
    one.followed.history.slot_for(one.plan(), item, moment.now, &moment.zone, one.followed.taken).ok_or(Failure::NoSuchSlot)
}

/// The work of a run, with the sides in sequence: the dose of one side, then that of the other.
fn work(run: &Run, side: Side, parts: &Parts) -> ActionResult<Work> {
    let sides = side.in_turn();
    let each = usize::from(run.dose.parts().max(1));
    let side_of = |place: usize| sides.get(place / each).copied().ok_or(Failure::NoSuchItem);
    let most = run.dose.part_ms();
    match (parts, &run.work) {
        (Parts::Held(held), Work::Timed(_)) => {
            let parts = held.iter().enumerate();
            let parts = parts.map(|(place, ms)| Ok(HoldRecord { side: side_of(place)?, held_ms: (*ms).min(most) }));
            Ok(Work::Timed(parts.collect::<ActionResult<_>>()?))
        }
        (Parts::Counted(counted), Work::Counted(_)) => {
            let sets = counted.iter().enumerate();
            let sets =
                sets.map(|(place, (done, failed))| Ok(SetRecord { side: side_of(place)?, done: *done, failed: *failed }));
            Ok(Work::Counted(sets.collect::<ActionResult<_>>()?))
        }
        (Parts::Trials { phone, each: trials }, Work::Balance(balance)) => {
            let prescribed = |wanted: &Option<BodySide>| sides.contains(wanted);
            if !trials.iter().all(|(leg, _, _)| prescribed(leg)) {
                return Err(Failure::NoSuchItem);
            }
            let trial =
                |(leg, ms, end): &(Option<BodySide>, u32, _)| Trial { leg: *leg, held_ms: (*ms).min(most), end: *end };
            let mut balance = balance.clone();
            balance.set_up = phone.unwrap_or(balance.set_up);
            balance.trials = trials.iter().map(trial).collect();
            Ok(Work::Balance(balance))
        }
        (Parts::Number(count), Work::Tally(_)) => Ok(Work::Tally(Tally { held_ms: most, count: Some(*count) })),
        _ => Err(Failure::NoSuchItem),
    }
}

/// A run in which everything asked for was done is complete; any other was stopped.
fn end(run: &Run, side: Side) -> RunEnd {
    let asked = side.in_turn().len() * usize::from(run.dose.parts());
    if run.work.count() >= asked { RunEnd::Completed } else { RunEnd::Stopped }
}
