//! Scores from 0 to 10 by day: pain of a complaint, or an activity.

use super::axis::{DayAxis, WeekStart};
use crate::score::Score;
use crate::time::DayNumber;

/// Height of the drawing.
const HEIGHT: f64 = 118.0;
/// Where 10 stands.
const TOP: f64 = 12.0;
/// Where 0 stands.
const FOOT: f64 = 92.0;
/// Half way up the scale.
const MIDDLE: Score = Score::at_most_ten(5);

/// A line of scores.
#[derive(Debug, Clone, PartialEq)]
pub struct Lines {
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
    /// Scores, oldest first.
    pub points: Vec<Point>,
    /// Pieces of line between days that follow one another within a week; across a longer silence there is no line.
    pub pieces: Vec<Vec<(f64, f64)>>,
    /// The visits' own ratings: another mark, not joined to the line.
    pub at_visits: Vec<Point>,
    /// `(y, score)` of the lines across.
    pub ticks: [(f64, Score); 3],
    /// Dates below.
    pub starts: Vec<WeekStart>,
}

/// A score.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Where.
    pub x: f64,
    /// Where.
    pub y: f64,
    /// Day number.
    pub day: DayNumber,
    /// 0 to 10.
    pub score: Score,
}

/// Longest silence across which a line is drawn, in days.
const SILENCE: u16 = 7;

/// `points` and `at_visits` are `(day, score)`, oldest first. A visit's rating stands a little before its day.
pub fn lines(points: &[(DayNumber, Score)], at_visits: &[(DayNumber, Score)], axis: &DayAxis) -> Lines {
    let place = |day: DayNumber, score: Score| Point { x: axis.x(day), y: y(score), day, score };
    let within = |scores: &[(DayNumber, Score)]| -> Vec<Point> {
        let inside = scores.iter().filter(|(day, _)| (axis.first..=axis.last).contains(day));
        inside.map(|(day, score)| place(*day, *score)).collect()
    };
    let points = within(points);
    let before = |point: Point| Point { x: point.x - axis.step * 0.5, ..point };
    Lines {
        width: axis.width(),
        height: HEIGHT,
        pieces: pieces(&points),
        points,
        at_visits: within(at_visits).into_iter().map(before).collect(),
        ticks: [Score::LEAST, MIDDLE, Score::MOST].map(|score| (y(score), score)),
        starts: axis.weeks(),
    }
}

fn y(score: Score) -> f64 {
    FOOT - (FOOT - TOP) * f64::from(score) / f64::from(Score::MOST)
}

fn pieces(points: &[Point]) -> Vec<Vec<(f64, f64)>> {
    let parts = points.chunk_by(|one, next| next.day.days_since(one.day) <= SILENCE);
    parts.filter(|part| part.len() > 1).map(|part| part.iter().map(|point| (point.x, point.y)).collect()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;
    use chrono::NaiveDate;

    fn axis() -> DayAxis {
        DayAxis::for_strings(NaiveDate::from_ymd_opt(2026, 10, 26).expect("a date"), DayNumber(0), DayNumber(27), 400.0)
    }

    #[test]
    fn more_pain_stands_higher_and_the_ends_are_the_ticks() {
        let chart = lines(&on_days(&[(0, 0), (1, 5), (2, 10)]), &[], &axis());
        let ys: Vec<f64> = chart.points.iter().map(|point| point.y).collect();
        assert_eq!(ys, chart.ticks.map(|(y, _)| y));
        assert!(ys[0] > ys[1] && ys[1] > ys[2]);
    }

    #[test]
    fn across_a_long_silence_there_is_no_line() {
        let chart = lines(&on_days(&[(0, 6), (1, 6), (9, 3), (10, 3), (20, 2)]), &[], &axis());
        assert_eq!(chart.pieces.iter().map(Vec::len).collect::<Vec<_>>(), [2, 2], "the last one stands alone");
        assert_eq!(chart.points.len(), 5);
    }

    #[test]
    fn the_visit_s_own_rating_is_no_point_of_the_line() {
        let chart = lines(&on_days(&[(0, 4)]), &on_days(&[(0, 7), (40, 2)]), &axis());
        assert_eq!((chart.points.len(), chart.at_visits.len()), (1, 1), "day 40 is outside the chart");
        let visit = chart.at_visits[0];
        assert!(visit.x < chart.points[0].x && visit.y < chart.points[0].y);
    }

    #[test]
    fn nothing_rated_is_an_empty_chart() {
        let chart = lines(&[], &[], &axis());
        assert_eq!((chart.points.len(), chart.pieces.len(), chart.at_visits.len()), (0, 0, 0));
    }
}
