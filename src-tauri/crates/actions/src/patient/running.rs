//! Begins a run, and logs its progress.

use super::plans::{self, FollowedPlan, append};
use super::record;
use crate::{ActionResult, DataFolder, Moment};
use exercises::history::History;
use exercises::id::{ItemId, PlanId};
use exercises::log::LogEvent;
use exercises::plan::Item;
use exercises::questions::{self, Question};
use exercises::run::{Run, RunEnd, Work};
use exercises::slots::{self, own_date};
use exercises::suspension;
use wire::Failure;
use wire::patient::{BeginRequest, RunScript, RunSnapshot, SensedTrial};

/// Largest size of the details of one trial, in bytes: eight events with four seconds of samples each need a quarter of it.
const MAX_DETAIL: usize = 1 << 20;

/// Begins a run of an item: for the slot that is open (or opens within ten minutes), otherwise as an extra run. The beginning itself
/// is logged.
///
/// # Errors
/// [`Failure::Paused`] if an alarm pauses the item.
pub fn begin(folder: &mut DataFolder, moment: &Moment, request: &BeginRequest) -> ActionResult<RunScript> {
    let one = plans::one_at(folder, moment, Some(request.plan))?;
    let item = item_to_begin(folder, &one, moment, request)?;
    let history = &one.followed.history;
    let exercise = one.catalogue.get(&item.exercise).cloned().ok_or(Failure::NoSuchItem)?;
    let run = may_begin(&one, &item, moment)?;
    let hand_on_support = one.followed.hand_on_support(&item, &exercise);
    let cautions_first = cautions_first(history, &item) || hand_on_support;
    let own = history.own_medians(&item, &one.catalogue, moment.now.date());
    append(folder, request.plan, moment.now, &LogEvent::Run(run.clone()))?;
    Ok(RunScript { plan: request.plan, run, exercise, item, hand_on_support, cautions_first, own })
}

/// Begins a run and logs it as [`begin`] does, without what the window shows about it.
pub(crate) fn log_begun(folder: &mut DataFolder, moment: &Moment, plan: PlanId, item: ItemId) -> ActionResult<(Run, Item)> {
    let one = plans::one_at(folder, moment, Some(plan))?;
    let item = one.item_on(item, own_date(moment.now))?.into_owned();
    let run = may_begin(&one, &item, moment)?;
    // Otherwise adding the entry to the plan would have to copy it.
    drop(one);
    append(folder, plan, moment.now, &LogEvent::Run(run.clone()))?;
    Ok((run, item))
}

/// The first snapshot of a run, unless an alarm pauses the item.
fn may_begin(one: &FollowedPlan, item: &Item, moment: &Moment) -> ActionResult<Run> {
    let suspended = one.followed.history.suspended(one.plan(), moment.now);
    match suspension::blocking(&suspended, item, one.plan(), &one.catalogue) {
        Some(alarm) => Err(Failure::Paused(alarm.trouble)),
        None => Ok(first_snapshot(one, item, moment)),
    }
}

/// Whether the precautions are to be read before this run: they were read before each run so far that was the first at its level. An
/// item that is new is compared with the last run of its exercise.
fn cautions_first(history: &History, item: &Item) -> bool {
    let of_exercise = || history.runs.values().rev().filter(|run| run.exercise == item.exercise);
    let last = of_exercise().find(|run| run.item == item.id).or_else(|| of_exercise().next());
    last.is_none_or(|run| run.rung != item.rung)
}

/// The item at its present level, or at the next one if that was requested and may be offered at this moment.
fn item_to_begin(folder: &DataFolder, one: &FollowedPlan, moment: &Moment, request: &BeginRequest) -> ActionResult<Item> {
    let item = one.item_on(request.item, own_date(moment.now))?.into_owned();
    // The window offers none that begins later or has ended.
    if !item.phase.contains(own_date(moment.now)) {
        return Err(Failure::NoSuchItem);
    }
    if !request.step {
        return Ok(item);
    }
    let offered = record::steps(folder, one, moment);
    let step = offered.iter().find_map(|suggestion| suggestion.offered(&item)).ok_or(Failure::NoSuchItem)?;
    Ok(step.apply(&item))
}

fn first_snapshot(one: &FollowedPlan, item: &Item, moment: &Moment) -> Run {
    let work = Work::begun(item.dose.kind(), item.conditions(&one.catalogue));
    Run {
        id: one.followed.history.next_run(),
        item: item.id,
        exercise: item.exercise.clone(),
        rung: item.rung.clone(),
        dose: item.dose,
        slot: one.followed.history.slot_for(one.plan(), item.id, moment.now, &moment.zone, one.followed.taken),
        started: moment.now,
        live: true,
        end: RunEnd::Going,
        paused_ms: 0,
        interruptions: Vec::new(),
        work,
    }
}

/// Logs the progress of a run. Returns the question to ask if it has ended.
///
/// The run must have been begun here, and its dose, item and slot cannot change: the window only reports what was done.
pub fn checkpoint(folder: &mut DataFolder, moment: &Moment, snapshot: &RunSnapshot) -> ActionResult<Option<Question>> {
    let Some(run) = log_checkpoint(folder, moment, snapshot)? else { return Ok(None) };
    if matches!(run.end, RunEnd::Going | RunEnd::Trouble) {
        return Ok(None);
    }
    let one = plans::one_at(folder, moment, Some(snapshot.plan))?;
    let day = run.slot.map_or(run.started.date(), |slot| slot.day);
    let slots = slots::of_day(one.plan(), day, &moment.zone, one.followed.taken);
    Ok(questions::after_run(one.plan(), &one.followed.history, &run, &slots))
}

/// Logs the progress of a run as [`checkpoint`] does, and returns the run; `None` if it has ended already.
pub(crate) fn log_checkpoint(folder: &mut DataFolder, moment: &Moment, snapshot: &RunSnapshot) -> ActionResult<Option<Run>> {
    let one = plans::one_at(folder, moment, Some(snapshot.plan))?;
    let begun = one.followed.history.run(snapshot.run.id).ok_or(Failure::NoSuchItem)?;
    if begun.end != RunEnd::Going {
        return Ok(None);
    }
    let run = Run {
        id: begun.id,
        item: begun.item,
        exercise: begun.exercise.clone(),
        rung: begun.rung.clone(),
        dose: begun.dose,
        slot: begun.slot,
        started: begun.started,
        live: begun.live,
        ..snapshot.run.clone()
    };
    // Otherwise adding the entry to the plan would have to copy it.
    drop(one);
    append(folder, snapshot.plan, moment.now, &LogEvent::Run(run.clone()))?;
    Ok(Some(run))
}

/// Stores the sensor's result for a trial of a run that was begun here. The run itself is not changed; if there are several results
/// for one trial, the last one counts.
pub fn save_sensed(folder: &mut DataFolder, moment: &Moment, report: &SensedTrial) -> ActionResult<()> {
    let one = plans::one_at(folder, moment, Some(report.plan))?;
    let run = one.followed.history.run(report.run).ok_or(Failure::NoSuchItem)?;
    let Work::Balance(balance) = &run.work else { return Err(Failure::NoSuchItem) };
    if usize::from(report.trial) >= balance.trials.len() || report.detail.len() > MAX_DETAIL {
        return Err(Failure::NoSuchItem);
    }
    let SensedTrial { run, trial, sensed, detail, .. } = report.clone();
    append(folder, report.plan, moment.now, &LogEvent::Sensed { run, trial, sensed, detail }).map(drop)
}
