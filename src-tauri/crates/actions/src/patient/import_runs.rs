//! A history from a file: each line is done as if it were done in the window at its moment.

use super::plans::{self, FollowedPlan};
use super::{answering, running, today};
use crate::clock::Moment;
use crate::{ActionResult, DataFolder};
use exercises::catalogue::Dose;
use exercises::id::PlanId;
use exercises::plan::{Leg, Side};
use exercises::run::{HoldRecord, Run, RunEnd, SetRecord, Trial, Work};
use exercises::slots;
use exercises::time::Offsets;
use format::runs_file::{Parts, RunsFileEntry, RunsFileEvent};
use wire::Failure;
use wire::patient::{BeginRequest, DaysOffRequest, QuestionAnswer, RunSnapshot, SkipRequest, SlotRequest, TroubleRequest};

/// Records entries in the order of their moments. The zone of each is `place`, or its own offset where the place had another.
///
/// # Errors
/// The first line that the plan does not have room for; then nothing of the whole file is recorded.
pub fn record(
    folder: &mut DataFolder,
    plan: Option<PlanId>,
    place: &Offsets,
    file: &str,
    entries: &[RunsFileEntry],
) -> ActionResult<usize> {
    let plan = plans::one(folder, plan)?.plan().id;
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

/// A refusal that a line can cause is told with the line.
fn at_line(failure: Failure, file: &str, line: u32) -> Failure {
    let expected = match failure {
        Failure::NoSuchItem => "the plan has no such item, complaint or activity, or it is done in another way than this",
        Failure::NoSuchSlot => "at that moment no slot of this item is open, or it is done already",
        Failure::Paused(_) => "at that moment an alarm holds this item back",
        Failure::EmptyPeriod => "the days must lie between the plan's start and its review, the first before the last",
        other => return other,
    };
    Failure::NotUnderstood { file: file.to_owned(), line, expected: expected.to_owned() }
}

fn one(folder: &mut DataFolder, plan: PlanId, moment: &Moment, event: &RunsFileEvent) -> ActionResult<()> {
    match event {
        RunsFileEvent::Opened => today::opened(folder, moment),
        RunsFileEvent::Run { item, live: true, parts } => {
            let mut script = running::begin(folder, moment, &BeginRequest { plan, item: *item, step: false })?;
            script.run.work = work(&script.run, script.item.side, parts)?;
            script.run.end = end(&script.run, script.item.side);
            running::checkpoint(folder, moment, &RunSnapshot { plan, run: script.run }).map(drop)
        }
        RunsFileEvent::Run { item, live: false, .. } => {
            let slot = open_slot(&*plans::one(folder, Some(plan))?, *item, moment)?;
            today::did_it(folder, moment, &SlotRequest { plan, slot }).map(drop)
        }
        RunsFileEvent::Skipped { item, reason } => {
            let slot = open_slot(&*plans::one(folder, Some(plan))?, *item, moment)?;
            today::skip(folder, moment, &SkipRequest { plan, slot, reason: *reason }).map(drop)
        }
        RunsFileEvent::DaysOff { from, until, why } => {
            today::take_days_off(folder, moment, &DaysOffRequest { plan, from: *from, until: *until, why: *why }).map(drop)
        }
        RunsFileEvent::Pain { complaint, score } => {
            let said = QuestionAnswer::Pain { plan, complaint: *complaint, score: *score, after: None };
            answering::answer(folder, moment, &said).map(drop)
        }
        RunsFileEvent::Settled { complaint, settled } => {
            let said = QuestionAnswer::Settled { plan, complaint: *complaint, settled: *settled };
            answering::answer(folder, moment, &said).map(drop)
        }
        RunsFileEvent::Rated { activity, score } => {
            let said = QuestionAnswer::Activity { plan, activity: *activity, score: *score };
            answering::answer(folder, moment, &said).map(drop)
        }
        RunsFileEvent::Trouble { trouble, item } => {
            answering::trouble(folder, moment, &TroubleRequest { plan, trouble: *trouble, item: *item }).map(drop)
        }
    }
}

fn open_slot(one: &FollowedPlan, item: exercises::id::ItemId, moment: &Moment) -> ActionResult<slots::SlotRef> {
    slots::counts_for(one.plan(), item, moment.now, &moment.zone, one.followed.taken).ok_or(Failure::NoSuchSlot)
}

/// What was done, with the sides in turn: the dose of one side, then that of the other.
fn work(run: &Run, side: Side, parts: &Parts) -> ActionResult<Work> {
    let legs = side.in_turn();
    let leg = |place: usize, each: u8| legs.get(place / usize::from(each.max(1))).copied().ok_or(Failure::NoSuchItem);
    match (parts, run.dose, &run.work) {
        (Parts::Held(held), Dose::Hold { repetitions, hold_s, .. }, _) => {
            let most = u32::from(hold_s) * 1000;
            let holds = held.iter().enumerate();
            let holds = holds.map(|(place, ms)| Ok(HoldRecord { leg: leg(place, repetitions)?, held_ms: (*ms).min(most) }));
            Ok(Work::Hold(holds.collect::<ActionResult<_>>()?))
        }
        (Parts::Counted(counted), Dose::Reps { sets, .. }, _) => {
            let all = counted.iter().enumerate();
            let all =
                all.map(|(place, (done, failed))| Ok(SetRecord { leg: leg(place, sets)?, done: *done, failed: *failed }));
            Ok(Work::Reps(all.collect::<ActionResult<_>>()?))
        }
        (Parts::Trials { phone, each: trials }, Dose::Balance { target_s, .. }, Work::Balance(balance)) => {
            let most = u32::from(target_s) * 1000;
            let prescribed = |wanted: &Leg| legs.contains(&Some(*wanted));
            if !trials.iter().all(|(leg, _, _)| prescribed(leg)) {
                return Err(Failure::NoSuchItem);
            }
            let trial = |(leg, ms, end): &(Leg, u32, _)| Trial { leg: *leg, held_ms: (*ms).min(most), end: *end };
            let mut balance = balance.clone();
            balance.set_up = phone.unwrap_or(balance.set_up);
            balance.trials = trials.iter().map(trial).collect();
            Ok(Work::Balance(balance))
        }
        _ => Err(Failure::NoSuchItem),
    }
}

/// A run that went through everything asked for is complete; any other was stopped.
fn end(run: &Run, side: Side) -> RunEnd {
    let asked = side.in_turn().len() * usize::from(run.dose.parts());
    let done = match &run.work {
        Work::Hold(holds) => holds.len(),
        Work::Reps(sets) => sets.len(),
        Work::Balance(balance) => balance.trials.len(),
    };
    if done >= asked { RunEnd::Completed } else { RunEnd::Stopped }
}
