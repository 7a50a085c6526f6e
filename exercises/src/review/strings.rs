//! Combines the slots of all devices, and makes the strings of the days from them.
//!
//! The same slot on two devices counts once, with the best mark: done, partly, skipped, day off, paused, not done. On a day
//! on which one device had a newer card than another, the newer card's slots count. What the device with the older card
//! recorded counts only for a slot of the newer card that is the same or at the same minute; the older card's other slots
//! were no longer due.

use super::{DayString, Knot};
use crate::adherence::{DoseUnit, SlotOn, target};
use crate::history::Mark;
use crate::id::{ItemId, LogId, RunId};
use crate::plan::{Item, Plan};
use crate::run::Share;
use crate::summary::union::United;
use crate::summary::{ItemDay, RunOn, RunTiming};
use crate::time::DayNumber;
use chrono::{Datelike, NaiveDate};
use std::collections::BTreeMap;

/// The slots of all devices combined, and the runs that were done for them.
pub(super) struct Strings {
    /// The slots by day, item, revision and number.
    pub slots: Vec<SlotOn>,
    /// The runs that were done for a slot, ascending.
    pub filling: Vec<(LogId, RunId)>,
}

/// What is known of a slot of which the patient chose the day: when it is due, the revision that asked for it, and what the devices
/// recorded.
pub(super) struct ChosenSlot {
    pub day: DayNumber,
    pub item: ItemId,
    pub revision: u16,
    pub told: Vec<Told>,
}

/// Identifies a slot: day, item, revision, number.
pub(super) type Place = (DayNumber, ItemId, u16, u8);

/// What one device recorded about a slot.
#[derive(Clone, Copy)]
pub(super) struct Told {
    log: LogId,
    number: u8,
    pub minute: u16,
    pub mark: Mark,
}

/// All slots but those of which the patient chooses the days, and what is known of these.
pub(super) fn at_fixed_days(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    start: NaiveDate,
) -> (Strings, Vec<ChosenSlot>) {
    let by_slot = runs_by_slot(united);
    let mut strings = Strings { slots: Vec::new(), filling: Vec::new() };
    let told = laid_over(united, revisions);
    let mut chosen: Vec<ChosenSlot> = Vec::new();
    for of_place in told.chunk_by(|(one, _), (other, _)| one == other) {
        let (place, earliest) = of_place[0];
        let (day, item, revision, _) = place;
        let told = || of_place.iter().map(|(_, told)| told);
        let Some(asked) = revisions.get(&revision).and_then(|plan| plan.item_on(item, day.date(start))) else { continue };
        if asked.schedule.days.are_chosen() {
            chosen.push(ChosenSlot { day, item, revision, told: told().copied().collect() });
            continue;
        }
        let Some(best) = told().map(|told| told.mark).reduce(better) else { continue };
        let mut runs: Vec<&RunOn> = Vec::new();
        let first = strings.filling.len();
        let device = |log| united.device(log);
        for (_, (log, run)) in told().flat_map(|told| by_slot.of((day, item, told.number, device(told.log)))) {
            // A log that was moved is in summaries under several ids, which report the same runs.
            if !strings.filling[first..].contains(&(*log, run.run)) {
                strings.filling.push((*log, run.run));
                runs.push(run);
            }
        }
        strings.slots.push(slot_on(place, earliest.minute, best, &runs, &asked, united, start));
    }
    strings.filling.sort_unstable();
    (strings, chosen)
}

/// A slot with the runs that were done for it.
pub(super) fn slot_on(
    (day, item, revision, number): Place,
    minute: u16,
    mark: Mark,
    runs: &[&RunOn],
    asked: &Item,
    united: &United<'_>,
    start: NaiveDate,
) -> SlotOn {
    let (unit, asked_for) = target(asked);
    let (dose, over) = dose(runs, asked_for);
    let acted = matches!(mark, Mark::Done | Mark::Partly(_) | Mark::Skipped(_));
    SlotOn {
        day,
        weekday: day.date(start).weekday().num_days_from_monday() as u8,
        seen: acted || united.seen.contains(&day),
        item,
        revision,
        number,
        minute,
        mark,
        written_in: written_in(mark, runs),
        dose,
        over,
        unit,
        timing: timing(mark, runs),
    }
}

