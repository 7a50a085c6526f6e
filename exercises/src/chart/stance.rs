//! Chart of seconds on one leg by day. Both legs share a chart if they were tested under the same conditions.
//!
//! The left leg is a filled circle, the right leg an open square. A day whose best trial reached the cap has a tick upward, because
//! its time is a lower bound. A line is drawn only if the series rises or falls clearly.

use super::axis::{DayAxis, NAMES_WIDTH, WeekStart};
use crate::catalogue::{ExerciseId, Eyes, RungId, Surface};
use crate::plan::BodySide;
use crate::review::{StanceDay, StanceSeries};
use crate::run::SetUp;
use crate::statistics::{Trend, Verdict};
use crate::time::DayNumber;

/// Height of the drawing.
const HEIGHT: f64 = 168.0;
/// Position of the scale's upper end.
const TOP: f64 = 16.0;
/// Position of 0 seconds.
const FOOT: f64 = 140.0;
/// The scale's upper end, as a multiple of the cap.
const HEADROOM: f64 = 1.08;
/// Distance from a leg's last day to the leg's name.
const BEFORE_WORDS: f64 = 11.0;
/// Least vertical distance between two names at the right.
const WORDS_APART: f64 = 17.0;

/// The series of the legs that were tested under the same conditions.
#[derive(Debug, Clone, PartialEq)]
pub struct StanceGroup {
    /// The exercise.
    pub exercise: ExerciseId,
    /// Its level, if the exercise has levels.
    pub rung: Option<RungId>,
    /// The surface that the patient stood on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// Where the phone was.
    pub set_up: SetUp,
    /// The cap of a trial, seconds.
    pub target_s: u16,
    /// One series per leg, the left leg first.
    pub legs: Vec<StanceSeries>,
}

impl StanceGroup {
    /// The last day with a trial.
    pub fn last_day(&self) -> DayNumber {
        self.legs.iter().filter_map(|leg| leg.days.last()).map(|day| day.day).max().unwrap_or_default()
    }

    fn holds(&self, series: &StanceSeries) -> bool {
        self.exercise == series.exercise
            && self.rung == series.rung
            && (self.surface, self.eyes, self.set_up) == (series.surface, series.eyes, series.set_up)
    }
}

/// Groups the series by their conditions. The group with the latest trial comes first.
pub fn groups(series: &[StanceSeries]) -> Vec<StanceGroup> {
    let mut all: Vec<StanceGroup> = Vec::new();
    for one in series {
        match all.iter_mut().find(|group| group.holds(one)) {
            Some(group) => {
                group.target_s = group.target_s.max(one.target_s);
                group.legs.push(one.clone());
            }
            None => all.push(StanceGroup {
                exercise: one.exercise.clone(),
                rung: one.rung.clone(),
                surface: one.surface,
                eyes: one.eyes,
                set_up: one.set_up,
                target_s: one.target_s,
                legs: vec![one.clone()],
            }),
        }
    }
    all.iter_mut().for_each(|group| group.legs.sort_by_key(|leg| leg.leg));
    all.sort_by_key(|group| std::cmp::Reverse(group.last_day()));
    all
}

/// One chart. Lengths in CSS pixels.
#[derive(Debug, Clone, PartialEq)]
pub struct StanceChart {
    /// Width, including the space for the legs' names at the right.
    pub width: f64,
    /// Position where the scale's lines end and the names begin.
    pub end: f64,
    /// Height.
    pub height: f64,
    /// Position of 0 seconds.
    pub foot: f64,
    /// Position of the cap, and the cap in seconds.
    pub cap: (f64, u16),
    /// One point per day and leg.
    pub points: Vec<StancePoint>,
    /// Lines of the series that rise or fall clearly.
    pub trends: Vec<Trendline>,
    /// The labels at the end of each series.
    pub ends: Vec<EndLabel>,
    /// Dates below the chart.
    pub starts: Vec<WeekStart>,
}

/// One day of one leg.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StancePoint {
    /// Horizontal position.
    pub x: f64,
    /// Vertical position of the day's median.
    pub y: f64,
    /// The leg.
    pub leg: Option<BodySide>,
    /// The day's figures, for its description in words.
    pub day: StanceDay,
}

/// A straight line through the days of one leg.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trendline {
    /// The leg.
    pub leg: Option<BodySide>,
    /// Start of the line.
    pub from: (f64, f64),
    /// End of the line.
    pub to: (f64, f64),
}

/// The leg's name at the end of its series.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EndLabel {
    /// The leg.
    pub leg: Option<BodySide>,
    /// Left end of the word.
    pub x: f64,
    /// Vertical middle of the word.
    pub y: f64,
}

/// Draws one group over `axis`. The names need [`NAMES_WIDTH`] beyond the axis.
pub fn stance(group: &StanceGroup, axis: &DayAxis) -> StanceChart {
    let cap = f64::from(group.target_s);
    let y = |seconds: f64| FOOT - (FOOT - TOP) * (seconds / (cap * HEADROOM)).clamp(0.0, 1.0);
    let inside = |day: &DayNumber| (axis.first..=axis.last).contains(day);
    let points = group.legs.iter().flat_map(|series| {
        let days = series.days.iter().filter(|day| inside(&day.day));
        days.map(|day| StancePoint { x: axis.x(day.day), y: y(day.median_s), leg: series.leg, day: *day })
    });
    let trends = group.legs.iter().filter_map(|series| trendline(series, &series.change, axis, y));
    let ends = group.legs.iter().filter_map(|series| {
        let last = series.days.iter().rev().find(|day| inside(&day.day))?;
        Some(EndLabel { leg: series.leg, x: axis.x(last.day) + BEFORE_WORDS, y: y(last.median_s) })
    });
    StanceChart {
        width: axis.width() + NAMES_WIDTH,
        end: axis.width(),
        height: HEIGHT,
        foot: FOOT,
        cap: (y(cap), group.target_s),
        points: points.collect(),
        trends: trends.collect(),
        ends: apart(ends.collect()),
        starts: axis.weeks(),
    }
}

