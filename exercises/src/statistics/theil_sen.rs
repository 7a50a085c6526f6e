//! Theil-Sen line: the median of all pairwise slopes. Up to about a third of outlying days do not change it.
//!
//! Slope = median of (y_j - y_i)/(x_j - x_i). The intercept is the "separate" one: median y - slope * median x. Limits of Sen: of
//! the N sorted slopes, those at round((N - z sigma)/2) - 1 and round((N + z sigma)/2), counted from 0, clamped to the list; sigma^2
//! is the tie-corrected variance of Kendall's S, and rounding takes halves to even (Theil 1950, Proc Kon Ned Akad Wet 53; Sen 1968,
//! J Am Stat Assoc 63:1379-1389).
//!
//! If many values are at a ceiling, the slope is biased towards 0.

use super::{
    DayValue, Interval, SeriesFault, in_order, kendall::variance_of, median::ascending, median::median,
    normal::normal_quantile,
};

/// A straight line through one series.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TheilSen {
    /// Slope, in the unit of the values per day.
    pub slope: f64,
    /// Confidence limits of the slope.
    pub limits: Interval,
    /// The value of the line at day 0, by separate medians.
    pub intercept: f64,
    /// Number of pairs of days.
    pub pairs: usize,
}

impl TheilSen {
    /// The line's value on a day.
    pub fn at(&self, day: i32) -> f64 {
        self.intercept + self.slope * f64::from(day)
    }
}

/// The line through a series, with limits at a `confidence` between 0 and 1. `None` for fewer than two days, for values so large
/// that a slope is not finite, or for a confidence outside that range.
///
/// # Errors
/// [`SeriesFault`] if the series cannot be used.
pub fn theil_sen(series: &[DayValue], confidence: f64) -> Result<Option<TheilSen>, SeriesFault> {
    let series = in_order(series)?;
    let variance = variance_of(&series);
    let mut slopes = slopes(&series);
    let sound = confidence > 0.0 && confidence < 1.0;
    let (Some(z), true) = (normal_quantile(0.5 + confidence / 2.0), sound) else {
        return Ok(None);
    };
    if slopes.is_empty() || slopes.iter().any(|slope| !slope.is_finite()) {
        return Ok(None);
    }
    let pairs = slopes.len();
    let (slope, limits) = middle_and_limits(&mut slopes, z * libm::sqrt(variance));
    let intercept = separate_intercept(&series, slope);
    let line = TheilSen { slope, limits, intercept, pairs };
    Ok(intercept.is_finite().then_some(line))
}

fn slopes(series: &[DayValue]) -> Vec<f64> {
    let mut slopes = Vec::with_capacity(series.len() * series.len().saturating_sub(1) / 2);
    for (place, earlier) in series.iter().enumerate() {
        for later in &series[place + 1..] {
            let days = f64::from(later.day) - f64::from(earlier.day);
            slopes.push((later.value - earlier.value) / days);
        }
    }
    slopes
}

/// The median slope and the slopes at the two limits. Two years of days have a quarter of a million slopes, so only these three are
/// selected instead of sorting them all.
fn middle_and_limits(slopes: &mut [f64], reach: f64) -> (f64, Interval) {
    let count = slopes.len() as f64;
    let low = (((count - reach) / 2.0).round_ties_even() - 1.0).max(0.0) as usize;
    let high = ((count + reach) / 2.0).round_ties_even().min(count - 1.0) as usize;
    let (half, even) = (slopes.len() / 2, slopes.len().is_multiple_of(2));
    let (below, middle, above) = slopes.select_nth_unstable_by(half, ascending);
    let before = below.iter().copied().max_by(ascending).filter(|_| even);
    let slope = before.map_or(*middle, |before| before.midpoint(*middle));
    let at = |part: &mut [f64], place| *part.select_nth_unstable_by(place, ascending).1;
    // The places of the limits are on either side of the middle, or at it.
    let low = if low < half { at(below, low) } else { *middle };
    let high = if high > half { at(above, high - half - 1) } else { *middle };
    (slope, Interval { low, high })
}

fn separate_intercept(series: &[DayValue], slope: f64) -> f64 {
    let days: Vec<f64> = series.iter().map(|one| f64::from(one.day)).collect();
    let values: Vec<f64> = series.iter().map(|one| one.value).collect();
    let middle = |of: &[f64]| median(of).expect("a series with a slope has finite values");
    middle(&values) - slope * middle(&days)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::{a, b, c, close, d, e, series};

    #[track_caller]
    fn check(series: &[DayValue], slope: f64, low: f64, high: f64, intercept: f64, pairs: usize) {
        let got = theil_sen(series, 0.95).expect("sound").expect("two days or more");
        close(got.slope, slope, 5e-7);
        close(got.limits.low, low, 5e-7);
        close(got.limits.high, high, 5e-7);
        close(got.intercept, intercept, 5e-7);
        assert_eq!(got.pairs, pairs);
    }

    #[test]
    fn the_five_worked_series() {
        check(&a(), 0.335714, 0.175, 0.65, 7.75, 21);
        check(&b(), -0.5, -0.6, 0.0, 6.25, 28);
        check(&c(), 4.333333, -1.0, 19.0, 0.666667, 6);
        check(&d(), 0.0, 0.0, 0.0, 5.0, 10);
        check(&e(), 1.625, 0.0, 3.5, 40.125, 21);
    }

    #[test]
    fn the_selected_slopes_equal_those_of_a_full_sort() {
        for count in 1..40_u32 {
            for reach in [0.0, 0.4, 1.0, 3.0, 7.5, 20.0, 39.0, 100.0] {
                let mut slopes: Vec<f64> = (0..count).map(|k| f64::from(k * 17 % 23) - 9.0).collect();
                let mut order = slopes.clone();
                order.sort_by(f64::total_cmp);
                let (n, half) = (f64::from(count), order.len() / 2);
                let low = (((n - reach) / 2.0).round_ties_even() - 1.0).max(0.0);
                let high = ((n + reach) / 2.0).round_ties_even().min(n - 1.0);
                let slope = if count % 2 == 1 { order[half] } else { order[half - 1].midpoint(order[half]) };
                let want = (slope, Interval { low: order[low as usize], high: order[high as usize] });
                assert_eq!(middle_and_limits(&mut slopes, reach), want, "{count} slopes, reach {reach}");
            }
        }
    }

    #[test]
    fn the_line_passes_through_its_medians() {
        let line = theil_sen(&a(), 0.95).expect("sound").expect("seven days");
        close(line.at(7), 10.1, 1e-12);
    }

    #[test]
    fn a_short_series_large_values_and_an_invalid_confidence_give_no_line() {
        assert_eq!(theil_sen(&[], 0.95), Ok(None));
        assert_eq!(theil_sen(&series(&[1], &[2.0]), 0.95), Ok(None));
        assert_eq!(theil_sen(&series(&[1, 2], &[-f64::MAX, f64::MAX]), 0.95), Ok(None));
        assert_eq!(theil_sen(&a(), 1.0), Ok(None));
        assert_eq!(theil_sen(&series(&[1, 2], &[2.0, f64::NAN]), 0.95), Err(SeriesFault::NotFinite { day: 2 }));
    }

    #[test]
    fn days_at_both_ends_of_the_count_do_not_overflow() {
        let wide = series(&[i32::MIN, i32::MAX], &[0.0, 1.0]);
        let line = theil_sen(&wide, 0.95).expect("sound").expect("two days");
        close(line.slope, 1.0 / 4_294_967_295.0, 1e-20);
    }
}
