//! A diary that was kept on paper, made into a summary, so that it is reviewed like any other.
//!
//! What a diary does not say is not made up: sessions have no results and were not timed, and at which times of the day the ticked ones
//! were done is not known. They are therefore spread evenly over the day's due times, so that no half of the day looks better than the
//! other. On the day on which a card was issued only what was ticked counts: the visit may have been in the evening.

use super::{Corrections, Period, Sealing, Summary, reduce};
use crate::catalogue::Catalogue;
use crate::history::{History, Mark};
use crate::id::{ComplaintId, ItemId, LogId, RunId};
use crate::log::{Entry, Log, LogEvent};
use crate::plan::{Item, Plan};
use crate::run::{Run, RunEnd, Work};
use crate::score::Score;
use crate::slots::{self, SlotRef};
use crate::time::{DayNumber, Offsets, ResolvedTime, Stamp, days_since_1970};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

/// Largest number of sessions of one exercise that can be entered for a day.
pub const MAX_SESSIONS: u8 = 99;
/// Entries and runs of a day are numbered within a thousand of their own, so that a day that is entered again keeps its numbers.
const NUMBERS_OF_A_DAY: u32 = 1000;
/// Where the numbers of ratings begin within a day's thousand, and those of runs.
const RATINGS: u32 = 10;
const RUNS: u32 = 300;
/// When a day of the patient begins, when its pain of the morning is noted, and when sessions without a due time are, in minutes.
const BEGINS: i64 = 3 * 60;
const MORNING: i64 = BEGINS + 30;
const NOON: i64 = 12 * 60;

/// A day of a diary. A day on which nothing was done has its exercises with 0 sessions; one without any number takes out what was entered
/// for it before.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PaperDay {
    /// The day.
    pub day: NaiveDate,
    /// How many sessions of each exercise were ticked, at most [`MAX_SESSIONS`].
    pub done: Vec<(ItemId, u8)>,
    /// The pain of each complaint in the morning, 0 to 10.
    pub mornings: Vec<(ComplaintId, Score)>,
}

/// What a diary is read with.
#[derive(Debug, Clone, Copy)]
pub struct PaperContext<'a> {
    /// All revisions of the plan.
    pub revisions: &'a BTreeMap<u16, Plan>,
    /// The exercises.
    pub catalogue: &'a Catalogue,
    /// The clinic's time zone.
    pub zone: &'a Offsets,
    /// The present moment. Days after it are left out.
    pub now: Stamp,
}

/// The summary of all days entered so far: those of `earlier`, the summaries made of the diary before, with `days` in their place.
/// `None` if none is left.
pub fn from_paper(days: &[PaperDay], earlier: &[Summary], with: PaperContext<'_>) -> Option<Summary> {
    let start = with.revisions.values().next()?.header.start;
    let known = |day: &NaiveDate| *day >= start && *day <= with.now.date() && DayNumber::of(*day, start).is_some();
    let last = earlier.iter().max_by_key(|summary| summary.counter);
    let before = last.map(|summary| paper_days(summary, start)).unwrap_or_default();
    let mut all: BTreeMap<NaiveDate, PaperDay> = before.into_iter().map(|one| (one.day, one)).collect();
    for one in days.iter().filter(|one| known(&one.day)) {
        let is_empty = one.done.is_empty() && one.mornings.is_empty();
        if is_empty { drop(all.remove(&one.day)) } else { drop(all.insert(one.day, one.clone())) }
    }
    let period = Period { from: *all.keys().next()?, until: *all.keys().next_back()? };
    let entries = entries(&all, start, with);
    let log = Log { id: LogId::PAPER, former: Vec::new(), entries };
    let plan = with.revisions.values().next()?.header.id;
    let mut history = History::fold(&log, plan);
    history.note_beginnings(with.revisions);
    let counter = last.map_or(0, |summary| summary.counter).checked_add(1)?;
    let sealing = Sealing { log: LogId::PAPER, period, now: with.now, counter, note: None };
    let mut summary = reduce(&history, with.revisions, with.catalogue, with.zone, sealing)?;
    mark_without_result(&mut summary, &all, start, with);
    let issued: BTreeSet<NaiveDate> = with.revisions.values().map(|plan| plan.header.issued).collect();
    for one in summary.days.iter_mut().filter(|one| issued.contains(&one.day.date(start))) {
        one.slots.retain(|(_, mark)| *mark == Mark::Done);
    }
    summary.days.retain(|one| !one.slots.is_empty());
    summary.corrections = corrections(&summary, earlier);
    Some(summary)
}