/// Identifies a slot of one device: the day, the item, the slot's number, the device's first log.
type SlotName = (DayNumber, ItemId, u8, LogId);

/// The runs that were done for a slot, sorted by slot. A sorted list is used instead of a map, because two years have
/// thousands of slots with one run each.
struct BySlot<'a>(Vec<(SlotName, (LogId, &'a RunOn))>);

impl<'a> BySlot<'a> {
    fn of(&self, slot: SlotName) -> &[(SlotName, (LogId, &'a RunOn))] {
        let from = self.0.partition_point(|(other, _)| *other < slot);
        let many = self.0[from..].iter().take_while(|(other, _)| *other == slot).count();
        &self.0[from..from + many]
    }
}

fn runs_by_slot<'a>(united: &United<'a>) -> BySlot<'a> {
    let all = united.runs.iter();
    let named = all.filter_map(|((log, _), run)| Some(((run.day, run.item, run.slot?, united.device(*log)), (*log, *run))));
    let mut named: Vec<(SlotName, (LogId, &RunOn))> = named.collect();
    named.sort_by_key(|(slot, _)| *slot);
    BySlot(named)
}

/// What was recorded about each slot, sorted by slot. Slots of devices with an older card are assigned to those of the newer
/// card.
fn laid_over(united: &United<'_>, revisions: &BTreeMap<u16, Plan>) -> Vec<(Place, Told)> {
    let mut all: Vec<(Place, Told)> = Vec::new();
    let mut late: Vec<(Place, Told)> = Vec::new();
    for ((log, day, _), item_days) in &united.days {
        let list = if lags(united, *log, *day) { &mut late } else { &mut all };
        item_days.iter().for_each(|one| list.extend(told_of(united, revisions, *log, one)));
    }
    all.sort_by_key(|(place, _)| *place);
    if !late.is_empty() {
        let moved = late.into_iter().filter_map(|(place, told)| Some((onto(&all, place, told.minute)?, told)));
        let moved: Vec<(Place, Told)> = moved.collect();
        all.extend(moved);
        all.sort_by_key(|(place, _)| *place);
    }
    all
}

/// The newer card's slot to which the record of a device with an older card belongs: the same slot, or else the one at the
/// same minute. `None` if nothing is due then by the newer card.
fn onto(on_time: &[(Place, Told)], place: Place, minute: u16) -> Option<Place> {
    let day_and_item = (place.0, place.1);
    let from = on_time.partition_point(|(other, _)| (other.0, other.1) < day_and_item);
    let near = || on_time[from..].iter().take_while(|(other, _)| (other.0, other.1) == day_and_item);
    let same = near().find(|(other, _)| *other == place);
    same.or_else(|| near().find(|(_, told)| told.minute == minute)).map(|(place, _)| *place)
}

/// Whether `log` has an older card in force on `day` than another device that covers the day.
fn lags(united: &United<'_>, log: LogId, day: DayNumber) -> bool {
    let revision = |log: &LogId| united.logs.get(log).and_then(|of| of.in_force(day)).map(|taken| taken.revision);
    let own = revision(&log);
    let others = united.logs.iter().filter(|(other, of)| **other != log && of.covered.contains(&day));
    others.map(|(other, _)| revision(other)).any(|other| other > own)
}

fn told_of(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    log: LogId,
    one: &ItemDay,
) -> impl Iterator<Item = (Place, Told)> {
    let agreed = united.logs.get(&log).and_then(|of| {
        // Times may have been agreed again while the card was in force: those of an earlier day are the earlier ones.
        let of_card = || of.taken.iter().filter(|taken| taken.revision == one.revision);
        let taken = of_card().rfind(|taken| taken.day <= one.day).or_else(|| of_card().next())?;
        taken.agreed.iter().find(|(item, _)| *item == one.item).map(|(_, schedule)| schedule)
    });
    let of_plan = revisions.get(&one.revision).and_then(|plan| plan.item(one.item)).map(|item| &item.schedule);
    let minutes = agreed.or(of_plan).map(|schedule| schedule.pattern.minutes()).unwrap_or_default();
    one.slots.iter().filter_map(move |(number, mark)| {
        let minute = *minutes.get(usize::from(*number))?;
        let place = (one.day, one.item, one.revision, *number);
        Some((place, Told { log, number: *number, minute, mark: *mark }))
    })
}

