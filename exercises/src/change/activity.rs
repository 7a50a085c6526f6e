//! Decides whether an activity that the patient named got easier: 0 (cannot) to 10 (as before).
//!
//! Rule: one activity needs 3 points either way, the mean of several needs 2 (minimal detectable change at 90 % as printed on a
//! clinic's form of the published scale, after Stratford 1995, Physiother Can 47:258-63, 10.3138/ptc.47.4.258; seen on a secondary
//! page). These figures belong to the published form. The questions asked here are worded differently, so the figures are borrowed
//! and are not a property of these ratings. Only activities rated at both ends enter the mean. The base is the rating at the first
//! visit that has one, otherwise the first rating on the device; now is the last rating.

use crate::score::Score;
use crate::time::DayNumber;

/// Least change for one activity, in points.
pub const SINGLE_POINTS: u8 = 3;
/// Least change for the mean of several activities, in points.
pub const MEAN_POINTS: f64 = 2.0;

/// The verdict on the ratings of activities.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum ActivityVerdict {
    /// Up by the least change or more.
    Better,
    /// Neither better nor worse.
    NoClearChange,
    /// Down by the least change or more.
    Worse,
    /// A rating is missing at one of the two ends.
    TooFewRatings,
}

/// The change of one activity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ActivityChange {
    /// The verdict.
    pub verdict: ActivityVerdict,
    /// The rating at the start, 0 to 10; `None` if there is none.
    pub base: Option<Score>,
    /// The last rating, 0 to 10; `None` if there is none after the base.
    pub now: Option<Score>,
}

/// The change of all activities: the mean of those rated at both ends.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ActivitiesTogether {
    /// The verdict.
    pub verdict: ActivityVerdict,
    /// Number of activities that were rated at both ends; at least two.
    pub activities: u8,
    /// Mean at the start, 0 to 10.
    pub base: f64,
    /// Mean now, 0 to 10.
    pub now: f64,
}

/// Compares the first visit's rating (otherwise the first on the device) with the last one. `points` are `(day, score)`, oldest
/// first.
pub fn activity_change(at_visit: Option<Score>, points: &[(DayNumber, Score)]) -> ActivityChange {
    let (base, later) = match (at_visit, points) {
        (Some(base), later) => (Some(base), later),
        (None, [first, later @ ..]) => (Some(first.1), later),
        (None, []) => (None, points),
    };
    let now = later.last().map(|(_, score)| *score);
    let verdict = match (base, now) {
        (Some(base), Some(now)) if now.points() >= base.points() + SINGLE_POINTS => ActivityVerdict::Better,
        (Some(base), Some(now)) if base.points() >= now.points() + SINGLE_POINTS => ActivityVerdict::Worse,
        (Some(_), Some(_)) => ActivityVerdict::NoClearChange,
        _ => ActivityVerdict::TooFewRatings,
    };
    ActivityChange { verdict, base, now }
}

/// The mean of the activities that were rated at both ends; `None` for fewer than two of them, when the rule for a single one
/// applies.
pub fn together(changes: &[ActivityChange]) -> Option<ActivitiesTogether> {
    let both: Vec<(f64, f64)> =
        changes.iter().filter_map(|change| Some((f64::from(change.base?), f64::from(change.now?)))).collect();
    if both.len() < 2 {
        return None;
    }
    let mean = |of: fn(&(f64, f64)) -> f64| both.iter().map(of).sum::<f64>() / both.len() as f64;
    let (base, now) = (mean(|ends| ends.0), mean(|ends| ends.1));
    let verdict = if now - base >= MEAN_POINTS {
        ActivityVerdict::Better
    } else if base - now >= MEAN_POINTS {
        ActivityVerdict::Worse
    } else {
        ActivityVerdict::NoClearChange
    };
    Some(ActivitiesTogether { verdict, activities: both.len() as u8, base, now })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;

    #[track_caller]
    fn check(at_visit: Option<u8>, scores: &[u8], verdict: ActivityVerdict) -> ActivityChange {
        let points = on_days(&scores.iter().enumerate().map(|(week, score)| (week as u16 * 7, *score)).collect::<Vec<_>>());
        let got = activity_change(at_visit.map(Score::at_most_ten), &points);
        assert_eq!(got.verdict, verdict, "{at_visit:?} {scores:?}");
        got
    }

    #[test]
    fn one_activity_needs_three_points_either_way() {
        check(Some(4), &[5, 7], ActivityVerdict::Better);
        check(Some(4), &[9, 6], ActivityVerdict::NoClearChange);
        check(Some(4), &[2], ActivityVerdict::NoClearChange);
        check(Some(4), &[1], ActivityVerdict::Worse);
        check(Some(10), &[10], ActivityVerdict::NoClearChange);
    }

    #[test]
    fn three_points_count_at_the_low_end_of_the_scale_too() {
        check(Some(3), &[1], ActivityVerdict::NoClearChange);
        check(Some(2), &[0], ActivityVerdict::NoClearChange);
        check(Some(3), &[0], ActivityVerdict::Worse);
        check(Some(0), &[2], ActivityVerdict::NoClearChange);
        check(Some(0), &[3], ActivityVerdict::Better);
    }

    #[test]
    fn without_a_rating_at_the_visit_the_first_one_is_the_base() {
        let got = check(None, &[3, 4, 6], ActivityVerdict::Better);
        assert_eq!((got.base, got.now), (Score::new(3), Score::new(6)));
    }

    #[test]
    fn a_rating_at_one_end_only_is_too_few() {
        check(Some(4), &[], ActivityVerdict::TooFewRatings);
        check(None, &[4], ActivityVerdict::TooFewRatings);
        let got = check(None, &[], ActivityVerdict::TooFewRatings);
        assert_eq!((got.base, got.now), (None, None));
    }

    #[test]
    fn the_mean_needs_two_points_and_two_activities() {
        let change = |base, now| activity_change(Score::new(base), &on_days(&[(7, now)]));
        let got = together(&[change(4, 6), change(5, 7)]).expect("two activities");
        assert_eq!((got.verdict, got.base, got.now), (ActivityVerdict::Better, 4.5, 6.5));
        let got = together(&[change(4, 6), change(5, 6)]).expect("two activities");
        assert_eq!(got.verdict, ActivityVerdict::NoClearChange, "1.5 points");
        let got = together(&[change(6, 4), change(7, 5)]).expect("two activities");
        assert_eq!(got.verdict, ActivityVerdict::Worse);
        assert_eq!(together(&[change(2, 8)]), None, "one activity has its own rule");
    }

    #[test]
    fn an_activity_that_was_not_rated_again_stays_out_of_the_mean() {
        let changes = [
            activity_change(Some(Score::at_most_ten(0)), &[]),
            activity_change(Some(Score::at_most_ten(4)), &[(DayNumber(7), Score::at_most_ten(6))]),
            activity_change(Some(Score::at_most_ten(4)), &[(DayNumber(7), Score::at_most_ten(6))]),
        ];
        let got = together(&changes).expect("two of three");
        assert_eq!((got.activities, got.base, got.now), (2, 4.0, 6.0));
    }
}
