//! A day on which every item of a plan is due: what it asks of a person, and when.

use super::Item;
use crate::catalogue::Exercise;
use crate::id::ItemId;

/// One session of a full day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DueSession {
    /// When it is due, in minutes from midnight; 1440 and more are on the next day.
    pub minute: u16,
    /// Its item.
    pub item: ItemId,
    /// Duration of the whole dose with its rests, in seconds.
    pub seconds: u32,
}

/// The sessions of a day on which every item with due times is due, in order of time, and of the plan at the same time. Items whose
/// exercise is not among `exercises` are left out.
pub fn full_day(items: &[Item], exercises: &[Exercise]) -> Vec<DueSession> {
    let known = items.iter().filter(|item| exercises.iter().any(|exercise| exercise.id == item.exercise));
    let mut all: Vec<DueSession> = known
        .flat_map(|item| {
            let seconds = item.dose.total_s(item.side.sidedness());
            let minutes = item.schedule.pattern.minutes().into_iter();
            minutes.map(move |minute| DueSession { minute, item: item.id, seconds })
        })
        .collect();
    all.sort_by_key(|session| session.minute);
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::draft::{first, hourly};
    use crate::plan::{Pattern, Schedule};
    use crate::review::samples::{self, catalogue};

    #[test]
    fn sessions_come_by_time_and_those_at_the_same_time_in_the_order_of_the_plan() {
        let exercises = catalogue().exercises;
        let items = samples::plan().prescription.items;
        let mut draft = first(samples::plan().header.issued);
        let two: Vec<Item> = items.iter().take(2).cloned().collect();
        draft.prescription.items = two;
        let at = |times: &[u16]| Schedule { pattern: Pattern::At { times: times.to_vec() }, ..hourly() };
        let [first, second] = draft.prescription.items.as_mut_slice() else { panic!("two items") };
        first.schedule = at(&[600, 900]);
        second.schedule = at(&[480, 600]);
        let (first, second) = (first.clone(), second.clone());
        let day = full_day(&draft.prescription.items, &exercises);
        let told: Vec<(u16, ItemId)> = day.iter().map(|session| (session.minute, session.item)).collect();
        assert_eq!(told, [(480, second.id), (600, first.id), (600, second.id), (900, first.id)]);
        let seconds = 2 * first.dose.total_s(first.side.sidedness()) + 2 * second.dose.total_s(second.side.sidedness());
        assert_eq!(day.iter().map(|session| session.seconds).sum::<u32>(), seconds);
    }

    #[test]
    fn what_has_no_due_times_or_is_not_known_is_left_out() {
        let exercises = catalogue().exercises;
        let mut items = samples::plan().prescription.items;
        items.truncate(1);
        assert_eq!(full_day(&items, &[]), []);
        items[0].schedule.pattern = Pattern::AsNeeded;
        assert_eq!(full_day(&items, &exercises), []);
    }
}
