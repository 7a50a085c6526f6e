//! Pain that rises from week to week.
//!
//! Our design, after "pain and stiffness must not rise week to week" (Silbernagel 2007, Am J Sports Med 35:897-906; seen on a
//! secondary page): the medians of the last seven days and of the seven days before are both at least 2 points above the
//! base. The base is the median of the first three days' ratings since the card in force was taken or the last step was made.
//! Each week needs three ratings, and the base is before both weeks.

use crate::score::Score;
use crate::statistics::median;
use crate::time::DayNumber;

/// Points by which each week's median is at least above the base.
pub const RISE_POINTS: f64 = 2.0;
/// Number of ratings needed for each week and for the base.
pub const WEEK_RATINGS: usize = 3;
const WEEK: u16 = 7;

/// The medians of pain that rose, each 0 to 10.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rise {
    /// Median of the first three days with a rating.
    pub base: f64,
    /// Median of the week before the last.
    pub week_before: f64,
    /// Median of the last seven days.
    pub last_week: f64,
}

/// The rise of pain as seen on `today`, from ratings (day, score), one for each day, oldest first; `None` if pain did not
/// rise.
pub fn rise(points: &[(DayNumber, Score)], today: DayNumber) -> Option<Rise> {
    let two_weeks = today.minus(2 * WEEK)?;
    let middle = |from: DayNumber, until: DayNumber| {
        let within = points.iter().filter(|(day, _)| *day > from && *day <= until);
        let scores: Vec<f64> = within.map(|(_, score)| f64::from(*score)).collect();
        median(&scores).filter(|_| scores.len() >= WEEK_RATINGS)
    };
    let first = points.get(..WEEK_RATINGS).filter(|first| first.iter().all(|(day, _)| *day <= two_weeks))?;
    let base = median(&first.iter().map(|(_, score)| f64::from(*score)).collect::<Vec<_>>())?;
    let a_week_ago = today.minus(WEEK)?;
    let (week_before, last_week) = (middle(two_weeks, a_week_ago)?, middle(a_week_ago, today)?);
    let rose = week_before - base >= RISE_POINTS && last_week - base >= RISE_POINTS;
    rose.then_some(Rise { base, week_before, last_week })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;

    /// One rating a day from day 0, given as periods of (days, score).
    fn days(stretches: &[(u16, u8)]) -> Vec<(DayNumber, Score)> {
        let scores = stretches.iter().flat_map(|(days, score)| vec![*score; usize::from(*days)]);
        on_days(&(0..).zip(scores).collect::<Vec<_>>())
    }

    #[test]
    fn both_weeks_must_lie_two_points_over_the_base() {
        // Seen on day 21: the weeks are days 8 to 14 and 15 to 21.
        let found = rise(&days(&[(8, 2), (7, 4), (7, 5)]), DayNumber(21)).expect("it rose");
        assert_eq!(found, Rise { base: 2.0, week_before: 4.0, last_week: 5.0 });
        assert_eq!(rise(&days(&[(8, 2), (7, 3), (7, 9)]), DayNumber(21)), None, "one week only");
        assert_eq!(rise(&days(&[(8, 2), (7, 9), (7, 3)]), DayNumber(21)), None, "it fell again");
        assert_eq!(rise(&days(&[(22, 8)]), DayNumber(21)), None, "high, but not rising");
    }

    #[test]
    fn a_bad_day_is_no_bad_week() {
        let mut points = days(&[(8, 2), (14, 2)]);
        for day in [9, 10, 11, 16, 17, 18] {
            points[day].1 = Score::at_most_ten(9);
        }
        assert_eq!(rise(&points, DayNumber(21)), None, "three of seven days");
    }

    #[test]
    fn each_week_and_the_base_need_three_ratings() {
        let full = days(&[(8, 2), (14, 5)]);
        let without = |gone: &[u16]| -> Vec<(DayNumber, Score)> {
            full.iter().filter(|(day, _)| !gone.contains(&day.0)).copied().collect()
        };
        assert!(rise(&without(&[8, 9, 10, 11]), DayNumber(21)).is_some());
        assert_eq!(rise(&without(&[8, 9, 10, 11, 12]), DayNumber(21)), None);
        assert_eq!(rise(&without(&[17, 18, 19, 20, 21]), DayNumber(21)), None);
        assert!(rise(&without(&[0, 1, 2, 3, 4]), DayNumber(21)).is_some(), "days 5, 6 and 7 are the base");
        assert_eq!(rise(&without(&[0, 1, 2, 3, 4, 5]), DayNumber(21)), None, "the base would lie in the weeks");
        assert_eq!(rise(&days(&[(3, 2), (10, 9)]), DayNumber(13)), None, "too early");
        assert_eq!(rise(&[], DayNumber(30)), None);
    }
}
