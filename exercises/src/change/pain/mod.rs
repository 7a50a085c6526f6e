//! Decides whether pain changed, from one morning's rating a day.
//!
//! Rule (a proposal of ours): the base is the median of the first three mornings, or the visit's own rating until there are three.
//! It is compared with the median of the last three by [`crate::statistics::pain_change`]. A rating is used at one end only, so
//! fewer than six mornings are too few. If the last one is more than [`LATELY_DAYS`] before the end of the period, nothing is said of
//! now.

mod flare;
mod series;
mod unsettled;

use crate::score::Score;
use crate::statistics::{PAIN_MIN_RATINGS, PainVerdict, median, pain_change};
use crate::time::DayNumber;

pub use flare::{FLARE_DAYS, FLARE_POINTS, Flare, flares};
pub use series::{DuringSeries, PainSeries};
pub use unsettled::{UNSETTLED_POINTS, unsettled};

/// Days before the end of the period within which the last rating still says something of now.
pub const LATELY_DAYS: u16 = 14;

/// How the pain of one complaint changed.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PainChange {
    /// The verdict.
    pub verdict: PainVerdict,
    /// The base, 0 to 10; `None` without any rating at the start.
    pub base: Option<f64>,
    /// The median of the last three mornings that are not the base's, 0 to 10; `None` if there are fewer.
    pub now: Option<f64>,
    /// The day of the last morning that was rated.
    pub last_day: Option<DayNumber>,
}

/// Compares both ends of `mornings`, one a day, oldest first. `at_visit` is the rating of the first visit; `until` the last day of
/// the period.
pub fn pain_over_days(mornings: &[(DayNumber, Score)], at_visit: Option<Score>, until: DayNumber) -> PainChange {
    let scores: Vec<u8> = mornings.iter().map(|(_, score)| score.points()).collect();
    let (first, later) = scores.split_at(scores.len().min(PAIN_MIN_RATINGS));
    let change = pain_change(first, &later[later.len().saturating_sub(PAIN_MIN_RATINGS)..]);
    let last_day = mornings.last().map(|(day, _)| *day);
    let long_ago = last_day.is_some_and(|last| until.days_since(last) > LATELY_DAYS);
    let verdict = match change.verdict {
        PainVerdict::TooFewRatings => PainVerdict::TooFewRatings,
        _ if long_ago => PainVerdict::NotKnownLately,
        verdict => verdict,
    };
    let now = change.now.filter(|_| later.len() >= PAIN_MIN_RATINGS);
    PainChange { verdict, base: base(mornings, at_visit), now, last_day }
}

/// The base: the median of the first three mornings, or the visit's own rating until there are three; `None` without that.
pub fn base(mornings: &[(DayNumber, Score)], at_visit: Option<Score>) -> Option<f64> {
    mornings.get(..PAIN_MIN_RATINGS).map_or_else(|| at_visit.map(f64::from), middle)
}

fn middle(ratings: &[(DayNumber, Score)]) -> Option<f64> {
    median(&ratings.iter().map(|(_, score)| f64::from(*score)).collect::<Vec<_>>())
}

/// The median of up to seven ratings before `place`; `None` without any.
fn before(ratings: &[(DayNumber, Score)], place: usize) -> Option<f64> {
    middle(&ratings[place.saturating_sub(WEEK)..place])
}

/// Number of ratings that a new one is compared with.
const WEEK: usize = 7;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;

    /// The change over mornings of days 0, 1, 2 and so on, at the end of them.
    #[track_caller]
    fn check(scores: &[u8], verdict: PainVerdict) -> PainChange {
        let points = on_days(&(0..).zip(scores.iter().copied()).collect::<Vec<_>>());
        let until = points.last().map(|(day, _)| *day).unwrap_or_default();
        let got = pain_over_days(&points, Score::new(6), until);
        assert_eq!(got.verdict, verdict, "{scores:?}");
        got
    }

    #[test]
    fn both_ends_are_medians_of_three_mornings() {
        let got = check(&[6, 5, 7, 9, 9, 3, 4, 4], PainVerdict::Better);
        assert_eq!((got.base, got.now, got.last_day), (Some(6.0), Some(4.0), Some(DayNumber(7))));
        check(&[4, 4, 4, 6, 6, 6], PainVerdict::Worse);
        check(&[6, 6, 6, 5, 5, 5], PainVerdict::NoClearChange);
    }

    #[test]
    fn no_rating_is_used_at_both_ends_and_the_visits_is_the_base_until_there_are_three() {
        check(&[6, 6, 6, 2, 2], PainVerdict::TooFewRatings);
        check(&[6, 6, 6, 2, 2, 2], PainVerdict::Better);
        let got = check(&[5, 5], PainVerdict::TooFewRatings);
        assert_eq!((got.base, got.now), (Some(6.0), None));
        assert_eq!(check(&[], PainVerdict::TooFewRatings).base, Some(6.0));
    }

    #[test]
    fn two_mornings_alone_are_no_base() {
        let points = on_days(&[(0, 4), (1, 4), (2, 5)]);
        assert_eq!((base(&points[..2], None), base(&points, None)), (None, Some(4.0)));
    }

    #[test]
    fn a_low_base_can_get_worse_but_not_better() {
        check(&[1, 1, 1, 0, 0, 0], PainVerdict::NoClearChange);
        check(&[1, 1, 1, 7, 8, 8], PainVerdict::Worse);
    }

    #[test]
    fn a_last_rating_long_ago_says_nothing_of_now() {
        let points = on_days(&(0..).zip([6, 6, 6, 2, 2, 2]).collect::<Vec<_>>());
        let at = |until| pain_over_days(&points, None, DayNumber(until)).verdict;
        assert_eq!((at(5 + 14), at(5 + 15)), (PainVerdict::Better, PainVerdict::NotKnownLately));
        let few = pain_over_days(&points[..3], None, DayNumber(90)).verdict;
        assert_eq!(few, PainVerdict::TooFewRatings);
    }
}
