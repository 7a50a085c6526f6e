//! What a plan has that the one before it had not.

use super::{Item, Plan};
use crate::id::ItemId;

/// What became of an item from one plan to the next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ItemChange {
    /// It is new.
    New(ItemId),
    /// It is there no longer.
    Gone(ItemId),
    /// It is another exercise or another level.
    Level(ItemId),
    /// Dose, side, load, effort or the helper differ.
    Dose(ItemId),
    /// It is due at other times, or on other days.
    Times(ItemId),
    /// Something else about it differs, such as the limit of pain or the note.
    Else(ItemId),
}

/// What became of each item, in the order of the later plan; then the items that are there no longer. An item of which several things
/// differ is there several times.
pub fn item_changes(before: &Plan, after: &Plan) -> Vec<ItemChange> {
    let mut changes = Vec::new();
    for item in &after.prescription.items {
        match before.item(item.id) {
            None => changes.push(ItemChange::New(item.id)),
            Some(was) => changes.extend(of_item(was, item)),
        }
    }
    let gone = before.prescription.items.iter().filter(|item| after.item(item.id).is_none());
    changes.extend(gone.map(|item| ItemChange::Gone(item.id)));
    changes
}

fn of_item(was: &Item, is: &Item) -> Vec<ItemChange> {
    let id = is.id;
    let mut changes = Vec::new();
    if (&was.exercise, &was.rung) != (&is.exercise, &is.rung) {
        changes.push(ItemChange::Level(id));
    }
    let done = |item: &Item| (item.dose, item.side, item.load, item.effort, item.with_helper);
    if done(was) != done(is) {
        changes.push(ItemChange::Dose(id));
    }
    if (&was.schedule, was.phase) != (&is.schedule, is.phase) {
        changes.push(ItemChange::Times(id));
    }
    let other = |item: &Item| (item.content, item.pain_limit, item.may_step, item.serves, item.note.clone());
    if other(was) != other(is) {
        changes.push(ItemChange::Else(id));
    }
    changes
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Dose, ExerciseId, RungId};
    use crate::id::PlanId;
    use crate::plan::{Header, Phase, Prescription, Schedule};
    use chrono::NaiveDate;
    use std::collections::BTreeSet;

    fn item(id: u8) -> Item {
        let exercise = ExerciseId::new("wall-push-up").expect("an id");
        let dose = Dose::Stretch { repetitions: 3, stretch_s: 20, rest_s: 10 };
        Item::new(ItemId(id), exercise, dose, Schedule::AS_NEEDED)
    }

    fn plan(items: Vec<Item>) -> Plan {
        let day = NaiveDate::from_ymd_opt(2027, 3, 1).expect("a day");
        let header = Header::first(PlanId([1; 8]), "Linden Lane Practice", day);
        let prescription = Prescription {
            review: day,
            age: None,
            absent: BTreeSet::new(),
            confirmed: None,
            items,
            complaints: Vec::new(),
            activities: Vec::new(),
            baselines: Vec::new(),
            aftercare: Vec::new(),
            cleared: Vec::new(),
        };
        Plan { header, prescription }
    }

    #[test]
    fn what_is_new_gone_or_changed_is_told_and_nothing_else() {
        let before = plan(vec![item(1), item(2), item(3), item(4)]);
        assert_eq!(item_changes(&before, &before), []);
        let harder = Item { rung: Some(RungId::new("low").expect("an id")), with_helper: true, ..item(2) };
        let last = NaiveDate::from_ymd_opt(2027, 3, 9);
        let rarer = Item { phase: Phase { first: None, last }, ..item(3) };
        let noted = Item { note: "slowly".into(), ..item(1) };
        let after = plan(vec![harder, noted, rarer, item(5)]);
        let expected = [
            ItemChange::Level(ItemId(2)),
            ItemChange::Dose(ItemId(2)),
            ItemChange::Else(ItemId(1)),
            ItemChange::Times(ItemId(3)),
            ItemChange::New(ItemId(5)),
            ItemChange::Gone(ItemId(4)),
        ];
        assert_eq!(item_changes(&before, &after), expected);
    }
}
