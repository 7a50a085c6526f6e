//! The longest period in which nothing was done, and the last day on which something was done.
//!
//! Rule (our design): only days on which the item was asked for count; days off and days paused by an alarm are removed. The gap is
//! the longest unbroken sequence of days on which nothing was done, not even in part; of two equal ones, the later. Days without any
//! record belong to it, and their number is given.

use super::days::by_day;
use super::{SlotCounts, SlotOn};
use crate::time::DayNumber;

/// A period in which nothing was done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Gap {
    /// Number of days on which the item was asked for.
    pub days: u16,
    /// Number of those days without any record.
    pub unrecorded: u16,
    /// Number of the first day.
    pub from: DayNumber,
    /// Number of the last day.
    pub until: DayNumber,
}

/// The longest period in which nothing was done; `None` if something was done on every day.
pub fn longest_gap(slots: &[SlotOn]) -> Option<Gap> {
    let mut longest: Option<Gap> = None;
    let mut open: Option<Gap> = None;
    for (day, counts) in by_day(slots).into_iter().filter(|(_, counts)| counts.owed() > 0) {
        if any_done(&counts) {
            open = None;
            continue;
        }
        let gap = open.get_or_insert(Gap { days: 0, unrecorded: 0, from: day, until: day });
        gap.days = gap.days.saturating_add(1);
        gap.unrecorded = gap.unrecorded.saturating_add(u16::from(counts.unrecorded == counts.owed()));
        gap.until = day;
        if longest.is_none_or(|longest| gap.days >= longest.days) {
            longest = Some(*gap);
        }
    }
    longest
}

/// The last day on which anything was done, in part or in full.
pub fn last_done(slots: &[SlotOn]) -> Option<DayNumber> {
    by_day(slots).into_iter().rev().find(|(_, counts)| any_done(counts)).map(|(day, _)| day)
}

fn any_done(counts: &SlotCounts) -> bool {
    counts.all_done() > 0 || counts.partly > 0
}

#[cfg(test)]
mod tests {
    use super::super::samples::{DAY_OFF, PARTLY, day, share_of_day, unseen};
    use super::*;
    use crate::history::Mark;

    fn days(marks: &[Mark]) -> Vec<SlotOn> {
        marks.iter().enumerate().flat_map(|(number, mark)| day(number as u16, &[*mark])).collect()
    }

    #[test]
    fn the_longest_gap_counts_and_the_later_of_equal_ones() {
        let (done, not) = (Mark::Done, Mark::NotDone);
        let gap = longest_gap(&days(&[not, not, done, not, not, done, not])).expect("a gap");
        assert_eq!(gap, Gap { days: 2, unrecorded: 0, from: DayNumber(3), until: DayNumber(4) });
        assert_eq!(longest_gap(&days(&[done, PARTLY, done])), None, "a part is something");
    }

    #[test]
    fn days_off_and_paused_days_neither_break_nor_lengthen_the_gap() {
        let not = Mark::NotDone;
        let gap = longest_gap(&days(&[Mark::Done, not, DAY_OFF, Mark::Paused, not, Mark::Done])).expect("a gap");
        assert_eq!(gap, Gap { days: 2, unrecorded: 0, from: DayNumber(1), until: DayNumber(4) });
    }

    #[test]
    fn days_without_a_record_belong_to_the_gap_and_are_counted() {
        let mut slots = share_of_day(0, 1, 1);
        slots.extend(share_of_day(1, 0, 1));
        slots.extend(unseen(share_of_day(2, 0, 1)));
        assert_eq!(longest_gap(&slots), Some(Gap { days: 2, unrecorded: 1, from: DayNumber(1), until: DayNumber(2) }));
    }

    #[test]
    fn the_last_day_with_anything_done() {
        assert_eq!(last_done(&days(&[Mark::Done, PARTLY, Mark::NotDone])), Some(DayNumber(1)));
        assert_eq!(last_done(&days(&[Mark::NotDone])), None);
    }
}
