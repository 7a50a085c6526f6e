//! When an item, its level or its dose last changed.

use super::in_use::same;
use crate::plan::{Item, Plan};
use crate::summary::RunOn;
use crate::summary::union::United;
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// The day since which `item` is done as it is now: when a device took the first card that has it with this level, dose and load, or when the
/// patient stepped to it.
pub(super) fn last_change(united: &United<'_>, revisions: &BTreeMap<u16, Plan>, planned: &Item, in_use: &Item) -> DayNumber {
    let by_card = first_card(revisions, planned).and_then(|revision| taken_on(united, revision)).unwrap_or_default();
    by_card.max(stepped_on(united, in_use).unwrap_or_default())
}

/// The revision of the first card of the unbroken run of cards up to the newest that have the item with this level, dose and load. What the
/// calendar raised is no change.
fn first_card(revisions: &BTreeMap<u16, Plan>, planned: &Item) -> Option<u16> {
    let mut cards = revisions.values().rev();
    let mut first = cards.by_ref().find(|plan| plan.item(planned.id).is_some())?;
    for before in cards {
        let reached = before.item_on(planned.id, first.header.issued);
        if !reached.zip(first.item(planned.id)).is_some_and(|(one, other)| is_same(&one, other)) {
            break;
        }
        first = before;
    }
    Some(first.header.revision)
}

fn is_same(one: &Item, other: &Item) -> bool {
    let done = |item: &Item| (item.dose, item.load);
    (&one.exercise, &one.rung, done(one)) == (&other.exercise, &other.rung, done(other))
}

/// The first day on which any device took that card or a later one.
fn taken_on(united: &United<'_>, revision: u16) -> Option<DayNumber> {
    let taken = united.logs.values().flat_map(|of_log| &of_log.taken).filter(|taken| taken.revision >= revision);
    taken.map(|taken| taken.day).min()
}

/// The first day of the last unbroken stretch of runs at the item's rung and dose, if others came before it.
fn stepped_on(united: &United<'_>, item: &Item) -> Option<DayNumber> {
    let mut runs: Vec<&RunOn> = united.runs.values().copied().filter(|run| run.item == item.id).collect();
    runs.sort_by_key(|run| run.day);
    let other = runs.iter().rposition(|run| !same(item, run))?;
    runs.get(other + 1).map(|run| run.day)
}
