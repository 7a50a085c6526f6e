//! Items that a clinic prescribes often, put into a plan.

use super::Draft;
use crate::catalogue::Exercise;
use crate::id::ItemId;
use crate::plan::{Item, MAX_ITEMS};
use chrono::NaiveDate;

impl Draft {
    /// Adds these items at the end, each under a new number and for the complaint for which [`Draft::add`] would add it. One whose
    /// exercise is in the plan already, on the same level, side and days, is not added again. Returns those for which there was no room, or whose
    /// exercise or level is not among `exercises`.
    ///
    /// Their phases are those of a plan that begins on `start`, and become those of one that begins on the day of this one.
    pub fn add_items(&mut self, items: &[Item], start: NaiveDate, exercises: &[Exercise]) -> Vec<Item> {
        let mut left_out = Vec::new();
        let days = self.today.signed_duration_since(start).num_days();
        let items = items.iter().map(|item| Item { phase: item.phase.later(days), ..item.clone() });
        for item in items {
            let item = &item;
            let same = |other: &Item| {
                let named = (&other.exercise, &other.rung, other.side) == (&item.exercise, &item.rung, item.side);
                named && other.phase.overlaps(item.phase)
            };
            if self.prescription.items.iter().any(same) {
                continue;
            }
            let exercise = exercises.iter().find(|exercise| exercise.id == item.exercise);
            let fits = exercise.filter(|exercise| item.rung.as_ref().is_none_or(|rung| exercise.rung(rung).is_some()));
            match fits.and_then(|exercise| self.add_item(item, exercise)) {
                Some(_) => {}
                None => left_out.push(item.clone()),
            }
        }
        left_out
    }

    fn add_item(&mut self, item: &Item, exercise: &Exercise) -> Option<ItemId> {
        if self.prescription.items.len() >= MAX_ITEMS {
            return None;
        }
        let id = self.add(exercise)?;
        let today = self.today;
        let added = self.prescription.items.last_mut()?;
        let rung = item.rung.clone().or_else(|| added.rung.clone());
        *added = Item { id, content: exercise.revision, serves: added.serves, rung, ..item.clone() };
        added.schedule.days = added.schedule.days.counted_from(added.phase.first.unwrap_or(today));
        Some(id)
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{balance, day, empty, hold};
    use super::*;
    use crate::id::ComplaintId;
    use crate::plan::{Days as On, Phase, Side};
    use chrono::Days;

    fn set() -> Vec<Item> {
        let mut draft = empty();
        for exercise in [hold(), balance()] {
            draft.add(&exercise).expect("room");
        }
        draft.prescription.items[0].note = "slowly".into();
        draft.prescription.items
    }

    #[test]
    fn items_come_with_dose_times_and_note_under_new_numbers() {
        let mut draft = empty();
        draft.used.items = 7;
        assert_eq!(draft.add_items(&set(), day(11, 25), &[hold(), balance()]), []);
        let items = &draft.prescription.items;
        assert_eq!(items.iter().map(|item| item.id).collect::<Vec<_>>(), [ItemId(8), ItemId(9)]);
        for (item, of_set) in items.iter().zip(set()) {
            assert_eq!(Item { id: of_set.id, ..item.clone() }, of_set);
        }
    }

    #[test]
    fn what_is_in_the_plan_already_stays_as_it_is() {
        let mut draft = empty();
        draft.add(&hold()).expect("room");
        let before = draft.prescription.items.clone();
        assert_eq!(draft.add_items(&set(), day(11, 25), &[hold(), balance()]), []);
        assert_eq!((draft.prescription.items.len(), &draft.prescription.items[0]), (2, &before[0]));
        let other_leg: Vec<Item> = set().into_iter().skip(1).map(|item| Item { side: Side::Right, ..item }).collect();
        draft.add_items(&other_leg, day(11, 25), &[hold(), balance()]);
        assert_eq!(draft.prescription.items.len(), 3, "the other leg is something else");
    }

    #[test]
    fn days_are_counted_from_the_day_of_the_plan() {
        let mut set = set();
        set[0].schedule.days = On::EveryNth { n: 2, from: day(3, 4) };
        let mut draft = empty();
        draft.add_items(&set, day(11, 25), &[hold(), balance()]);
        assert_eq!(draft.prescription.items[0].schedule.days, On::EveryNth { n: 2, from: draft.today });
    }

    #[test]
    fn phases_lie_as_far_from_the_beginning_as_in_the_set() {
        let mut set = set();
        let start = day(3, 1);
        let week = |first, last| Phase { first: Some(start + Days::new(first)), last: Some(start + Days::new(last)) };
        set[0].phase = week(0, 6);
        set.push(Item { phase: week(7, 13), ..set[0].clone() });
        set[2].schedule.days = On::EveryNth { n: 2, from: start };
        let mut draft = empty();
        assert_eq!(draft.add_items(&set, start, &[hold(), balance()]), []);
        let [first, _, then] = draft.prescription.items.as_slice() else { panic!("all three") };
        let days = |item: &Item| [item.phase.first, item.phase.last].map(|day| day.expect("a day") - draft.today);
        assert_eq!([first, then].map(days), [[0, 6], [7, 13]].map(|days| days.map(chrono::Duration::days)));
        assert_eq!(then.schedule.days.begin(), then.phase.first, "counted from its first day");
    }

    #[test]
    fn an_item_is_for_the_only_complaint() {
        let mut draft = empty();
        let complaint: ComplaintId = draft.add_complaint().expect("room");
        draft.add_items(&set(), day(11, 25), &[hold(), balance()]);
        assert!(draft.prescription.items.iter().all(|item| item.serves == Some(complaint)));
    }

    #[test]
    fn what_is_unknown_and_what_has_no_room_is_left_out_and_named() {
        let mut draft = empty();
        let left_out = draft.add_items(&set(), day(11, 25), &[hold()]);
        assert_eq!(left_out, set()[1..]);
        let mut draft = empty();
        while draft.add(&hold()).is_some() {}
        assert_eq!(draft.add_items(&set()[1..], day(11, 25), &[hold(), balance()]), set()[1..]);
        let mut other = set();
        other[0].rung = Some(crate::catalogue::RungId::new("no-such-level").expect("an id"));
        assert_eq!(empty().add_items(&other[..1], day(11, 25), &[hold()]), other[..1]);
    }
}
