//! On which days and at which minutes an item falls due.

use super::Days;
use crate::time::DAY_MINUTES;

/// When an item is due.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Schedule {
    /// The days.
    pub days: Days,
    /// The times of day.
    pub pattern: Pattern,
}

/// How an item's due times are spread over a day. Minutes are counted from midnight of the wall clock.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Pattern {
    /// At a fixed interval within a window that includes both its ends. If the end is not after the start, the window goes
    /// over midnight. If both are equal, it covers 24 hours, and the time at its end already belongs to the next day's
    /// window.
    Every {
        /// Minutes between two slots, 15 to 720.
        minutes: u16,
        /// First minute of the window, 0 to 1439.
        from: u16,
        /// Last minute of the window, 0 to 1439.
        to: u16,
    },
    /// At these minutes of the day, in ascending order.
    At {
        /// 1 to 12 minutes of the day, each 0 to 1439.
        times: Vec<u16>,
    },
    /// Whenever the patient needs it: nothing is due, and nothing is owed.
    AsNeeded,
}

impl Schedule {
    /// Whenever the patient needs it.
    pub const AS_NEEDED: Schedule = Schedule { days: Days::ALL, pattern: Pattern::AsNeeded };

    /// Whether it is done whenever the patient needs it.
    pub fn is_as_needed(&self) -> bool {
        self.pattern == Pattern::AsNeeded
    }
}

impl Pattern {
    /// Whether any time of it lies after the midnight that ends the day on which the window opens.
    pub fn goes_over_midnight(&self) -> bool {
        self.minutes().last().is_some_and(|last| *last >= DAY_MINUTES)
    }

    /// Due minutes in order, counted from midnight of the day on which the window opens; 1440 and more are on the next day.
    ///
    /// An interval of 0 gives the first minute only; a plan that passed the checks never has it.
    pub fn minutes(&self) -> Vec<u16> {
        match self {
            Pattern::At { times } => times.clone(),
            Pattern::AsNeeded => Vec::new(),
            Pattern::Every { minutes, from, to } => {
                let last = if to > from { *to } else { (to + DAY_MINUTES).min(from + DAY_MINUTES - 1) };
                let step = usize::from(*minutes).max(1);
                (*from..=last).step_by(if *minutes == 0 { usize::from(DAY_MINUTES) } else { step }).collect()
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_ends_count() {
        let hourly = Pattern::Every { minutes: 60, from: 9 * 60, to: 17 * 60 };
        assert_eq!(hourly.minutes().len(), 9, "09 to 17 by the hour is nine");
    }

    #[test]
    fn a_window_may_go_over_midnight() {
        let night = Pattern::Every { minutes: 120, from: 22 * 60, to: 6 * 60 };
        assert_eq!(night.minutes(), [1320, 1440, 1560, 1680, 1800]);
        let evening = Pattern::Every { minutes: 60, from: 22 * 60, to: 23 * 60 };
        let late = Pattern::At { times: vec![1439] };
        assert_eq!([night, evening, late].map(|pattern| pattern.goes_over_midnight()), [true, false, false]);
    }

    #[test]
    fn a_window_round_the_clock_does_not_count_an_hour_for_two_days() {
        let clock = Pattern::Every { minutes: 60, from: 8 * 60, to: 8 * 60 };
        assert_eq!((clock.minutes().len(), clock.minutes().last()), (24, Some(&(31 * 60))));
    }

    #[test]
    fn what_is_done_as_needed_is_never_due() {
        assert!(Pattern::AsNeeded.minutes().is_empty() && !Pattern::AsNeeded.goes_over_midnight());
    }

    #[test]
    fn an_interval_that_does_not_divide_the_window_ends_before_it() {
        assert_eq!(Pattern::Every { minutes: 50, from: 540, to: 660 }.minutes(), [540, 590, 640]);
    }
}
