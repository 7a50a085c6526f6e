//! Counts slots by their outcome, and slots done out of the slots asked for.
//!
//! Rule (a proposal of ours): a slot is done if its whole dose was done; in part it has a share of its dose. Owed are all slots that are
//! over on days on which the plan asked for them, also those of days without any record ("days never opened" were a third of a paper
//! diary's days: Stone 2002, BMJ 324:1193). Not owed are slots on days off (adherence is to what was *agreed*: WHO 2003, as cited in
//! Holden 2014, Syst Rev 3:10), those that an alarm suspended and those in an hour that a clock change skipped.

use super::{KofN, Shares, SlotOn};
use crate::history::Mark;

/// Slots by their outcome.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SlotCounts {
    /// Done, and timed by the program.
    pub done: u32,
    /// Done, and entered afterwards.
    pub written_in: u32,
    /// Done in part.
    pub partly: u32,
    /// The shares of those, summed, in thousandths of a slot.
    pub partly_thousandths: u32,
    /// Skipped, with a reason.
    #[cfg_attr(feature = "serde", serde(rename = "left_out"))]
    pub skipped: u32,
    /// Not done on a day with a record.
    #[cfg_attr(feature = "serde", serde(rename = "passed_by"))]
    pub not_done: u32,
    /// On a day off, and not done.
    #[cfg_attr(feature = "serde", serde(rename = "excused"))]
    pub day_off: u32,
    /// On a day without any record.
    pub unrecorded: u32,
    /// Paused by an alarm: not asked for.
    #[cfg_attr(feature = "serde", serde(rename = "held_back"))]
    pub paused: u32,
    /// In an hour that a clock change skipped: not asked for.
    pub no_such_hour: u32,
}

impl SlotCounts {
    /// Slots done, whether timed or entered afterwards.
    pub fn all_done(&self) -> u32 {
        self.done.saturating_add(self.written_in)
    }

    /// Counts one more slot. Slots that are due or still to come are not counted.
    pub fn add(&mut self, slot: &SlotOn) {
        let one = match slot.mark {
            Mark::Done if slot.written_in => &mut self.written_in,
            Mark::Done => &mut self.done,
            Mark::Partly(_) => &mut self.partly,
            Mark::Skipped(_) => &mut self.skipped,
            Mark::DayOff(_) => &mut self.day_off,
            Mark::Paused => &mut self.paused,
            Mark::NotDone if slot.seen => &mut self.not_done,
            Mark::NotDone => &mut self.unrecorded,
            Mark::NoSuchHour => &mut self.no_such_hour,
            Mark::Due | Mark::ToCome => return,
        };
        *one = one.saturating_add(1);
        if let Mark::Partly(_) = slot.mark {
            self.partly_thousandths = self.partly_thousandths.saturating_add(slot.share_thousandths());
        }
    }

    /// Slots that were owed.
    pub fn owed(&self) -> u32 {
        [self.partly, self.skipped, self.not_done, self.unrecorded].into_iter().fold(self.all_done(), u32::saturating_add)
    }

    /// Slots done in full out of the slots owed.
    pub fn kept(&self) -> Option<KofN> {
        KofN::of(self.all_done(), self.owed())
    }

    /// The shares of all owed slots, summed: what was done in part counts by its share.
    pub fn shares(&self) -> Option<Shares> {
        Shares::of(self.all_done().saturating_mul(1000).saturating_add(self.partly_thousandths), self.owed())
    }

    /// Like [`SlotCounts::kept`], but only slots that were timed by the program count as done.
    pub fn kept_timed(&self) -> Option<KofN> {
        KofN::of(self.done, self.owed())
    }

    /// Like [`SlotCounts::kept`], with slots on days off counted as not done.
    pub fn kept_with_days_off(&self) -> Option<KofN> {
        KofN::of(self.all_done(), self.owed().saturating_add(self.day_off))
    }
}

/// Counts slots by their outcome. Slots that are due or still to come are not counted.
pub fn count<'a>(slots: impl IntoIterator<Item = &'a SlotOn>) -> SlotCounts {
    let mut counts = SlotCounts::default();
    slots.into_iter().for_each(|slot| counts.add(slot));
    counts
}

#[cfg(test)]
mod tests {
    use super::super::samples::{DAY_OFF, PARTLY, SKIPPED, day, slot, unseen};
    use super::*;

    fn k_of_n(k: u32, n: u32) -> Option<KofN> {
        Some(KofN { k, n })
    }

    #[test]
    fn each_mark_has_its_own_count() {
        let marks = [Mark::Done, PARTLY, SKIPPED, Mark::NotDone, DAY_OFF, Mark::Paused, Mark::NoSuchHour];
        let mut slots = day(0, &marks);
        slots.extend(unseen(day(1, &[Mark::NotDone, Mark::NotDone])));
        slots.push(SlotOn { written_in: true, ..slot(2, 0, Mark::Done) });
        let counted = count(&slots);
        let expected = SlotCounts {
            done: 1,
            written_in: 1,
            partly: 1,
            partly_thousandths: 333,
            skipped: 1,
            not_done: 1,
            day_off: 1,
            unrecorded: 2,
            paused: 1,
            no_such_hour: 1,
        };
        assert_eq!(counted, expected);
    }

    #[test]
    fn slots_on_days_off_are_counted_both_ways() {
        let counted = count(&day(0, &[Mark::Done, Mark::NotDone, DAY_OFF, DAY_OFF]));
        assert_eq!(counted.kept(), k_of_n(1, 2));
        assert_eq!(counted.kept_with_days_off(), k_of_n(1, 4));
    }

    #[test]
    fn slots_of_a_day_without_a_record_are_owed() {
        let counted = count(&unseen(day(0, &[Mark::NotDone, Mark::NotDone])));
        assert_eq!((counted.kept(), counted.unrecorded), (k_of_n(0, 2), 2));
        assert_eq!(count(&day(0, &[Mark::NotDone])).kept(), k_of_n(0, 1), "seen, and not done");
    }

    #[test]
    fn slots_never_asked_for_are_not_counted() {
        let counted = count(&day(0, &[Mark::Done, Mark::Paused, Mark::NoSuchHour, Mark::ToCome, Mark::Due]));
        assert_eq!(counted.kept(), k_of_n(1, 1));
        assert_eq!(counted.kept_with_days_off(), k_of_n(1, 1));
        assert_eq!(count(&day(0, &[Mark::Paused])).kept(), None);
        assert_eq!(count(&[]).kept(), None);
    }

    #[test]
    fn entries_made_afterwards_are_counted_separately() {
        let written = SlotOn { written_in: true, ..slot(0, 0, Mark::Done) };
        let counted = count(&[written, slot(0, 1, Mark::Done), slot(0, 2, Mark::NotDone)]);
        assert_eq!(counted.kept(), k_of_n(2, 3));
        assert_eq!(counted.kept_timed(), k_of_n(1, 3));
    }

    #[test]
    fn a_slot_done_in_part_counts_by_its_share_where_one_amount_is_needed() {
        let counted = count(&day(0, &[Mark::Done, PARTLY, PARTLY, Mark::NotDone]));
        assert_eq!(counted.kept(), k_of_n(1, 4));
        assert_eq!(counted.shares(), Some(Shares { thousandths: 1666, n: 4 }));
    }
}
