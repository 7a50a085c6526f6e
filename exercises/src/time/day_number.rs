//! Days of a plan, counted from the plan's first day.

use chrono::{Days, NaiveDate};
use std::fmt;

/// A day of a plan. Day 0 is the day on which the plan's first revision was issued (`Header::start`). A summary gives days as
/// these numbers, so that days from several devices and revisions can be compared without a calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DayNumber(pub u16);

impl DayNumber {
    /// The number of `date` in a plan that began on `start`; `None` if `date` is before `start` or more than 65,535 days
    /// after it.
    pub fn of(date: NaiveDate, start: NaiveDate) -> Option<DayNumber> {
        u16::try_from(date.signed_duration_since(start).num_days()).ok().map(DayNumber)
    }

    /// The number of `date` in a plan that began on `start`, limited to what a number can hold: 0 for earlier dates, 65,535
    /// for later ones.
    pub fn nearest(date: NaiveDate, start: NaiveDate) -> DayNumber {
        DayNumber(date.signed_duration_since(start).num_days().clamp(0, u16::MAX.into()) as u16)
    }

    /// The date of this day in a plan that began on `start`. A date beyond the last year of the calendar is given as `start`.
    pub fn date(self, start: NaiveDate) -> NaiveDate {
        start.checked_add_days(Days::new(self.0.into())).unwrap_or(start)
    }

    /// The day `days` later, at most day 65,535.
    pub fn plus(self, days: u16) -> DayNumber {
        DayNumber(self.0.saturating_add(days))
    }

    /// The day `days` earlier; `None` if that is before day 0.
    pub fn minus(self, days: u16) -> Option<DayNumber> {
        self.0.checked_sub(days).map(DayNumber)
    }

    /// Days from `earlier` to this one; 0 if `earlier` is in fact later.
    pub fn days_since(self, earlier: DayNumber) -> u16 {
        self.0.saturating_sub(earlier.0)
    }

    /// This day and all days after it up to and including `last`; no day if `last` is earlier.
    pub fn through(self, last: DayNumber) -> impl DoubleEndedIterator<Item = DayNumber> {
        (self.0..=last.0).map(DayNumber)
    }
}

impl fmt::Display for DayNumber {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl From<DayNumber> for i32 {
    fn from(day: DayNumber) -> i32 {
        day.0.into()
    }
}

impl From<DayNumber> for f64 {
    fn from(day: DayNumber) -> f64 {
        day.0.into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(day: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 3, day).expect("a date")
    }

    #[test]
    fn a_number_and_its_date_are_one_day() {
        assert_eq!(DayNumber::of(date(5), date(1)), Some(DayNumber(4)));
        assert_eq!(DayNumber(4).date(date(1)), date(5));
        assert_eq!(DayNumber::of(date(1), date(5)), None, "before the plan");
        assert_eq!(DayNumber::nearest(date(1), date(5)), DayNumber(0));
        assert_eq!(DayNumber::nearest(NaiveDate::MAX, date(5)), DayNumber(u16::MAX));
        assert_eq!(DayNumber(9).date(NaiveDate::MAX), NaiveDate::MAX);
    }

    #[test]
    fn days_are_counted_between_and_up_to() {
        assert_eq!((DayNumber(9).days_since(DayNumber(2)), DayNumber(2).days_since(DayNumber(9))), (7, 0));
        assert_eq!((DayNumber(3).minus(3), DayNumber(3).minus(4)), (Some(DayNumber(0)), None));
        assert_eq!(DayNumber(3).through(DayNumber(5)).map(|day| day.0).collect::<Vec<_>>(), [3, 4, 5]);
        assert_eq!(DayNumber(5).through(DayNumber(3)).count(), 0);
        assert_eq!(DayNumber(u16::MAX).plus(1), DayNumber(u16::MAX));
    }
}
