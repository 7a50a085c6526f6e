//! A summary of the day, for places without space for the string.

use super::{Head, Today};
use crate::history::Mark;

impl Today {
    /// Number of today's slots with anything done, and number of today's slots; slots skipped by a clock change are not counted.
    pub fn count(&self) -> (u16, u16) {
        count(self.string.iter().map(|knot| knot.mark))
    }

    /// Whether a plan is followed whose review date has not passed: then a reminder may come today or later.
    pub fn is_followed(&self) -> bool {
        !matches!(self.head, Head::NoPlan | Head::Over { .. })
    }
}

/// Number of marks with anything done, and number of all marks.
pub(super) fn count(marks: impl Iterator<Item = Mark> + Clone) -> (u16, u16) {
    let done = marks.clone().filter(|mark| matches!(mark, Mark::Done | Mark::Partly(_))).count();
    let of = marks.filter(|mark| !matches!(mark, Mark::NoSuchHour)).count();
    // Never happens, because a day has far fewer slots.
    (u16::try_from(done).unwrap_or(u16::MAX), u16::try_from(of).unwrap_or(u16::MAX))
}