/// The days that were entered into a summary made of a diary, of a plan that began at `start`.
pub fn paper_days(summary: &Summary, start: NaiveDate) -> Vec<PaperDay> {
    let mut days: BTreeMap<DayNumber, PaperDay> = BTreeMap::new();
    for day in &summary.seen {
        days.insert(*day, PaperDay { day: day.date(start), done: Vec::new(), mornings: Vec::new() });
    }
    let mut add = |day: DayNumber, item: ItemId, sessions: u8| {
        let Some(of) = days.get_mut(&day) else { return };
        match of.done.iter_mut().find(|(other, _)| *other == item) {
            Some((_, n)) => *n = n.saturating_add(sessions),
            None => of.done.push((item, sessions)),
        }
    };
    for run in &summary.runs {
        // The day under which it was entered: it may count for another one.
        add(DayNumber(u16::try_from(run.run.0 / NUMBERS_OF_A_DAY).unwrap_or(u16::MAX)), run.item, 1);
    }
    let with_run: BTreeSet<ItemId> = summary.runs.iter().map(|run| run.item).collect();
    for one in summary.days.iter().filter(|one| !with_run.contains(&one.item)) {
        let done = one.slots.iter().filter(|(_, mark)| *mark == Mark::Done).count();
        if done > 0 {
            add(one.day, one.item, u8::try_from(done).unwrap_or(MAX_SESSIONS));
        }
    }
    for one in &summary.mornings {
        if let Some(of) = days.get_mut(&one.day) {
            of.mornings.push((one.complaint, one.score));
        }
    }
    days.values_mut().for_each(|day| day.done.sort());
    days.into_values().collect()
}

/// How many sessions of each item were due on a day: none of items without due times on it.
pub fn due_on(day: NaiveDate, with: PaperContext<'_>) -> Vec<(ItemId, u8)> {
    let Some(plan) = in_force(day, with) else { return Vec::new() };
    let slots = due(plan, day, with);
    let of_item = |item: &Item| {
        let n = slots.iter().filter(|slot| slot.item == item.id).count();
        (item.id, u8::try_from(n).unwrap_or(MAX_SESSIONS))
    };
    plan.prescription.items.iter().map(of_item).collect()
}

/// The plan on a day: the newest card issued until then.
fn in_force<'a>(day: NaiveDate, with: PaperContext<'a>) -> Option<&'a Plan> {
    with.revisions.values().rev().find(|plan| plan.header.issued <= day)
}

fn due(plan: &Plan, day: NaiveDate, with: PaperContext<'_>) -> Vec<SlotRef> {
    let Some(taken) = at(plan.header.issued, BEGINS, with.zone) else { return Vec::new() };
    slots::of_day(plan, day, with.zone, taken).into_iter().filter(|slot| slot.due.is_some()).map(|slot| slot.slot).collect()
}

/// The moment at which the clocks show this minute of the day; the first of two, and a later one if there is none.
fn at(day: NaiveDate, minute: i64, zone: &Offsets) -> Option<Stamp> {
    (0..=6).find_map(|half_hours| match zone.resolve_s(days_since_1970(day) * 86_400 + (minute + half_hours * 30) * 60) {
        ResolvedTime::Once(stamp) | ResolvedTime::Twice(stamp) => Some(stamp),
        ResolvedTime::Never => None,
    })
}

/// The entries that a device would have made, in order of their numbers.
fn entries(all: &BTreeMap<NaiveDate, PaperDay>, start: NaiveDate, with: PaperContext<'_>) -> Vec<Entry> {
    let Some(plan) = with.revisions.values().next().map(|plan| plan.header.id) else { return Vec::new() };
    let number = |day: NaiveDate| DayNumber::of(day, start).map(|day| u32::from(day.0) * NUMBERS_OF_A_DAY);
    let mut entries: Vec<Entry> = Vec::new();
    let taken = with.revisions.values().filter_map(|of| {
        let (issued, revision) = (of.header.issued, of.header.revision);
        let event = LogEvent::Taken { revision, agreed: Vec::new() };
        Some(Entry { n: number(issued)? + 1, plan, at: at(issued, BEGINS, with.zone)?, event })
    });
    // Of two cards of one day the later one replaces the earlier one.
    let taken: BTreeMap<u32, Entry> = taken.map(|entry| (entry.n, entry)).collect();
    entries.extend(taken.into_values());
    for (day, one) in all {
        let (Some(from), Some(morning)) = (number(*day), at(*day, MORNING, with.zone)) else { continue };
        entries.push(Entry { n: from + 2, plan, at: morning, event: LogEvent::Opened });
        let mut mornings = one.mornings.clone();
        mornings.sort();
        for (complaint, score) in mornings {
            let event = LogEvent::Morning { complaint, score };
            entries.push(Entry { n: from + RATINGS + u32::from(complaint.0), plan, at: morning, event });
        }
        let runs = runs(one, from, &entries, with);
        entries.extend(runs.into_iter().map(|(n, run)| Entry { n, plan, at: run.started, event: LogEvent::Run(run) }));
    }
    entries.sort_by_key(|entry| entry.n);
    entries
}

