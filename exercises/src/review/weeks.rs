//! Slots of which the patient chooses the days, combined over all devices.
//!
//! Each device counted its own sessions only. Here the sessions of all devices count anew, each day once, by the rule in
//! [`crate::slots::week`]: the same session that two devices recorded counts once, and sessions on two devices count for two slots.

use super::strings::{self, ChosenSlot, Strings};
use crate::adherence::SlotOn;
use crate::history::Mark;
use crate::id::{ItemId, LogId, RunId};
use crate::plan::{Item, Plan, days::monday};
use crate::slots::week::{SessionDay, WeekSlot, assign};
use crate::summary::union::United;
use crate::summary::{RunOn, RunTiming};
use crate::time::DayNumber;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// A run with its name.
type Named<'a> = ((LogId, RunId), &'a RunOn);

/// The slots of all devices combined.
pub(super) fn strings(united: &United<'_>, revisions: &BTreeMap<u16, Plan>, start: NaiveDate) -> Strings {
    let (mut all, chosen) = strings::at_fixed_days(united, revisions, start);
    if !chosen.is_empty() {
        add(&mut all, &chosen, united, revisions, start);
        all.filling.sort_unstable();
        all.slots.sort_by_key(|slot| (slot.day, slot.item, slot.revision, slot.number));
    }
    all
}

/// Adds the slots of all weeks to `strings`, which holds all other slots.
fn add(
    strings: &mut Strings,
    chosen: &[ChosenSlot],
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    start: NaiveDate,
) {
    let mut weeks: BTreeMap<(ItemId, NaiveDate), BTreeMap<DayNumber, &ChosenSlot>> = BTreeMap::new();
    for slot in chosen {
        // Of two cards on one day the later one counts.
        weeks.entry((slot.item, monday(slot.day.date(start)))).or_default().insert(slot.day, slot);
    }
    let other = strings.filling.clone();
    for ((item, week), slots) in weeks {
        let slots: Vec<&ChosenSlot> = slots.into_values().collect();
        let mut runs: BTreeMap<DayNumber, Vec<Named<'_>>> = BTreeMap::new();
        let of_week = |run: &RunOn| run.item == item && monday(run.day.date(start)) == week;
        for (name, run) in united.runs.iter().filter(|(name, run)| of_week(run) && other.binary_search(name).is_err()) {
            runs.entry(run.day).or_default().push((*name, *run));
        }
        let full = |runs: &[Named<'_>]| runs.iter().any(|(_, run)| run.parts.full());
        let sessions: Vec<SessionDay> =
            runs.iter().map(|(day, runs)| SessionDay { day: day.date(start), full: full(runs) }).collect();
        let wanted: Vec<WeekSlot> = slots
            .iter()
            .map(|slot| WeekSlot {
                day: slot.day.date(start),
                wanted: !matches!(undone(slot), Some(Mark::Skipped(_) | Mark::DayOff(_))),
            })
            .collect();
        let days: Vec<&Vec<Named<'_>>> = runs.values().collect();
        for (slot, session) in slots.iter().zip(assign(&wanted, &sessions)) {
            let of_day: &[Named<'_>] = session.map(|place| days[place].as_slice()).unwrap_or_default();
            let date = slot.day.date(start);
            let Some(asked) = revisions.get(&slot.revision).and_then(|plan| plan.item_on(item, date)) else { continue };
            let Some(known) = slot_on(slot, of_day, &asked, united, start) else { continue };
            strings.filling.extend(of_day.iter().map(|(name, _)| *name));
            strings.slots.push(known);
        }
    }
}

/// What the devices say of a slot that no session counts for; `None` if for none of them it is over.
fn undone(slot: &ChosenSlot) -> Option<Mark> {
    let marks = slot.told.iter().map(|told| told.mark).filter(|mark| !matches!(mark, Mark::Done | Mark::Partly(_)));
    marks.reduce(strings::better)
}

fn slot_on(slot: &ChosenSlot, runs: &[Named<'_>], asked: &Item, united: &United<'_>, start: NaiveDate) -> Option<SlotOn> {
    let shares = runs.iter().map(|(_, run)| run.parts);
    let done = shares.map(|share| if share.full() { Mark::Done } else { Mark::Partly(share) }).reduce(strings::better);
    let nothing = |mark: &Mark| matches!(mark, Mark::Partly(share) if share.done == 0);
    let mark = match done {
        Some(mark) if nothing(&mark) => undone(slot).filter(|mark| matches!(mark, Mark::Skipped(_))).or(Some(mark)),
        Some(mark) => Some(mark),
        None => undone(slot),
    }?;
    let runs: Vec<&RunOn> = runs.iter().map(|(_, run)| *run).collect();
    let other_day = runs.iter().any(|run| run.day != slot.day);
    let on_its_day = Some(strings::timing(mark, &runs)).filter(|timing| *timing != RunTiming::Moved);
    let timing = if other_day { RunTiming::Moved } else { on_its_day.unwrap_or(RunTiming::InTime) };
    let place = (slot.day, slot.item, slot.revision, 0);
    let minute = slot.told.first()?.minute;
    Some(SlotOn { timing, ..strings::slot_on(place, minute, mark, &runs, asked, united, start) })
}
