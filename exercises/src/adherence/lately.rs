//! The last fourteen days beside the whole period, so that somebody who began well and stopped does not count as "partly".

use super::{KofN, Shares, SlotOn, count};
use crate::history::Mark;
use crate::time::DayNumber;

/// Number of days that count as lately.
pub const LATELY_DAYS: u16 = 14;

/// How an item was followed lately.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Lately {
    /// Slots done with any share, of those owed.
    pub done: KofN,
    /// Of these, slots done in full.
    pub in_full: u32,
    /// The shares of all owed slots, summed.
    pub shares: Shares,
}

/// The slots of the last [`LATELY_DAYS`] up to `until`; `None` if nothing was owed in them.
pub fn lately(slots: &[SlotOn], until: DayNumber) -> Option<Lately> {
    let recent: Vec<SlotOn> = slots.iter().filter(|slot| is_lately(slot.day, until)).copied().collect();
    let counts = count(&recent);
    let any = recent.iter().filter(|slot| matches!(slot.mark, Mark::Done | Mark::Partly(_))).count();
    Some(Lately { done: KofN::of(any as u32, counts.owed())?, in_full: counts.all_done(), shares: counts.shares()? })
}

fn is_lately(day: DayNumber, until: DayNumber) -> bool {
    day <= until && until.days_since(day) < LATELY_DAYS
}

#[cfg(test)]
mod tests {
    use super::super::samples::{DAY_OFF, PARTLY, day, share_of_day, unseen};
    use super::*;

    #[test]
    fn only_the_last_fourteen_days_count() {
        let mut slots: Vec<SlotOn> = (0..7).flat_map(|day| share_of_day(day, 1, 1)).collect();
        slots.extend((7..42).flat_map(|number| unseen(day(number, &[Mark::NotDone]))));
        let got = lately(&slots, DayNumber(41)).expect("owed");
        assert_eq!((got.done, got.in_full), (KofN { k: 0, n: 14 }, 0));
        let got = lately(&slots, DayNumber(13)).expect("owed");
        assert_eq!((got.done, got.in_full), (KofN { k: 7, n: 14 }, 7));
    }

    #[test]
    fn what_was_done_in_part_is_done_with_a_share() {
        let slots = day(0, &[Mark::Done, PARTLY, Mark::NotDone, DAY_OFF]);
        let got = lately(&slots, DayNumber(0)).expect("owed");
        assert_eq!((got.done, got.in_full, got.shares.thousandths), (KofN { k: 2, n: 3 }, 1, 1333));
        assert_eq!(lately(&day(0, &[DAY_OFF]), DayNumber(0)), None);
    }
}