fn trendline(series: &StanceSeries, change: &Trend, axis: &DayAxis, y: impl Fn(f64) -> f64) -> Option<Trendline> {
    if !matches!(change.verdict, Verdict::Rising | Verdict::Falling) {
        return None;
    }
    let line = change.figures?.line;
    let (first, last) = (series.days.first()?.day.max(axis.first), series.days.last()?.day.min(axis.last));
    let end = |day: DayNumber| (axis.x(day), y(line.at(i32::from(day))));
    Some(Trendline { leg: series.leg, from: end(first), to: end(last) })
}

/// Moves the names apart. Two names at nearly the same height would cover each other or the other leg's days: both are placed at the
/// later one's horizontal position, and if they are still too close, the upper one moves up and the lower one down.
fn apart(mut ends: Vec<EndLabel>) -> Vec<EndLabel> {
    ends.sort_by(|one, other| one.y.total_cmp(&other.y));
    if let [upper, lower] = ends.as_mut_slice() {
        let later = upper.x.max(lower.x);
        (upper.x, lower.x) = (later, later);
        let missing = WORDS_APART - (lower.y - upper.y);
        if missing > 0.0 {
            upper.y -= missing / 2.0;
            lower.y += missing / 2.0;
        }
    }
    ends
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::change::{Conditions, stance_change};
    use chrono::NaiveDate;

    fn axis() -> DayAxis {
        DayAxis::for_strings(NaiveDate::from_ymd_opt(2026, 10, 26).expect("a date"), DayNumber(0), DayNumber(27), 400.0)
    }

    fn series(leg: BodySide, target_s: u16, times: &[f64]) -> StanceSeries {
        let days: Vec<StanceDay> = times
            .iter()
            .enumerate()
            .map(|(day, time)| StanceDay {
                day: DayNumber(day as u16),
                trials: 3,
                best_s: *time,
                median_s: *time,
                capped: *time >= f64::from(target_s),
            })
            .collect();
        let conditions = Conditions {
            exercise: ExerciseId::new("one-leg").expect("an id"),
            rung: None,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            set_up: SetUp::OnSupport,
            leg: Some(leg),
        };
        let change = stance_change(&conditions, &days, target_s, None);
        let Conditions { exercise, rung, surface, eyes, set_up, .. } = conditions;
        let norms = crate::review::norms_not_compared();
        StanceSeries { exercise, rung, leg: Some(leg), surface, eyes, set_up, target_s, days, change, sway: None, norms }
    }

    fn rising() -> Vec<f64> {
        (0..12).map(|day| 8.0 + 1.5 * f64::from(day)).collect()
    }

    #[test]
    fn legs_under_the_same_conditions_share_a_chart_and_others_do_not() {
        let all = [
            series(BodySide::Right, 30, &[9.0; 3]),
            series(BodySide::Left, 30, &[8.0; 3]),
            StanceSeries { surface: Surface::Cushion, ..series(BodySide::Left, 45, &[20.0; 5]) },
        ];
        let groups = groups(&all);
        assert_eq!(groups.iter().map(|group| group.target_s).collect::<Vec<_>>(), [45, 30], "the latest first");
        assert_eq!(
            groups[1].legs.iter().map(|leg| leg.leg).collect::<Vec<_>>(),
            [Some(BodySide::Left), Some(BodySide::Right)]
        );
    }

    #[test]
    fn a_longer_time_is_drawn_higher_and_never_above_the_scale() {
        let chart = stance(&groups(&[series(BodySide::Left, 30, &[5.0, 29.0, 30.0])])[0], &axis());
        let ys: Vec<f64> = chart.points.iter().map(|point| point.y).collect();
        assert!(ys[0] > ys[1] && ys[1] > ys[2]);
        assert_eq!(ys[2], chart.cap.0, "at the cap");
        assert!(chart.cap.0 > TOP && chart.points[2].day.capped);
    }

    #[test]
    fn only_a_clear_change_gets_a_line() {
        let group = groups(&[series(BodySide::Left, 60, &rising()), series(BodySide::Right, 60, &[20.0; 12])]);
        let chart = stance(&group[0], &axis());
        assert_eq!(chart.trends.iter().map(|line| line.leg).collect::<Vec<_>>(), [Some(BodySide::Left)]);
        assert!(chart.trends[0].to.1 < chart.trends[0].from.1, "upward");
    }

    #[test]
    fn names_at_the_same_height_move_apart() {
        let group = groups(&[series(BodySide::Left, 30, &[20.0; 6]), series(BodySide::Right, 30, &[20.5; 6])]);
        let ends = stance(&group[0], &axis()).ends;
        assert!((ends[1].y - ends[0].y).abs() >= WORDS_APART - 1e-9);
        assert_eq!(ends[0].leg, Some(BodySide::Right), "the longer time's name is above");
    }
}
