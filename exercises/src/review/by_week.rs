//! How each item was followed in each week, from Monday to Sunday: as a medical record wants it, which takes no single sessions.

use super::Review;
use crate::history::Mark;
use crate::id::ItemId;
use crate::plan::days::monday;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// The slots of one item in one week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ItemWeek {
    /// The item.
    pub item: ItemId,
    /// The Monday that begins the week.
    pub monday: NaiveDate,
    /// What became of the slots.
    pub slots: WeekSlots,
}

/// Slots of a week by what became of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct WeekSlots {
    /// Asked for and over: done, in part, skipped or not done.
    pub owed: u32,
    /// Of those, done in full.
    pub done: u32,
    /// Of those, done in part.
    pub partly: u32,
    /// Of those, not done on days without any record.
    pub unrecorded: u32,
    /// On a day off, and not done.
    pub day_off: u32,
    /// Paused by an alarm: not asked for.
    pub paused: u32,
}

impl WeekSlots {
    /// The share done in full of those owed, in tenths of a percent; `None` if none was owed.
    pub fn done_permille(&self) -> Option<u32> {
        let rounded = u64::from(self.done) * 1000 + u64::from(self.owed) / 2;
        rounded.checked_div(self.owed.into()).and_then(|share| u32::try_from(share).ok())
    }

    fn add(&mut self, mark: Mark, seen: bool) {
        match mark {
            Mark::Done => self.done += 1,
            Mark::Partly(_) => self.partly += 1,
            Mark::NotDone if !seen => self.unrecorded += 1,
            Mark::Skipped(_) | Mark::NotDone => {}
            Mark::DayOff(_) => self.day_off += 1,
            Mark::Paused => self.paused += 1,
            Mark::Due | Mark::ToCome | Mark::NoSuchHour => {}
        }
        self.owed += u32::from(matches!(mark, Mark::Done | Mark::Partly(_) | Mark::Skipped(_) | Mark::NotDone));
    }
}

/// The weeks of each item in which it had slots, by item and then by week. Items that are done as needed have none.
pub fn item_weeks(review: &Review) -> Vec<ItemWeek> {
    let mut weeks: BTreeMap<(ItemId, NaiveDate), WeekSlots> = BTreeMap::new();
    for day in &review.days {
        let begins = monday(day.date);
        for knot in &day.knots {
            weeks.entry((knot.item, begins)).or_default().add(knot.mark, day.seen);
        }
    }
    weeks.into_iter().map(|((item, monday), slots)| ItemWeek { item, monday, slots }).collect()
}

#[cfg(test)]
mod tests {
    use super::super::samples::{self, BALANCE, HOLD};
    use super::*;
    use crate::log::{Barrier, DayOffReason};
    use crate::review::{DayString, Knot, build};
    use crate::run::Share;
    use crate::time::DayNumber;
    use std::collections::BTreeMap as Map;

    /// A review of these days with these marks of one item, in a plan that began on a Wednesday.
    fn review(days: &[(u16, bool, &[Mark])]) -> Review {
        let plan = samples::plan();
        let summaries = [samples::summary(samples::PHONE, 1, 0, 0)];
        let mut review = build(&Map::from([(1, plan)]), &samples::catalogue(), &summaries).expect("a summary");
        review.start = NaiveDate::from_ymd_opt(2027, 3, 3).expect("a Wednesday");
        let knot = |mark: &Mark| Knot { item: HOLD, number: 0, minute: 540, mark: *mark };
        review.days = days
            .iter()
            .map(|(day, seen, marks)| DayString {
                day: DayNumber(*day),
                date: DayNumber(*day).date(review.start),
                seen: *seen,
                knots: marks.iter().map(knot).collect(),
            })
            .collect();
        review.until = DayNumber(days.last().map_or(0, |(day, ..)| *day));
        review
    }

    #[test]
    fn each_mark_is_counted_once_and_what_was_not_asked_for_is_not_owed() {
        let marks = [
            Mark::Done,
            Mark::Partly(Share { done: 1, of: 3 }),
            Mark::Skipped(Barrier::Forgot),
            Mark::NotDone,
            Mark::DayOff(DayOffReason::Ill),
            Mark::Paused,
            Mark::NoSuchHour,
            Mark::ToCome,
        ];
        let weeks = item_weeks(&review(&[(0, true, &marks), (1, false, &[Mark::NotDone])]));
        let slots = WeekSlots { owed: 5, done: 1, partly: 1, unrecorded: 1, day_off: 1, paused: 1 };
        assert_eq!(weeks.iter().map(|week| week.slots).collect::<Vec<_>>(), [slots]);
        assert_eq!(slots.done_permille(), Some(200));
    }

    #[test]
    fn weeks_go_from_monday_to_sunday() {
        let weeks = item_weeks(&review(&[(0, true, &[Mark::Done]), (4, true, &[Mark::Done]), (5, true, &[Mark::Done])]));
        let monday = |day| NaiveDate::from_ymd_opt(2027, 3, day).expect("a Monday");
        let told: Vec<_> = weeks.iter().map(|week| (week.monday, week.slots.done)).collect();
        assert_eq!(told, [(monday(1), 2), (monday(8), 1)]);
    }

    #[test]
    fn a_week_in_which_nothing_was_owed_has_no_share() {
        let weeks = item_weeks(&review(&[(0, true, &[Mark::Paused])]));
        assert_eq!(weeks[0].slots.done_permille(), None);
        assert!(weeks.iter().all(|week| week.item != BALANCE));
        let third = WeekSlots { owed: 3, done: 2, ..WeekSlots::default() };
        assert_eq!(third.done_permille(), Some(667));
    }
}
