//! Slots by how they went, and slots done of slots asked for.
//!
//! Rule: a slot is done when its whole dose was done. Asked for is every slot but those in an hour that did not exist and
//! those that an alarm held back; excused slots and slots of days without any record are given both ways, left out and
//! counted as not done, because each way alone misleads (adherence is to what was *agreed*: WHO 2003, as cited in Holden
//! 2014, Syst Rev 3:10; "days never opened" were a third of a paper diary's days: Stone 2002, BMJ 324:1193).

use super::{KofN, SlotOn};
use crate::history::Mark;

/// Slots by how they went.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SlotCounts {
    /// Done, and timed while it was done.
    pub done: u32,
    /// Done, as written in afterwards.
    pub written_in: u32,
    /// Done in part.
    pub partly: u32,
    /// Left out, with a reason.
    pub left_out: u32,
    /// Passed by on a day with a record.
    pub passed_by: u32,
    /// On an excused day, and not done.
    pub excused: u32,
    /// On a day without any record.
    pub unrecorded: u32,
    /// Held back by an alarm: not asked for.
    pub held_back: u32,
    /// In an hour that the clocks jumped over: not asked for.
    pub no_such_hour: u32,
}

impl SlotCounts {
    /// Slots done, timed or written in afterwards.
    pub fn all_done(&self) -> u32 {
        self.done + self.written_in
    }

    fn asked(&self) -> u32 {
        self.all_done() + self.partly + self.left_out + self.passed_by
    }

    /// Done of asked for, on days with a record, excused slots left out.
    pub fn kept(&self) -> Option<KofN> {
        KofN::of(self.all_done(), self.asked())
    }

    /// As [`SlotCounts::kept`], but only what was timed while it was done counts as done.
    pub fn kept_timed(&self) -> Option<KofN> {
        KofN::of(self.done, self.asked())
    }

    /// As [`SlotCounts::kept`], with excused slots counted as not done.
    pub fn kept_with_excused(&self) -> Option<KofN> {
        KofN::of(self.all_done(), self.asked() + self.excused)
    }

    /// As [`SlotCounts::kept`], with the slots of days without any record counted as not done.
    pub fn kept_with_unrecorded(&self) -> Option<KofN> {
        KofN::of(self.all_done(), self.asked() + self.unrecorded)
    }
}

/// Counts slots by how they went. What is due or still to come is not counted.
pub fn count(slots: &[SlotOn]) -> SlotCounts {
    let mut counts = SlotCounts::default();
    for slot in slots {
        let one = match slot.mark {
            Mark::Done if slot.written_in => &mut counts.written_in,
            Mark::Done => &mut counts.done,
            Mark::Partly(_) => &mut counts.partly,
            Mark::LeftOut(_) => &mut counts.left_out,
            Mark::Excused(_) => &mut counts.excused,
            Mark::HeldBack => &mut counts.held_back,
            Mark::PassedBy if slot.seen => &mut counts.passed_by,
            Mark::PassedBy => &mut counts.unrecorded,
            Mark::NoSuchHour => &mut counts.no_such_hour,
            Mark::Due | Mark::ToCome => continue,
        };
        *one += 1;
    }
    counts
}
