//! The verdict on a series: rising, no clear change, falling, too few data, at the cap.
//!
//! Rule (our design): one value a day. Fewer than 5 days are too few, because no order of 4 values reaches p < 0.05. If 30 % or more
//! of the values are at the cap, the verdict is "at the cap" and no slope is given, because the cap hides the true values. Without
//! an [important difference](super::important_difference) the data are too few. "Rising" or "falling" needs both p < 0.05
//! (Mann-Kendall, exact up to 60 days) and |slope| times the span in days at or above the important difference; everything else is
//! "no clear change".
//!
//! Each change of exercise, surface, eyes, cap or target starts a new series. If several series are tested at once, no conclusion is
//! drawn from a single p-value.

use super::{
    DayValue, ImportantDifference, MannKendall, SeriesFault, StanceFallback, TheilSen, important_difference, in_order,
    mann_kendall, theil_sen,
};

/// With fewer days than this the data are too few.
pub const TOO_FEW_DAYS: usize = 5;
/// Share of values at the cap (0 to 1) from which on the verdict is "at the cap".
pub const AT_CAP_SHARE: f64 = 0.30;
/// Significance level of the test.
const ALPHA: f64 = 0.05;
/// Confidence level of the slope's limits.
const CONFIDENCE: f64 = 0.95;

/// The verdict on a series.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Verdict {
    /// The values rise by an important amount.
    Rising,
    /// Neither rising nor falling clearly; not the same as "no change".
    NoClearChange,
    /// The values fall by an important amount.
    Falling,
    /// Too few days, or no important difference to compare with.
    TooFewData,
    /// Too many values are at the cap.
    AtTheCap,
}

/// Why the data are too few.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum WhyTooFew {
    /// Fewer than [`TOO_FEW_DAYS`] days.
    Days,
    /// No difference was given, the person's own spread needs more days, and the published figure does not apply.
    ImportantDifference,
}

/// What is known about the conditions of the series.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TrendContext {
    /// The largest possible value, in the unit of the values.
    pub cap: Option<f64>,
    /// A minimal detectable change to compare with, in the unit of the values.
    pub given_difference: Option<f64>,
    /// Only for stance times in seconds: the conditions under which the published figure applies.
    pub stance: Option<StanceFallback>,
}

/// The figures behind a verdict.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TrendFigures {
    /// Time from the first to the last day, in days.
    pub span_days: u32,
    /// Slope times the span, in the unit of the values.
    pub change: f64,
    /// The line and its limits.
    pub line: TheilSen,
    /// The result of the test.
    pub test: MannKendall,
    /// The important difference that the change was compared with.
    pub important: ImportantDifference,
}

/// The verdict on a series and the figures it is based on.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Trend {
    /// The verdict.
    pub verdict: Verdict,
    /// Number of days with a value.
    pub days: usize,
    /// Number of days whose value is at the cap.
    pub at_cap: usize,
    /// Set if the verdict is [`Verdict::TooFewData`].
    pub too_few: Option<WhyTooFew>,
    /// Absent if the verdict is [`Verdict::TooFewData`] or [`Verdict::AtTheCap`].
    pub figures: Option<TrendFigures>,
}

/// Computes the verdict on a series.
///
/// # Errors
/// [`SeriesFault`] if the series cannot be used.
pub fn trend(series: &[DayValue], context: &TrendContext) -> Result<Trend, SeriesFault> {
    let series = in_order(series)?;
    let at_cap = context.cap.map_or(0, |cap| series.iter().filter(|one| one.value >= cap).count());
    let plain = |verdict, too_few| Trend { verdict, days: series.len(), at_cap, too_few, figures: None };
    if series.len() < TOO_FEW_DAYS {
        return Ok(plain(Verdict::TooFewData, Some(WhyTooFew::Days)));
    }
    if at_cap as f64 >= AT_CAP_SHARE * series.len() as f64 {
        return Ok(plain(Verdict::AtTheCap, None));
    }
    Ok(match figures(&series, context)? {
        Some(figures) => Trend { figures: Some(figures), ..plain(word(&figures), None) },
        None => plain(Verdict::TooFewData, Some(WhyTooFew::ImportantDifference)),
    })
}

