//! The slots of all devices laid over each other, and the days' strings.
//!
//! Rule: the same slot on two devices counts once, with the best mark: done, partly, left out, excused, held back, passed by.
//! A device that still had an older card on a day that a device with the newer card also covers only fills the newer card's
//! slots of the same minute: what the older card asked for beyond it was no longer asked for.

use super::union::United;
use super::{DayString, Knot};
use crate::adherence::{DoseUnit, SlotOn, target};
use crate::history::Mark;
use crate::id::{ItemId, LogId, RunId};
use crate::plan::Plan;
use crate::run::Share;
use crate::summary::{ItemDay, RunOn};
use chrono::{Datelike, Duration, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};

/// The slots of all devices together, and the runs that filled them.
pub(super) struct Strings {
    pub slots: Vec<SlotOn>,
    pub filling: BTreeSet<(LogId, RunId)>,
}

/// A slot's place: day, item, revision, number.
type Place = (u16, ItemId, u16, u8);

/// What one device says of a slot.
#[derive(Clone, Copy)]
struct Told {
    log: LogId,
    number: u8,
    minute: u16,
    mark: Mark,
}

pub(super) fn strings(united: &United, revisions: &BTreeMap<u16, Plan>, start: NaiveDate) -> Strings {
    let by_slot = runs_by_slot(united);
    let mut strings = Strings { slots: Vec::new(), filling: BTreeSet::new() };
    for ((day, item, revision, number), told) in laid_over(united, revisions) {
        let Some(asked) = revisions.get(&revision).and_then(|plan| plan.item(item)) else { continue };
        let Some(best) = told.iter().map(|told| told.mark).reduce(better) else { continue };
        let of_slot = |told: &Told| by_slot.get(&(told.log, day, item, told.number)).into_iter().flatten();
        strings.filling.extend(told.iter().flat_map(of_slot).map(|(log, run)| (*log, run.run)));
        let runs: Vec<&RunOn> = told.iter().flat_map(of_slot).map(|(_, run)| *run).collect();
        let (unit, asked_for) = target(asked);
        let (dose, over) = dose(&runs, asked_for);
        let acted = matches!(best, Mark::Done | Mark::Partly(_) | Mark::LeftOut(_));
        strings.slots.push(SlotOn {
            day,
            weekday: (start + Duration::days(i64::from(day))).weekday().num_days_from_monday() as u8,
            seen: acted || united.seen.contains(&day),
            item,
            revision,
            number,
            minute: told.first().map_or(0, |told| told.minute),
            mark: best,
            written_in: written_in(best, &runs),
            dose,
            over,
            unit,
        });
    }
    strings
}

type BySlot<'a> = BTreeMap<(LogId, u16, ItemId, u8), Vec<(LogId, &'a RunOn)>>;

fn runs_by_slot(united: &United) -> BySlot<'_> {
    let mut by_slot = BySlot::new();
    for ((log, _), run) in &united.runs {
        if let Some(number) = run.slot {
            by_slot.entry((*log, run.day, run.item, number)).or_default().push((*log, run));
        }
    }
    by_slot
}

/// All that is told of each slot, with the lagging devices' slots moved onto the newer card's.
fn laid_over(united: &United, revisions: &BTreeMap<u16, Plan>) -> BTreeMap<Place, Vec<Told>> {
    let mut places: BTreeMap<Place, Vec<Told>> = BTreeMap::new();
    let mut late: Vec<(Place, Told)> = Vec::new();
    for ((log, day, item), item_days) in &united.days {
        let lagging = lags(united, *log, *day);
        for (place, told) in item_days.iter().flat_map(|one| told_of(united, revisions, *log, one)) {
            debug_assert_eq!((place.0, place.1), (*day, *item));
            if lagging { late.push((place, told)) } else { places.entry(place).or_default().push(told) }
        }
    }
    for (place, told) in late {
        let same_minute = |(other, known): &(&Place, &Vec<Told>)| {
            (other.0, other.1) == (place.0, place.1) && known.iter().any(|known| known.minute == told.minute)
        };
        let onto = if places.contains_key(&place) {
            Some(place)
        } else {
            let day_and_item = (place.0, place.1, 0, 0)..=(place.0, place.1, u16::MAX, u8::MAX);
            places.range(day_and_item).find(same_minute).map(|(other, _)| *other)
        };
        if let Some(known) = onto.and_then(|onto| places.get_mut(&onto)) {
            known.push(told);
        }
    }
    places
}

