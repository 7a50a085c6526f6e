//! Beginning a run, and logging it as far as it got.

use super::plans::{self, FollowedPlan, append};
use super::record;
use crate::{ActionResult, DataFolder, Moment};
use exercises::alarm;
use exercises::catalogue::{Dose, Eyes, Surface};
use exercises::history::Mark;
use exercises::log::LogEvent;
use exercises::plan::{Item, Leg};
use exercises::questions::{self, Question};
use exercises::run::{Balance, Run, RunEnd, SetUp, TrialEnd, Work};
use exercises::slots;
use exercises::time::Stamp;
use wire::Failure;
use wire::patient::{BeginRequest, RunScript, RunSnapshot, SensedTrial};

/// The person's own median is taken over so many days.
const OWN_DAYS: i64 = 7;

/// The longest account of one trial, in bytes: eight events with four seconds of samples each take a quarter of it.
const MAX_DETAIL: usize = 1 << 20;

/// Begins a run of an item: for the slot that is open (or opens within ten minutes), else as an extra one. The beginning
/// itself is logged.
///
/// # Errors
/// [`Failure::Paused`] while an alarm holds the item back.
pub fn begin(folder: &mut DataFolder, moment: &Moment, request: &BeginRequest) -> ActionResult<RunScript> {
    let one = plans::one(folder, Some(request.plan))?;
    let item = item_to_begin(&one, moment, request)?;
    let history = &one.followed.history;
    if let Some(alarm) = alarm::blocking(&history.alarms, &item, one.plan(), &one.catalogue) {
        return Err(Failure::Paused(alarm.trouble));
    }
    let exercise = one.catalogue.get(&item.exercise).cloned().ok_or(Failure::NoSuchItem)?;
    let run = first_snapshot(&one, &item, moment);
    let first = history.runs.values().all(|run| run.exercise != item.exercise);
    let own_median_ms = own_medians(&one, &item, moment.now);
    append(folder, request.plan, moment.now, &LogEvent::Run(run.clone()))?;
    Ok(RunScript { plan: request.plan, run, exercise, item, first, own_median_ms })
}

/// The item as it is in use, or a step further where that was asked for and may be offered at this moment.
fn item_to_begin(one: &FollowedPlan, moment: &Moment, request: &BeginRequest) -> ActionResult<Item> {
    let item = one.item(request.item)?.clone();
    if !request.step {
        return Ok(item);
    }
    let offered = record::steps(one, moment);
    let step = offered.iter().find_map(|suggestion| suggestion.offered(&item)).ok_or(Failure::NoSuchItem)?;
    Ok(step.apply(&item))
}

fn first_snapshot(one: &FollowedPlan, item: &Item, moment: &Moment) -> Run {
    let (surface, eyes) = conditions(one, item);
    let work = match item.dose {
        Dose::Hold { .. } => Work::Hold(Vec::new()),
        Dose::Reps { .. } => Work::Reps(Vec::new()),
        Dose::Balance { .. } => Work::Balance(Balance { set_up: SetUp::OnSupport, surface, eyes, trials: Vec::new() }),
    };
    Run {
        id: one.followed.history.next_run(),
        item: item.id,
        exercise: item.exercise.clone(),
        rung: item.rung.clone(),
        dose: item.dose,
        slot: slots::counts_for(one.plan(), item.id, moment.now, &moment.zone, one.followed.taken),
        started: moment.now,
        live: true,
        end: RunEnd::Going,
        paused_ms: 0,
        interruptions: Vec::new(),
        work,
    }
}

/// What a balance item is stood on, and with which eyes.
fn conditions(one: &FollowedPlan, item: &Item) -> (Surface, Eyes) {
    let exercise = one.catalogue.get(&item.exercise);
    let rung = exercise.zip(item.rung.as_ref()).and_then(|(exercise, rung)| exercise.rung(rung));
    let surface = rung.and_then(|rung| rung.surface).unwrap_or(Surface::Firm);
    (surface, rung.and_then(|rung| rung.eyes).unwrap_or(Eyes::Open))
}