fn figures(series: &[DayValue], context: &TrendContext) -> Result<Option<TrendFigures>, SeriesFault> {
    let Some(line) = theil_sen(series, CONFIDENCE)? else {
        return Ok(None);
    };
    let important = important_difference(series, &line, context.given_difference, context.stance);
    let Some(important) = important else {
        return Ok(None);
    };
    let span_days = match (series.first(), series.last()) {
        (Some(first), Some(last)) => last.day.abs_diff(first.day),
        _ => 0,
    };
    let change = line.slope * f64::from(span_days);
    Ok(Some(TrendFigures { span_days, change, line, test: mann_kendall(series)?, important }))
}

fn word(figures: &TrendFigures) -> Verdict {
    let clear = figures.test.p() < ALPHA && figures.change.abs() >= figures.important.difference;
    // A line with slope 0 has no direction, however small the important difference is.
    match figures.line.slope {
        slope if clear && slope > 0.0 => Verdict::Rising,
        slope if clear && slope < 0.0 => Verdict::Falling,
        _ => Verdict::NoClearChange,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::{a, b, c, d, e, series};

    fn given(difference: f64) -> TrendContext {
        TrendContext { given_difference: Some(difference), ..TrendContext::default() }
    }

    #[track_caller]
    fn check(series: &[DayValue], context: &TrendContext, verdict: Verdict) -> Trend {
        let got = trend(series, context).expect("a sound series");
        assert_eq!(got.verdict, verdict, "{got:?}");
        got
    }

    #[test]
    fn a_clear_and_important_rise() {
        // Vector A rises by 0.335714 * 14 = 4.7 s with p = .030.
        let got = check(&a(), &given(4.7), Verdict::Rising);
        assert_eq!(got.figures.map(|figures| figures.span_days), Some(14));
        check(&a(), &given(4.8), Verdict::NoClearChange);
    }

    #[test]
    fn a_fall_beyond_the_persons_own_spread() {
        check(&b(), &TrendContext::default(), Verdict::Falling);
    }

    #[test]
    fn four_days_are_too_few() {
        let got = check(&c(), &given(0.0), Verdict::TooFewData);
        assert_eq!(got.too_few, Some(WhyTooFew::Days));
        check(&[], &given(0.0), Verdict::TooFewData);
    }

    #[test]
    fn seven_days_without_an_important_difference_are_too_few() {
        let got = check(&a(), &TrendContext::default(), Verdict::TooFewData);
        assert_eq!(got.too_few, Some(WhyTooFew::ImportantDifference));
        assert_eq!(got.figures, None);
    }

    #[test]
    fn equal_values_are_no_clear_change_even_without_a_threshold() {
        check(&d(), &given(0.0), Verdict::NoClearChange);
    }

    #[test]
    fn four_of_seven_at_the_cap() {
        let context = TrendContext { cap: Some(45.0), ..given(1.0) };
        let got = check(&e(), &context, Verdict::AtTheCap);
        assert_eq!((got.at_cap, got.figures), (4, None));
    }

    #[test]
    fn thirty_percent_at_the_cap_is_enough_and_less_is_not() {
        let days: Vec<i32> = (0..10).collect();
        let mut values = [31.0, 33.0, 35.0, 36.0, 38.0, 40.0, 42.0, 45.0, 45.0, 45.0];
        let context = TrendContext { cap: Some(45.0), ..given(1.0) };
        check(&series(&days, &values), &context, Verdict::AtTheCap);
        values[7] = 44.0;
        check(&series(&days, &values), &context, Verdict::Rising);
    }

    #[test]
    fn important_but_not_beyond_chance() {
        let restless = series(&[0, 1, 2, 3, 4, 5], &[10.0, 30.0, 12.0, 28.0, 14.0, 33.0]);
        check(&restless, &given(1.0), Verdict::NoClearChange);
    }

    #[test]
    fn the_published_difference_is_used_for_older_adults() {
        let stance = Some(StanceFallback { sixty_or_older: true, eyes_open: true, firm_floor: true });
        let context = TrendContext { stance, ..TrendContext::default() };
        // 24.1/sqrt 3 is 13.9 s; the series rises by 4.7 s.
        check(&a(), &context, Verdict::NoClearChange);
        let steep: Vec<DayValue> = a().iter().map(|one| DayValue { value: one.value * 4.0, ..*one }).collect();
        check(&steep, &context, Verdict::Rising);
    }

    #[test]
    fn a_faulty_series_gives_no_verdict() {
        let twice = series(&[1, 1], &[1.0, 2.0]);
        assert_eq!(trend(&twice, &TrendContext::default()), Err(SeriesFault::RepeatedDay { day: 1 }));
    }
}