/// Whether `log` still has an older card on `day` than another device that covers the day.
fn lags(united: &United, log: LogId, day: u16) -> bool {
    let revision = |log: &LogId| united.logs.get(log).and_then(|of| of.in_force(day)).map(|taken| taken.revision);
    let own = revision(&log);
    let others = united.logs.iter().filter(|(other, of)| **other != log && of.covered.contains(&day));
    others.map(|(other, _)| revision(other)).any(|other| other > own)
}

fn told_of(united: &United, revisions: &BTreeMap<u16, Plan>, log: LogId, one: &ItemDay) -> Vec<(Place, Told)> {
    let agreed = united.logs.get(&log).and_then(|of| {
        let taken = of.taken.iter().rfind(|taken| taken.revision == one.revision)?;
        taken.agreed.iter().find(|(item, _)| *item == one.item).map(|(_, schedule)| schedule)
    });
    let of_plan = revisions.get(&one.revision).and_then(|plan| plan.item(one.item)).map(|item| &item.schedule);
    let minutes = agreed.or(of_plan).map(|schedule| schedule.pattern.minutes()).unwrap_or_default();
    let placed = one.slots.iter().filter_map(|(number, mark)| {
        let minute = *minutes.get(usize::from(*number))?;
        let place = (one.day, one.item, one.revision, *number);
        Some((place, Told { log, number: *number, minute, mark: *mark }))
    });
    placed.collect()
}

fn better(one: Mark, other: Mark) -> Mark {
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
        Mark::LeftOut(_) => 2,
        Mark::Excused(_) => 3,
        Mark::HeldBack => 4,
        Mark::PassedBy => 5,
        Mark::NoSuchHour => 6,
        Mark::Due => 7,
        Mark::ToCome => 8,
    }
}

/// Whether no run that was timed reaches what the mark says.
fn written_in(mark: Mark, runs: &[&RunOn]) -> bool {
    let timed = |run: &&&RunOn| run.live && (mark != Mark::Done || run.parts.full());
    matches!(mark, Mark::Done | Mark::Partly(_)) && runs.iter().any(|run| !run.live) && !runs.iter().any(|run| timed(&run))
}

/// The dose of all runs in a slot, capped, and what went beyond. Entries written in do not add to timed ones: they tell of
/// the same doing.
fn dose(runs: &[&RunOn], asked_for: u32) -> (Share, u32) {
    let timed = runs.iter().any(|run| run.live);
    let told = runs.iter().filter(|run| run.live || !timed);
    let of = runs.iter().map(|run| run.dose.of).max().filter(|of| *of > 0).unwrap_or(asked_for);
    let done = told.fold(0u32, |sum, run| sum.saturating_add(run.dose.done));
    (Share { done: done.min(of), of }, done.saturating_sub(of))
}

/// One string a day from the first to the last day that any summary covers.
pub(super) fn day_strings(united: &United, slots: &[SlotOn], start: NaiveDate) -> Vec<DayString> {
    let (Some(first), Some(last)) = (united.covered.first(), united.covered.last()) else { return Vec::new() };
    let mut knots: BTreeMap<u16, Vec<Knot>> = BTreeMap::new();
    for slot in slots {
        let knot = Knot { item: slot.item, number: slot.number, minute: slot.minute, mark: slot.mark };
        knots.entry(slot.day).or_default().push(knot);
    }
    let all = (*first..=*last).map(|day| {
        let mut knots = knots.remove(&day).unwrap_or_default();
        knots.sort_by_key(|knot| (knot.minute, knot.item, knot.number));
        let date = start + Duration::days(i64::from(day));
        DayString { day, date, seen: united.seen.contains(&day), knots }
    });
    all.collect()
}

/// The unit of an item's dose, from the newest revision that has it.
pub(super) fn unit_of(revisions: &BTreeMap<u16, Plan>, item: ItemId) -> DoseUnit {
    let newest = revisions.values().rev().find_map(|plan| plan.item(item));
    newest.map_or(DoseUnit::Repetitions, |item| target(item).0)
}
