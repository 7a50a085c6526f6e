//! Decides whether single-leg stance changed under one set of conditions.
//!
//! Rule: trials under the same exercise, rung, leg, surface, eyes and set-up of the phone make a series. A change of any of them begins
//! a new series, because times under different conditions cannot be compared. It goes on when only the target rises: a trial that
//! reached the cap of its day counts as that cap, so at least so long. A day's trials are reduced to their median, and trials that
//! were cut off are not measurements. The first [`PRACTICE_DAYS`] days of a series are practice and are left out, because the first
//! sessions rise from learning (a proposal of ours). The verdict is that of [`crate::statistics::trend`]. Days are compared and not
//! single trials, because one time is noisy (MDC95 24.1 s in older adults: Goldberg 2011, Gait Posture 33:737-9).

use crate::catalogue::{ExerciseId, Eyes, RungId, Surface};
use crate::plan::{AgeBand, BodySide};
use crate::run::{SetUp, Trial, TrialEnd};
use crate::statistics::{DayValue, StanceFallback, Trend, TrendContext, Verdict, WhyTooFew, median, trend};
use crate::time::DayNumber;

/// Whether stance changed, with the figures behind the verdict.
pub type StanceChange = Trend;

/// The conditions that stay the same within one series.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Conditions {
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
    /// The leg that the patient stood on; `None` for an exercise on both feet, of which there is one series.
    pub leg: Option<BodySide>,
}

/// Days at the beginning of a series that are practice.
pub const PRACTICE_DAYS: usize = 2;

/// One day of a series.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceDay {
    /// Day number.
    pub day: DayNumber,
    /// Number of trials that were measured.
    pub trials: u16,
    /// Longest time, in seconds.
    pub best_s: f64,
    /// Median time, in seconds.
    pub median_s: f64,
    /// Whether the longest time reached the cap: it is then a lower bound.
    pub capped: bool,
}

/// A trial's time in seconds, or the cap if it was reached; `None` for a trial that was cut off.
pub fn seconds(trial: &Trial, target_s: u16) -> Option<f64> {
    let cap = f64::from(target_s);
    match trial.end {
        TrialEnd::CutOff => None,
        TrialEnd::Target => Some(cap),
        TrialEnd::Touch => Some((f64::from(trial.held_ms) / 1000.0).min(cap)),
    }
}

/// Combines the times of one day, in seconds; `None` if nothing was measured.
pub fn stance_day(day: DayNumber, times: &[f64], target_s: u16) -> Option<StanceDay> {
    let best_s = times.iter().copied().max_by(f64::total_cmp)?;
    let trials = u16::try_from(times.len()).unwrap_or(u16::MAX);
    Some(StanceDay { day, trials, best_s, median_s: median(times)?, capped: best_s >= f64::from(target_s) })
}

/// The verdict on a series of days, oldest first, one entry per day; `cap_s` is the highest target of the series, in seconds. From 60
/// years on, `age` allows the published difference to be used.
pub fn stance_change(conditions: &Conditions, days: &[StanceDay], cap_s: u16, age: Option<AgeBand>) -> StanceChange {
    let practised = days.get(PRACTICE_DAYS..).unwrap_or_default();
    let series: Vec<DayValue> =
        practised.iter().map(|day| DayValue { day: i32::from(day.day), value: day.median_s }).collect();
    let stance = StanceFallback {
        sixty_or_older: age.is_some_and(|age| age >= AgeBand::From60),
        eyes_open: conditions.eyes == Eyes::Open,
        firm_floor: conditions.surface == Surface::Firm,
    };
    let cap = Some(f64::from(cap_s));
    let context = TrendContext { cap, given_difference: None, stance: Some(stance) };
    // With one finite value a day and a few hundred days at most, the series has no fault. If it did, no change would be reported.
    trend(&series, &context).unwrap_or(Trend {
        verdict: Verdict::TooFewData,
        days: 0,
        at_cap: 0,
        too_few: Some(WhyTooFew::Days),
        figures: None,
    })
}
