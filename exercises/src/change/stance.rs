//! Whether single-leg stance changed under one set of conditions.
//!
//! Rule: trials under the same exercise, rung, leg, surface, eyes, set-up of the phone and cap make a series; a change of any
//! of them begins another, because times under other conditions are other times. A day's trials are reduced to their median,
//! trials that were cut off are no measurement, and a trial that reached the cap counts as the cap. The word for the series
//! is that of [`crate::statistics::trend`]. Days, not tries, because one time is noisy (MDC95 24.1 s in older adults:
//! Goldberg 2011, Gait Posture 33:737-9).

use crate::catalogue::{ExerciseId, Eyes, RungId, Surface};
use crate::plan::{AgeBand, BodySide};
use crate::run::{SetUp, Trial, TrialEnd};
use crate::statistics::{DayValue, StanceFallback, Trend, TrendContext, Verdict, WhyTooFew, median, trend};
use crate::time::DayNumber;

/// Whether stance changed, with the figures behind the word.
pub type StanceChange = Trend;

/// Everything that stays the same within one series.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Conditions {
    /// The exercise.
    pub exercise: ExerciseId,
    /// Its rung.
    pub rung: Option<RungId>,
    /// What was stood on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// Where the phone was.
    pub set_up: SetUp,
    /// The cap in seconds.
    pub target_s: u16,
    /// The leg stood on.
    pub leg: BodySide,
}

/// One day of a series.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceDay {
    /// The day.
    pub day: DayNumber,
    /// Trials that were measured.
    pub trials: u16,
    /// The best, in seconds.
    pub best_s: f64,
    /// The median, in seconds.
    pub median_s: f64,
    /// Whether the best reached the cap: it is then a lower bound.
    pub capped: bool,
}

/// A trial's time in seconds, the cap where it was reached; `None` for a trial that was cut off.
pub fn seconds(trial: &Trial, target_s: u16) -> Option<f64> {
    let cap = f64::from(target_s);
    match trial.end {
        TrialEnd::CutOff => None,
        TrialEnd::Target => Some(cap),
        TrialEnd::Touch => Some((f64::from(trial.held_ms) / 1000.0).min(cap)),
    }
}

/// Reduces a day's times, in seconds, to one line; `None` where nothing was measured.
pub fn stance_day(day: DayNumber, times: &[f64], target_s: u16) -> Option<StanceDay> {
    let best_s = times.iter().copied().max_by(f64::total_cmp)?;
    let trials = u16::try_from(times.len()).unwrap_or(u16::MAX);
    Some(StanceDay { day, trials, best_s, median_s: median(times)?, capped: best_s >= f64::from(target_s) })
}

/// The word for a series of days, oldest first, one a day. `age` opens the published yardstick from 60 years on.
pub fn stance_change(conditions: &Conditions, days: &[StanceDay], age: Option<AgeBand>) -> StanceChange {
    let series: Vec<DayValue> = days.iter().map(|day| DayValue { day: i32::from(day.day), value: day.median_s }).collect();
    let stance = StanceFallback {
        sixty_or_older: age.is_some_and(|age| age >= AgeBand::From60),
        eyes_open: conditions.eyes == Eyes::Open,
        firm_floor: conditions.surface == Surface::Firm,
    };
    let cap = Some(f64::from(conditions.target_s));
    let context = TrendContext { cap, given_difference: None, stance: Some(stance) };
    // One finite value a day, a few hundred at most: the series has no fault. Should it have one, nothing is claimed.
    trend(&series, &context).unwrap_or(Trend {
        verdict: Verdict::TooFewData,
        days: 0,
        at_cap: 0,
        too_few: Some(WhyTooFew::Days),
        figures: None,
    })
}