pub(super) fn better(one: Mark, other: Mark) -> Mark {
    match (one, other) {
        (Mark::Partly(a), Mark::Partly(b)) => {
            let first = u64::from(a.done) * u64::from(b.of.max(1)) >= u64::from(b.done) * u64::from(a.of.max(1));
            if first { one } else { other }
        }
        _ if rank(one) <= rank(other) => one,
        _ => other,
    }
}

fn rank(mark: Mark) -> u8 {
    match mark {
        Mark::Done => 0,
        Mark::Partly(_) => 1,
        Mark::Skipped(_) => 2,
        Mark::DayOff(_) => 3,
        Mark::Paused => 4,
        Mark::NotDone => 5,
        Mark::NoSuchHour => 6,
        Mark::Due => 7,
        Mark::ToCome => 8,
    }
}

/// Whether the mark rests on a run that was written in afterwards: no run timed while it was done reaches it.
fn written_in(mark: Mark, runs: &[&RunOn]) -> bool {
    let timed = |run: &&&RunOn| run.live && (mark != Mark::Done || run.parts.full());
    matches!(mark, Mark::Done | Mark::Partly(_)) && runs.iter().any(|run| !run.live) && !runs.iter().any(|run| timed(&run))
}

/// When the slot was done: of several runs the one that was soonest.
pub(super) fn timing(mark: Mark, runs: &[&RunOn]) -> RunTiming {
    let full = runs.iter().filter(|run| mark != Mark::Done || run.parts.full());
    full.map(|run| run.timing).min().unwrap_or(RunTiming::InTime)
}

/// The dose of all runs for a slot, at most the prescribed dose, and the amount done beyond it. Runs that were written in
/// afterwards are not added to timed ones, because they describe the same work.
fn dose(runs: &[&RunOn], asked_for: u32) -> (Share, u32) {
    let timed = runs.iter().any(|run| run.live);
    let told = runs.iter().filter(|run| run.live || !timed);
    let of = runs.iter().map(|run| run.dose.of).max().filter(|of| *of > 0).unwrap_or(asked_for);
    let done = told.fold(0u32, |sum, run| sum.saturating_add(run.dose.done));
    (Share { done: done.min(of), of }, done.saturating_sub(of))
}

/// One string for each day from the first to the last day that any summary covers; `slots` must be sorted by day.
pub(super) fn day_strings(united: &United<'_>, slots: &[SlotOn], start: NaiveDate) -> Vec<DayString> {
    let (Some(first), Some(last)) = (united.covered.first(), united.covered.last()) else { return Vec::new() };
    let knot = |slot: &SlotOn| Knot { item: slot.item, number: slot.number, minute: slot.minute, mark: slot.mark };
    let mut days = slots.chunk_by(|one, other| one.day == other.day).peekable();
    let all = first.through(*last).map(|day| {
        while days.next_if(|slots| slots[0].day < day).is_some() {}
        let today = days.next_if(|slots| slots[0].day == day);
        let mut knots: Vec<Knot> = today.into_iter().flatten().map(knot).collect();
        knots.sort_by_key(|knot| (knot.minute, knot.item, knot.number));
        let date = day.date(start);
        DayString { day, date, seen: united.seen.contains(&day), knots }
    });
    all.collect()
}

/// The unit of an item's dose, from the newest revision that has the item.
pub(super) fn unit_of(revisions: &BTreeMap<u16, Plan>, item: ItemId) -> DoseUnit {
    let newest = revisions.values().rev().find_map(|plan| plan.item(item));
    newest.map_or(DoseUnit::Repetitions, |item| target(item).0)
}
