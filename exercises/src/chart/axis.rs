//! The horizontal axis of a chart: days, with a gap between weeks. All lengths are in CSS pixels.

use crate::time::DayNumber;
use chrono::{Datelike, NaiveDate, Weekday};

/// Space at the left for the labels of the vertical axis.
pub const LEFT: f64 = 44.0;
/// Space at the right.
pub const RIGHT: f64 = 14.0;
/// Additional space at the right for the labels at the end of a line.
pub const NAMES_WIDTH: f64 = 74.0;
/// Least width of a day in a chart of strings: two knots next to each other must not overlap.
pub const MIN_STEP: f64 = 11.0;
/// Least width of a day in a chart of points: a year fits a page.
pub const MIN_POINT_STEP: f64 = 1.0;
/// Largest width of a day, so that the days of a fortnight do not lie too far apart.
pub const MAX_STEP: f64 = 26.0;
/// Least distance between two dates below a chart.
const DATES_APART: f64 = 54.0;
/// Space that a date takes to the right of its day's middle.
const DATE_WIDTH: f64 = 42.0;
/// Gap between two weeks, as a share of a day's width.
const WEEK_GAP: f64 = 0.5;

/// The days of a review and their positions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayAxis {
    /// The date of day 0.
    pub start: NaiveDate,
    /// First day number.
    pub first: DayNumber,
    /// Last day number.
    pub last: DayNumber,
    /// Distance from one day to the next.
    pub step: f64,
}

/// The first day of a week (the chart's first day, then Mondays).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeekStart {
    /// Position of the day's middle.
    pub x: f64,
    /// The date.
    pub date: NaiveDate,
}

impl DayAxis {
    /// Lays out the days `first` to `last`, counted from `start`, for strings: within `width` if they fit, otherwise wider.
    pub fn for_strings(start: NaiveDate, first: DayNumber, last: DayNumber, width: f64) -> DayAxis {
        DayAxis::at_least(MIN_STEP, start, first, last, width)
    }

    /// The same for points, which may be closer together.
    pub fn for_points(start: NaiveDate, first: DayNumber, last: DayNumber, width: f64) -> DayAxis {
        DayAxis::at_least(MIN_POINT_STEP, start, first, last, width)
    }

    fn at_least(least: f64, start: NaiveDate, first: DayNumber, last: DayNumber, width: f64) -> DayAxis {
        let last = last.max(first);
        let mut days = DayAxis { start, first, last, step: 1.0 };
        let steps = days.offset(last) + 1.0;
        days.step = ((width - LEFT - RIGHT) / steps).clamp(least, MAX_STEP);
        days
    }

    /// The date of a day.
    pub fn date(&self, day: DayNumber) -> NaiveDate {
        day.date(self.start)
    }

    /// The position of a day's middle.
    pub fn x(&self, day: DayNumber) -> f64 {
        LEFT + (self.offset(day) + 0.5) * self.step
    }

    /// The whole width. With few days there is still enough space for the first day's date.
    pub fn width(&self) -> f64 {
        let days = LEFT + (self.offset(self.last) + 1.0) * self.step + RIGHT;
        days.max(self.x(self.first) + DATE_WIDTH)
    }

    /// The starts of weeks, as many as there is space for their dates.
    pub fn weeks(&self) -> Vec<WeekStart> {
        let begins = |day: &DayNumber| *day == self.first || self.date(*day).weekday() == Weekday::Mon;
        let mut starts: Vec<WeekStart> = Vec::new();
        for day in self.first.through(self.last).filter(begins) {
            let x = self.x(day);
            let room = x + DATE_WIDTH <= self.width();
            if room && starts.last().is_none_or(|last| x - last.x >= DATES_APART) {
                starts.push(WeekStart { x, date: self.date(day) });
            }
        }
        starts
    }

    /// Number of steps from the first day, including the gaps between weeks.
    fn offset(&self, day: DayNumber) -> f64 {
        let days = f64::from(day) - f64::from(self.first);
        let monday_before = f64::from(self.date(self.first).weekday().num_days_from_monday());
        let weeks = libm::floor((days + monday_before) / 7.0);
        days + weeks * WEEK_GAP
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wednesday() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 10, 28).expect("a date")
    }

    #[test]
    fn four_weeks_fit_with_a_gap_before_each_monday() {
        let days = DayAxis::for_strings(wednesday(), DayNumber(0), DayNumber(27), 760.0);
        assert!(days.width() <= 760.0 + 1e-9, "{}", days.width());
        let plain = days.x(DayNumber(1)) - days.x(DayNumber(0));
        let over_the_weekend = days.x(DayNumber(5)) - days.x(DayNumber(4));
        assert!((over_the_weekend - plain * 1.5).abs() < 1e-9, "day 5 is a Monday");
        assert_eq!(days.weeks().len(), 5);
        assert_eq!(days.weeks()[1].x, days.x(DayNumber(5)));
    }

    #[test]
    fn a_year_of_strings_is_wider_than_the_page_and_keeps_the_least_day_width() {
        let year = DayAxis::for_strings(wednesday(), DayNumber(0), DayNumber(365), 340.0);
        assert_eq!(year.step, MIN_STEP);
        assert!(year.width() > 4000.0);
        let points = DayAxis::for_points(wednesday(), DayNumber(0), DayNumber(365), 473.0);
        assert!(points.width() <= 473.0 + 1e-9, "points of a year stay on the page");
        assert!(points.weeks().windows(2).all(|pair| pair[1].x - pair[0].x >= DATES_APART), "and dates stay apart");
        let one = DayAxis::for_strings(wednesday(), DayNumber(3), DayNumber(3), 760.0);
        assert_eq!(one.step, MAX_STEP);
        assert!(one.x(DayNumber(3)) > LEFT && one.x(DayNumber(3)) + DATE_WIDTH <= one.width(), "its date is whole");
        assert_eq!(one.weeks().len(), 1);
    }

    #[test]
    fn a_last_day_before_the_first_is_one_day() {
        assert_eq!(DayAxis::for_strings(wednesday(), DayNumber(4), DayNumber(1), 300.0).last, DayNumber(4));
    }
}
