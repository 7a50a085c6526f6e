//! A rating from 0 to 10.

use std::fmt;
use std::str::FromStr;

/// Pain, 0 (none) to 10 (the worst imaginable), or how well an activity goes, 0 (not at all) to 10 (as before). Both are
/// asked for on the usual scale of eleven whole numbers, so other values cannot be represented.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(try_from = "u8", into = "u8"))]
pub struct Score(u8);

/// The error for a number that is not a whole number from 0 to 10.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotAScore;

impl Score {
    /// The lowest rating, 0.
    pub const LEAST: Score = Score(0);
    /// The highest rating, 10.
    pub const MOST: Score = Score(10);

    /// The rating of `points`, 0 to 10; `None` for a larger number.
    pub const fn new(points: u8) -> Option<Score> {
        if points <= Score::MOST.0 { Some(Score(points)) } else { None }
    }

    /// The rating of `points`; 10 for any larger number.
    pub const fn at_most_ten(points: u8) -> Score {
        if points <= Score::MOST.0 { Score(points) } else { Score::MOST }
    }

    /// The rating as a number, 0 to 10.
    pub const fn points(self) -> u8 {
        self.0
    }

    /// The rating one point higher, at most 10.
    pub fn up(self) -> Score {
        Score::at_most_ten(self.0 + 1)
    }

    /// The rating one point lower, at least 0.
    pub fn down(self) -> Score {
        Score(self.0.saturating_sub(1))
    }

    /// All ratings from 0 to 10.
    pub fn all() -> impl Iterator<Item = Score> {
        (Score::LEAST.0..=Score::MOST.0).map(Score)
    }
}

impl fmt::Display for Score {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl fmt::Display for NotAScore {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a rating is 0 to 10")
    }
}

impl std::error::Error for NotAScore {}

/// Reads `0` to `10`, the form in which a rating is shown.
impl FromStr for Score {
    type Err = NotAScore;

    fn from_str(text: &str) -> Result<Score, NotAScore> {
        text.parse().ok().and_then(Score::new).ok_or(NotAScore)
    }
}

impl TryFrom<u8> for Score {
    type Error = NotAScore;

    fn try_from(points: u8) -> Result<Score, NotAScore> {
        Score::new(points).ok_or(NotAScore)
    }
}

impl TryFrom<i64> for Score {
    type Error = NotAScore;

    fn try_from(points: i64) -> Result<Score, NotAScore> {
        u8::try_from(points).ok().and_then(Score::new).ok_or(NotAScore)
    }
}

impl From<Score> for i64 {
    fn from(score: Score) -> i64 {
        score.0.into()
    }
}

impl From<Score> for u8 {
    fn from(score: Score) -> u8 {
        score.0
    }
}

impl From<Score> for f64 {
    fn from(score: Score) -> f64 {
        score.0.into()
    }
}

/// Ratings by day for the tests, from pairs of a day number and points.
#[cfg(test)]
pub(crate) fn on_days(points: &[(u16, u8)]) -> Vec<(crate::time::DayNumber, Score)> {
    points.iter().map(|(day, points)| (crate::time::DayNumber(*day), Score::at_most_ten(*points))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_is_no_score_above_ten() {
        for points in 0..=u8::MAX {
            assert_eq!(Score::new(points).map(Score::points), (points <= 10).then_some(points));
            assert_eq!(Score::try_from(points).ok(), Score::new(points));
            assert_eq!(points.to_string().parse().ok(), Score::new(points));
            assert_eq!(Score::at_most_ten(points).points(), points.min(10));
        }
        assert_eq!(Score::all().map(Score::points).collect::<Vec<_>>(), (0..=10).collect::<Vec<_>>());
    }

    #[test]
    fn a_step_stays_on_the_scale() {
        assert_eq!((Score::LEAST.down(), Score::MOST.up()), (Score::LEAST, Score::MOST));
        assert_eq!((Score::LEAST.up().points(), Score::MOST.down().points()), (1, 9));
    }
}
