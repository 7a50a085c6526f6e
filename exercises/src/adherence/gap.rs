//! The longest stretch with nothing done, and the last day with something done.
//!
//! Rule (our design): days on which the item was asked for stand in a row; excused days and days held back by an alarm are
//! taken out of it. The longest unbroken stretch of days without anything done, not even in part, is the gap; of two equal
//! ones the later. Days without any record belong to it, and it says how many they are.

use super::days::by_day;
use super::{SlotCounts, SlotOn};

/// A stretch of days with nothing done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Gap {
    /// Days on which it was asked for.
    pub days: u16,
    /// Of those, days without any record.
    pub unrecorded: u16,
    /// First day of the stretch.
    pub from: u16,
    /// Last day of the stretch.
    pub until: u16,
}

/// The longest stretch with nothing done; `None` if something was done on every day.
pub fn longest_gap(slots: &[SlotOn]) -> Option<Gap> {
    let mut longest: Option<Gap> = None;
    let mut open: Option<Gap> = None;
    for (day, counts) in by_day(slots).into_iter().filter(|(_, counts)| counts.kept_with_unrecorded().is_some()) {
        if any_done(&counts) {
            open = None;
            continue;
        }
        let gap = open.get_or_insert(Gap { days: 0, unrecorded: 0, from: day, until: day });
        gap.days += 1;
        gap.unrecorded += u16::from(counts.kept().is_none());
        gap.until = day;
        if longest.is_none_or(|longest| gap.days >= longest.days) {
            longest = Some(*gap);
        }
    }
    longest
}

/// The last day on which anything was done, in part or whole.
pub fn last_done(slots: &[SlotOn]) -> Option<u16> {
    by_day(slots).into_iter().rev().find(|(_, counts)| any_done(counts)).map(|(day, _)| day)
}

fn any_done(counts: &SlotCounts) -> bool {
    counts.all_done() + counts.partly > 0
}
