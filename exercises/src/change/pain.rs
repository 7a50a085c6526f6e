//! Decides whether pain changed, from one rating a day.
//!
//! Rule: the median of the first three days' ratings on the device is compared with the median of the last three, by
//! [`crate::statistics::pain_change`]. A rating is used at one end only, so fewer than six days are too few. The visit's own rating
//! is shown beside it but not used, because it was asked by another person in another place.

use crate::score::Score;
use crate::statistics::{PAIN_MIN_RATINGS, PainChange, pain_change};
use crate::time::DayNumber;

/// Compares both ends of a series of `(day, score)`, one a day, oldest first, scores 0 to 10.
pub fn pain_over_days(points: &[(DayNumber, Score)]) -> PainChange {
    let scores: Vec<u8> = points.iter().map(|(_, score)| score.points()).collect();
    let (base, later) = scores.split_at(scores.len().min(PAIN_MIN_RATINGS));
    pain_change(base, &later[later.len().saturating_sub(PAIN_MIN_RATINGS)..])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;
    use crate::statistics::PainVerdict;

    #[track_caller]
    fn check(scores: &[u8], verdict: PainVerdict) -> PainChange {
        let points = on_days(&scores.iter().enumerate().map(|(day, score)| (day as u16, *score)).collect::<Vec<_>>());
        let got = pain_over_days(&points);
        assert_eq!(got.verdict, verdict, "{scores:?}");
        got
    }

    #[test]
    fn both_ends_are_medians_of_three_days() {
        let got = check(&[6, 5, 7, 9, 9, 3, 4, 4], PainVerdict::Better);
        assert_eq!((got.base, got.now), (Some(6.0), Some(4.0)));
        check(&[4, 4, 4, 6, 6, 6], PainVerdict::Worse);
        check(&[6, 6, 6, 5, 5, 5], PainVerdict::NoClearChange);
    }

    #[test]
    fn no_rating_is_used_at_both_ends() {
        check(&[6, 6, 6, 2, 2], PainVerdict::TooFewRatings);
        check(&[6, 6, 6, 2, 2, 2], PainVerdict::Better);
        let got = check(&[6, 6], PainVerdict::TooFewRatings);
        assert_eq!((got.base, got.now), (Some(6.0), None));
        check(&[], PainVerdict::TooFewRatings);
    }

    #[test]
    fn a_low_first_rating_gives_no_verdict() {
        check(&[1, 1, 1, 0, 0, 0], PainVerdict::BaselineTooLow);
    }
}
