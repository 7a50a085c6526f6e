//! Slots of which the patient chooses the days.
//!
//! Rule (a proposal of ours): each day of the week, from Monday to Sunday by the wall clock of the place, counts once: a second session on
//! one day is an extra one, because the days between are for recovering. A day with a session takes the slot of that day, else one that was
//! missed earlier in the week, the earliest first, else the next one that comes; a slot that was skipped or is excused comes last. If there
//! were more days with a session than slots, days on which the whole dose was done come first, then the earlier ones.

use super::part;
use crate::plan::{Days, Item, Weekdays, days};
use crate::time::{Offsets, Stamp, days_since_1970};
use chrono::{Datelike, NaiveDate};

/// The week of a slot of which the patient chooses the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Week {
    /// Its Monday.
    pub monday: NaiveDate,
    /// The days on which the item's slots of this week are due.
    pub slots: Weekdays,
    /// When the week, or the plan within it, is over.
    pub ends: Stamp,
}

/// A slot of a week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WeekSlot {
    /// The day on which it is due.
    pub day: NaiveDate,
    /// Whether it was neither skipped nor excused.
    pub wanted: bool,
}

/// A day of a week with a session.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SessionDay {
    /// The day.
    pub day: NaiveDate,
    /// Whether the whole dose was done.
    pub full: bool,
}

impl Week {
    /// The week of `day`, if the patient chooses the days of `item`, in a plan that ends on `until`.
    pub(super) fn of(item: &Item, until: Option<NaiveDate>, day: NaiveDate, zone: &Offsets) -> Option<Week> {
        let Days::TimesAWeek { n, from } = item.days() else { return None };
        let until = item.phase.ends(until);
        let monday = days::monday(day);
        let sunday = days_since_1970(monday) + 6;
        let last = until.map_or(sunday, |until| days_since_1970(until).min(sunday));
        Some(Week { monday, slots: days::of_week(n, day, from, until), ends: part::begins(last + 1, zone) })
    }

    /// The dates of its slots.
    pub fn days(&self) -> impl Iterator<Item = NaiveDate> {
        self.monday.iter_days().take(7).filter(|day| self.slots.contains(day.weekday()))
    }

    /// Whether `day` is in it.
    pub fn contains(&self, day: NaiveDate) -> bool {
        days::monday(day) == self.monday
    }
}

/// For each slot the place in `sessions` of the day that counts for it. Both lists are of one week, ascending, each day once.
pub fn assign(slots: &[WeekSlot], sessions: &[SessionDay]) -> Vec<Option<usize>> {
    let mut places: Vec<usize> = (0..sessions.len()).collect();
    places.sort_by_key(|place| (!sessions[*place].full, *place));
    places.truncate(slots.len());
    places.sort_unstable();
    let mut taken: Vec<Option<usize>> = vec![None; slots.len()];
    places.retain(|place| {
        let own = slots.iter().position(|slot| slot.day == sessions[*place].day);
        own.is_none_or(|own| taken[own].replace(*place).is_some())
    });
    for place in places {
        let day = sessions[place].day;
        let free = slots.iter().enumerate().filter(|(of, _)| taken[*of].is_none());
        let next = free.min_by_key(|(of, slot)| (!slot.wanted, slot.day > day, *of)).map(|(of, _)| of);
        if let Some(next) = next {
            taken[next] = Some(place);
        }
    }
    taken
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::Duration;

    fn day(place: i64) -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 3, 1).expect("a Monday") + Duration::days(place)
    }

    /// The places in the week of the sessions that count for slots on Monday, Wednesday and Friday.
    fn counted(done: &[i64]) -> [Option<i64>; 3] {
        counted_but(&[], &[], done)
    }

    fn counted_but(unwanted: &[i64], partly: &[i64], done: &[i64]) -> [Option<i64>; 3] {
        let slots = [0, 2, 4].map(|place| WeekSlot { day: day(place), wanted: !unwanted.contains(&place) });
        let sessions: Vec<SessionDay> =
            done.iter().map(|place| SessionDay { day: day(*place), full: !partly.contains(place) }).collect();
        let of: Vec<Option<i64>> = assign(&slots, &sessions).into_iter().map(|of| of.map(|place| done[place])).collect();
        [of[0], of[1], of[2]]
    }

    #[test]
    fn a_session_takes_the_slot_of_its_day() {
        assert_eq!(counted(&[0, 2, 4]), [Some(0), Some(2), Some(4)]);
        assert_eq!(counted(&[4]), [None, None, Some(4)]);
        assert_eq!(counted(&[]), [None; 3]);
    }

    #[test]
    fn a_session_on_another_day_takes_a_missed_slot_first_and_then_the_next() {
        assert_eq!(counted(&[1]), [Some(1), None, None]);
        assert_eq!(counted(&[0, 1]), [Some(0), Some(1), None]);
        assert_eq!(counted(&[1, 2]), [Some(1), Some(2), None]);
        assert_eq!(counted(&[1, 3, 5]), [Some(1), Some(3), Some(5)]);
        assert_eq!(counted(&[4, 5, 6]), [Some(5), Some(6), Some(4)]);
        assert_eq!(counted(&[0, 1, 2]), [Some(0), Some(2), Some(1)]);
    }

    #[test]
    fn more_sessions_than_slots_are_extra_and_the_whole_dose_comes_first() {
        assert_eq!(counted(&[0, 1, 2, 3, 4]), [Some(0), Some(2), Some(1)]);
        assert_eq!(counted_but(&[], &[0, 1], &[0, 1, 2, 3, 4]), [Some(3), Some(2), Some(4)]);
        assert_eq!(counted_but(&[], &[1], &[1]), [Some(1), None, None], "a part is a part of one slot");
    }

    #[test]
    fn what_was_skipped_or_is_excused_is_filled_last() {
        assert_eq!(counted_but(&[0], &[], &[1]), [None, Some(1), None]);
        assert_eq!(counted_but(&[0], &[], &[1, 3, 5]), [Some(5), Some(1), Some(3)]);
    }
}
