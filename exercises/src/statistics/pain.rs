//! Decides whether a pain rating from 0 to 10 has changed by a relevant amount.
//!
//! Better: down by 2 points or more and by 30 % of the baseline or more. Worse: up by 2 points or more. About 2 points or 30 %
//! marked an important decrease in 2724 people, and the share was more consistent over baselines (Farrar 2001, Pain 94:149-158,
//! 10.1016/s0304-3959(01)00349-9); requiring both, and the mirrored rule for worse, is our design. Base and now are each the median
//! of at least 3 ratings, because a single rating can lie within measurement error. With a baseline below 2 nothing can be better by
//! 2 points; it can still get worse.

use super::median::median;

/// Least change, in points.
pub const PAIN_MIN_POINTS: f64 = 2.0;
/// Least decrease, as a share of the baseline in percent.
pub const PAIN_MIN_SHARE_PERCENT: f64 = 30.0;
/// Least number of ratings at each end.
pub const PAIN_MIN_RATINGS: usize = 3;

/// The verdict on a change of pain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum PainVerdict {
    /// Down by an important amount.
    Better,
    /// Neither better nor worse by an important amount.
    NoClearChange,
    /// Up by an important amount.
    Worse,
    /// No verdict: the last rating is too long ago to speak of now.
    NotKnownLately,
    /// No verdict: fewer than [`PAIN_MIN_RATINGS`] ratings at one end.
    TooFewRatings,
}

/// The verdict and the two medians it is based on.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PainChange {
    /// The verdict.
    pub verdict: PainVerdict,
    /// Median of the ratings at the start, 0 to 10; `None` if there are none.
    pub base: Option<f64>,
    /// Median of the ratings now, 0 to 10; `None` if there are none.
    pub now: Option<f64>,
}

/// Compares ratings from 0 to 10: those of the first three days that were logged with those of now.
pub fn pain_change(base: &[u8], now: &[u8]) -> PainChange {
    let middle = |ratings: &[u8]| median(&ratings.iter().map(|&rating| f64::from(rating)).collect::<Vec<_>>());
    let (base_middle, now_middle) = (middle(base), middle(now));
    let enough = base.len() >= PAIN_MIN_RATINGS && now.len() >= PAIN_MIN_RATINGS;
    let verdict = match (base_middle, now_middle) {
        (Some(base), Some(now)) if enough => call(base, now),
        _ => PainVerdict::TooFewRatings,
    };
    PainChange { verdict, base: base_middle, now: now_middle }
}

fn call(base: f64, now: f64) -> PainVerdict {
    let down = base - now;
    // Multiplied by 100, so that 30 % of 10 is exactly 3.
    let share_reached = 100.0 * down >= PAIN_MIN_SHARE_PERCENT * base;
    if down >= PAIN_MIN_POINTS && share_reached && base >= PAIN_MIN_POINTS {
        PainVerdict::Better
    } else if -down >= PAIN_MIN_POINTS {
        PainVerdict::Worse
    } else {
        PainVerdict::NoClearChange
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(base: u8, now: u8, verdict: PainVerdict) {
        let got = pain_change(&[base; 3], &[now; 3]);
        assert_eq!(got.verdict, verdict, "{base} to {now}");
        assert_eq!((got.base, got.now), (Some(f64::from(base)), Some(f64::from(now))));
    }

    #[test]
    fn two_points_and_thirty_percent() {
        check(6, 4, PainVerdict::Better);
        check(8, 6, PainVerdict::NoClearChange);
        check(5, 3, PainVerdict::Better);
        check(3, 2, PainVerdict::NoClearChange);
        check(2, 0, PainVerdict::Better);
        check(10, 7, PainVerdict::Better);
        check(10, 8, PainVerdict::NoClearChange);
    }

    #[test]
    fn worse_is_two_points_up() {
        check(4, 6, PainVerdict::Worse);
        check(4, 5, PainVerdict::NoClearChange);
        check(8, 10, PainVerdict::Worse);
    }

    #[test]
    fn from_a_low_baseline_it_can_only_get_worse() {
        check(1, 0, PainVerdict::NoClearChange);
        check(1, 5, PainVerdict::Worse);
    }

    #[test]
    fn one_rating_gives_no_verdict() {
        assert_eq!(pain_change(&[6, 6], &[2, 2, 2]).verdict, PainVerdict::TooFewRatings);
        assert_eq!(pain_change(&[6, 6, 6], &[]).verdict, PainVerdict::TooFewRatings);
        assert_eq!(pain_change(&[], &[]).base, None);
    }

    #[test]
    fn one_bad_day_does_not_decide() {
        assert_eq!(pain_change(&[6, 6, 6], &[4, 4, 10]).verdict, PainVerdict::Better);
    }
}