/// The median of each leg's measured trials under the same conditions over the last seven days, in milliseconds.
fn own_medians(one: &FollowedPlan, item: &Item, now: Stamp) -> Vec<(Leg, u32)> {
    let (surface, eyes) = conditions(one, item);
    let recent = one.followed.history.balance_runs(&one.catalogue).filter(|run| {
        run.exercise == item.exercise && now.date().signed_duration_since(run.started.date()).num_days() < OWN_DAYS
    });
    let like = recent.filter_map(|run| match &run.work {
        Work::Balance(balance) if balance.surface == surface && balance.eyes == eyes => Some(balance),
        _ => None,
    });
    let trials: Vec<_> = like.flat_map(|balance| &balance.trials).filter(|trial| trial.end != TrialEnd::CutOff).collect();
    let median = |leg: Leg| {
        let mut times: Vec<u32> = trials.iter().filter(|trial| trial.leg == leg).map(|trial| trial.held_ms).collect();
        times.sort_unstable();
        let middle = times.len() / 2;
        let value = match times.len() {
            0 => return None,
            odd if odd % 2 == 1 => times[middle],
            _ => (times[middle - 1] + times[middle]) / 2,
        };
        Some((leg, value))
    };
    [Leg::Left, Leg::Right].into_iter().filter_map(median).collect()
}

/// Logs a run as far as it got; what to ask once it has ended.
///
/// The run must have been begun here, and its dose, item and slot stay what they were: the window only reports what was
/// done.
pub fn checkpoint(folder: &mut DataFolder, moment: &Moment, snapshot: &RunSnapshot) -> ActionResult<Vec<Question>> {
    let one = plans::one(folder, Some(snapshot.plan))?;
    let begun = one.followed.history.runs.get(&snapshot.run.id).ok_or(Failure::NoSuchItem)?;
    if begun.end != RunEnd::Going {
        return Ok(Vec::new());
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
    let ended = run.end != RunEnd::Going;
    append(folder, snapshot.plan, moment.now, &LogEvent::Run(run.clone()))?;
    if !ended || run.end == RunEnd::Trouble {
        return Ok(Vec::new());
    }
    let one = plans::one(folder, Some(snapshot.plan))?;
    let last = last_of_today(&one, &run, moment);
    Ok(questions::after_run(one.plan(), &one.followed.history, &one.catalogue, &run, last))
}

/// Keeps what the sensor said about a trial of a run that was begun here. The raw run stays as it is; for the same trial the
/// last word counts.
pub fn save_sensed(folder: &mut DataFolder, moment: &Moment, report: &SensedTrial) -> ActionResult<()> {
    let one = plans::one(folder, Some(report.plan))?;
    let run = one.followed.history.runs.get(&report.run).ok_or(Failure::NoSuchItem)?;
    let Work::Balance(balance) = &run.work else { return Err(Failure::NoSuchItem) };
    if usize::from(report.trial) >= balance.trials.len() || report.detail.len() > MAX_DETAIL {
        return Err(Failure::NoSuchItem);
    }
    let SensedTrial { run, trial, sensed, detail, .. } = report.clone();
    append(folder, report.plan, moment.now, &LogEvent::Sensed { run, trial, sensed, detail }).map(drop)
}

/// Whether no further slot of the run's item is to come today.
fn last_of_today(one: &FollowedPlan, run: &Run, moment: &Moment) -> bool {
    let day = run.slot.map_or(run.started.date(), |slot| slot.day);
    let slots = slots::of_day(one.plan(), day, &moment.zone, one.followed.taken);
    let ahead = slots.iter().filter(|slot| slot.slot.item == run.item && Some(slot.slot) != run.slot);
    let Ok(item) = one.item(run.item) else { return true };
    !ahead.into_iter().any(|slot| one.followed.history.mark(slot, item, moment.now) == Mark::ToCome)
}