/// The runs of a day, with the numbers of their entries.
fn runs(one: &PaperDay, from: u32, before: &[Entry], with: PaperContext<'_>) -> Vec<(u32, Run)> {
    let Some(plan) = in_force(one.day, with) else { return Vec::new() };
    let slots = due(plan, one.day, with);
    let mut runs = Vec::new();
    for (id, sessions) in &one.done {
        let Some(item) = plan.item(*id) else { continue };
        let Some(work) = Work::in_full(item.on(one.day, plan.header.issued).dose, item.side.in_turn()) else { continue };
        let due: Vec<SlotRef> = slots.iter().copied().filter(|slot| slot.item == *id).collect();
        let filled = spread(&due, usize::from(*sessions));
        let further = usize::from(*sessions) - filled.len();
        let unslotted = std::iter::repeat_n(None, further);
        for slot in filled.into_iter().map(Some).chain(unslotted) {
            let n = from + RUNS + runs.len() as u32;
            let minute = slot.and_then(|slot| item.schedule.pattern.minutes().get(usize::from(slot.number)).copied());
            let Some(started) = at(one.day, minute.map_or(NOON, i64::from), with.zone) else { continue };
            let slot = slot.or_else(|| {
                chosen(plan, item, started, before, with)
                    .filter(|_| runs.iter().all(|(_, run): &(u32, Run)| run.item != *id))
            });
            let (exercise, rung, dose) =
                (item.exercise.clone(), item.rung.clone(), item.on(one.day, plan.header.issued).dose);
            let run = Run {
                id: RunId(n),
                item: *id,
                exercise,
                rung,
                dose,
                slot,
                started,
                live: false,
                end: RunEnd::Completed,
                paused_ms: 0,
                interruptions: Vec::new(),
                work: work.clone(),
            };
            runs.push((n, run));
        }
    }
    runs
}

/// Of an item of which the patient chooses the days: the slot of the week that a session on this day fills.
fn chosen(plan: &Plan, item: &Item, started: Stamp, before: &[Entry], with: PaperContext<'_>) -> Option<SlotRef> {
    if !item.schedule.days.are_chosen() {
        return None;
    }
    let log = Log { id: LogId::PAPER, former: Vec::new(), entries: before.to_vec() };
    let mut history = History::fold(&log, plan.header.id);
    history.note_beginnings(with.revisions);
    history.slot_for(plan, item.id, started, with.zone, at(plan.header.issued, BEGINS, with.zone)?)
}

/// So many of the slots, spread evenly over them.
fn spread(due: &[SlotRef], sessions: usize) -> Vec<SlotRef> {
    let (n, k) = (due.len(), sessions.min(due.len()));
    due.iter().enumerate().filter(|(place, _)| place * k / n != (place + 1) * k / n).map(|(_, slot)| *slot).collect()
}

/// Marks slots of tests and balance trials, which a tick says were done: they have no run, because a run of theirs has a result.
fn mark_without_result(
    summary: &mut Summary,
    all: &BTreeMap<NaiveDate, PaperDay>,
    start: NaiveDate,
    with: PaperContext<'_>,
) {
    for one in &mut summary.days {
        let day = one.day.date(start);
        let sessions =
            all.get(&day).and_then(|of| of.done.iter().find(|(item, _)| *item == one.item)).map_or(0, |(_, n)| *n);
        let item = in_force(day, with).and_then(|plan| plan.item(one.item));
        if item.is_none_or(|item| Work::in_full(item.dose, item.side.in_turn()).is_some()) {
            continue;
        }
        let slots: Vec<SlotRef> =
            one.slots.iter().map(|(number, _)| SlotRef { day, item: one.item, number: *number }).collect();
        let done = spread(&slots, usize::from(sessions));
        let ticked = |number: u8| done.iter().any(|slot| slot.number == number);
        one.slots.iter_mut().filter(|(number, _)| ticked(*number)).for_each(|(_, mark)| *mark = Mark::Done);
    }
}

/// What earlier summaries of the diary have and this one no longer has: it was entered by mistake.
fn corrections(summary: &Summary, earlier: &[Summary]) -> Corrections {
    let runs = earlier.iter().flat_map(|one| one.runs.iter().map(|run| run.run).chain(one.corrections.runs.iter().copied()));
    let gone =
        earlier.iter().flat_map(|one| one.mornings.iter().map(|one| one.n).chain(one.corrections.gone.iter().copied()));
    let has_run: BTreeSet<RunId> = summary.runs.iter().map(|run| run.run).collect();
    let has: BTreeSet<u32> = summary.mornings.iter().map(|one| one.n).collect();
    Corrections {
        runs: runs.filter(|run| !has_run.contains(run)).collect(),
        gone: gone.filter(|n| !has.contains(n)).collect(),
        ..Corrections::default()
    }
}

#[cfg(test)]
mod tests;
