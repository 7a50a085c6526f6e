//! When the item is done: by day of the week, and by hour of the day.
//!
//! Rule: the slots of [`super::SlotCounts::kept`], grouped by the weekday of their day and by the wall clock's hour at which they
//! were due. Not fitting into the day's routine is a known barrier (Escolar-Reina 2010, BMC Health Serv Res 10:60), and it shows
//! here.

use super::{KofN, SlotCounts, SlotOn};

/// Slots done out of the slots asked for, by weekday and hour.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rhythm {
    /// From Monday to Sunday; `None` if nothing was asked for on that weekday.
    pub weekdays: [Option<KofN>; 7],
    /// By hour, 0 to 23, ascending; only hours in which a slot was due.
    pub hours: Vec<(u8, KofN)>,
}

/// Groups the slots of one item.
pub fn rhythm(slots: &[SlotOn]) -> Rhythm {
    let mut weekdays = [SlotCounts::default(); 7];
    let mut hours = [SlotCounts::default(); 24];
    for slot in slots {
        weekdays[usize::from(slot.weekday) % 7].add(slot);
        hours[usize::from(slot.minute / 60) % 24].add(slot);
    }
    let hours = (0..24).zip(&hours).filter_map(|(hour, counts)| Some((hour, counts.kept()?)));
    Rhythm { weekdays: weekdays.map(|counts| counts.kept()), hours: hours.collect() }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{day, slot, unseen};
    use super::*;
    use crate::history::Mark;

    #[test]
    fn by_weekday() {
        let mut slots = day(0, &[Mark::Done, Mark::NotDone]);
        slots.extend(day(7, &[Mark::Done]));
        slots.extend(day(5, &[Mark::NotDone]));
        let found = rhythm(&slots);
        assert_eq!(found.weekdays[0], Some(KofN { k: 2, n: 3 }), "two Mondays");
        assert_eq!(found.weekdays[5], Some(KofN { k: 0, n: 1 }), "a Saturday");
        assert_eq!(found.weekdays[1], None, "nothing was asked for on a Tuesday");
    }

    #[test]
    fn by_hour_also_beyond_midnight() {
        let late = SlotOn { minute: 1440 + 90, ..slot(0, 5, Mark::Done) };
        let found = rhythm(&[slot(0, 0, Mark::Done), slot(1, 0, Mark::NotDone), late]);
        assert_eq!(found.hours, [(1, KofN { k: 1, n: 1 }), (9, KofN { k: 1, n: 2 })]);
    }

    #[test]
    fn slots_of_days_without_a_record_are_owed() {
        assert_eq!(rhythm(&unseen(day(0, &[Mark::NotDone]))).hours, [(9, KofN { k: 0, n: 1 })]);
        assert_eq!(rhythm(&day(0, &[Mark::Paused])), Rhythm::default());
    }
}
