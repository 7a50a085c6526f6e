//! Decides whether the result of a test by repetitions changed.
//!
//! Rule: whole tests of the same exercise, level and time make a series; of several on one day the highest counts. The last day is
//! compared with the first, and a change is said only if it is larger than the error with which people who test themselves measure, as
//! the catalogue gives it. Without such an error nothing is said. Times at home and counts at a visit are never compared.

use crate::statistics::Verdict;
use crate::time::DayNumber;

/// The result of one day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CountDay {
    /// Day number.
    pub day: DayNumber,
    /// The highest number of movements.
    pub count: u8,
}

/// Whether the count changed between the first and the last of `days`, which come oldest first; `error_tenths` is the error in tenths of
/// a movement. `None` if no error is known.
pub fn count_change(days: &[CountDay], error_tenths: Option<u16>) -> Option<Verdict> {
    let error = i32::from(error_tenths?);
    let [first, .., last] = days else { return Some(Verdict::TooFewData) };
    let change = (i32::from(last.count) - i32::from(first.count)) * 10;
    Some(match change {
        change if change > error => Verdict::Rising,
        change if change < -error => Verdict::Falling,
        _ => Verdict::NoClearChange,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn changed(counts: &[u8], error_tenths: Option<u16>) -> Option<Verdict> {
        let days = counts.iter().zip(0..).map(|(count, day)| CountDay { day: DayNumber(day), count: *count });
        count_change(&days.collect::<Vec<_>>(), error_tenths)
    }

    #[test]
    fn a_change_is_said_only_beyond_the_error() {
        assert_eq!(changed(&[10, 20, 12], Some(25)), Some(Verdict::NoClearChange));
        assert_eq!(changed(&[10, 13], Some(25)), Some(Verdict::Rising));
        assert_eq!(changed(&[10, 13], Some(30)), Some(Verdict::NoClearChange), "just the error is within it");
        assert_eq!(changed(&[13, 13, 10], Some(25)), Some(Verdict::Falling));
        assert_eq!(changed(&[0, 255], Some(25)), Some(Verdict::Rising));
    }

    #[test]
    fn one_day_is_too_few_and_without_an_error_nothing_is_said() {
        assert_eq!(changed(&[10], Some(25)), Some(Verdict::TooFewData));
        assert_eq!(changed(&[], Some(25)), Some(Verdict::TooFewData));
        assert_eq!(changed(&[10, 30], None), None);
    }
}
