//! Days kept out of the days asked for.
//!
//! Rule (our design, after the frequency parameter of Bailey 2020, Br J Sports Med 54:326-331): a day is kept if 80 % or more of its
//! owed slots were done in full. Days without any record are among them and are also counted apart, as are days off.

use super::{AS_AGREED_PERCENT, KofN, SlotCounts, SlotOn};
use crate::saturating::at_most;
use crate::time::DayNumber;

/// Days kept out of the days asked for, and the days that are counted separately.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DayCounts {
    /// Days kept of days on which anything was owed; `None` if there is no such day.
    pub kept: Option<KofN>,
    /// Number of those days on which nothing was done at all.
    pub nothing_done: u16,
    /// Number of those days for which no device has an entry.
    pub unrecorded: u16,
    /// Number of days on which every slot that counts was on a day off.
    #[cfg_attr(feature = "serde", serde(rename = "excused"))]
    pub days_off: u16,
}

/// The counts of each day, in order of days. Slots may come in any order.
pub(crate) fn by_day<'a>(slots: impl IntoIterator<Item = &'a SlotOn>) -> Vec<(DayNumber, SlotCounts)> {
    let mut days: Vec<(DayNumber, SlotCounts)> = Vec::new();
    for slot in slots {
        if let Some((_, counts)) = days.last_mut().filter(|(day, _)| *day == slot.day) {
            counts.add(slot);
            continue;
        }
        let place = days.binary_search_by_key(&slot.day, |(day, _)| *day).unwrap_or_else(|place| {
            days.insert(place, (slot.day, SlotCounts::default()));
            place
        });
        days[place].1.add(slot);
    }
    days
}

/// Counts the days of one item.
pub fn day_counts(slots: &[SlotOn]) -> DayCounts {
    let days = by_day(slots);
    let asked: Vec<(SlotCounts, KofN)> = days.iter().filter_map(|(_, day)| Some((*day, day.kept()?))).collect();
    let kept = asked.iter().filter(|(_, share)| share.reaches(AS_AGREED_PERCENT)).count();
    let counts = || days.iter().map(|(_, counts)| counts);
    let unrecorded = |day: &&SlotCounts| day.unrecorded > 0 && day.unrecorded == day.owed();
    DayCounts {
        kept: KofN::of(kept as u32, asked.len() as u32),
        nothing_done: at_most(asked.iter().filter(|(day, _)| day.all_done() == 0 && day.partly == 0).count()),
        unrecorded: at_most(counts().filter(unrecorded).count()),
        days_off: at_most(counts().filter(|day| day.owed() == 0 && day.day_off > 0).count()),
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{DAY_OFF, day, share_of_day, unseen};
    use super::*;
    use crate::history::Mark;

    #[test]
    fn a_day_is_kept_from_eighty_percent_on() {
        let mut slots = share_of_day(0, 8, 10);
        slots.extend(share_of_day(1, 7, 9));
        slots.extend(share_of_day(2, 9, 9));
        slots.extend(share_of_day(3, 0, 9));
        let counted = day_counts(&slots);
        assert_eq!(counted.kept, Some(KofN { k: 2, n: 4 }), "7 of 9 is 77.8 %");
        assert_eq!(counted.nothing_done, 1);
    }

    #[test]
    fn days_without_a_record_and_days_off_are_counted_separately() {
        let mut slots = share_of_day(0, 1, 1);
        slots.extend(unseen(day(1, &[Mark::NotDone])));
        slots.extend(day(2, &[DAY_OFF, DAY_OFF]));
        slots.extend(day(3, &[Mark::Paused]));
        let counted = day_counts(&slots);
        assert_eq!(counted, DayCounts { kept: Some(KofN { k: 1, n: 2 }), nothing_done: 1, unrecorded: 1, days_off: 1 });
    }

    #[test]
    fn only_slots_that_count_decide_whether_a_day_is_kept() {
        let counted = day_counts(&day(0, &[Mark::Done, DAY_OFF, Mark::Paused]));
        assert_eq!(counted.kept, Some(KofN { k: 1, n: 1 }));
        assert_eq!(day_counts(&[]).kept, None);
    }
}
