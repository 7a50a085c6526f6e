//! Statistics for short, noisy series of one person: one value a day over some weeks, with a ceiling and outliers.
//!
//! One rule per file, each with its source and its tests. Nothing here assumes that a person's values are normally distributed, and
//! nothing turns "not enough data" into a number.
//!
//! Reading order: [`median()`], [`mad`], [`quartiles`]; [`mann_kendall()`] and [`theil_sen()`]; the [`trend()`] verdict, which
//! combines both with [`important_difference`]; [`wilson()`] limits of a proportion; [`side_to_side`]; [`pain_change`].

mod important;
mod kendall;
mod median;
mod normal;
mod pain;
mod symmetry;
mod theil_sen;
mod trend;
mod wilson;

pub use important::{
    DifferenceBasis, FALLBACK_MDC95_S, ImportantDifference, OWN_SPREAD_MIN_DAYS, StanceFallback, important_difference,
    mdc90, mdc95,
};
pub use kendall::{EXACT_MAX_N, MannKendall, mann_kendall, tau_b};
pub use median::{MAD_TO_SD, Quartiles, mad, median, percentile, quartiles};
pub use normal::{normal_quantile, normal_tail};
pub use pain::{PAIN_MIN_POINTS, PAIN_MIN_RATINGS, PAIN_MIN_SHARE_PERCENT, PainChange, PainVerdict, pain_change};
pub use symmetry::{SYMMETRY_FLOOR_S, SYMMETRY_LINE_PERCENT, Symmetry, SymmetryInput, SymmetryVerdict, side_to_side};
pub use theil_sen::{TheilSen, theil_sen};
pub use trend::{AT_CAP_SHARE, TOO_FEW_DAYS, Trend, TrendContext, TrendFigures, Verdict, WhyTooFew, trend};
pub use wilson::{Interval, design_effect, wilson, wilson_clustered};

/// The value of one day, in the series' own unit.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DayValue {
    /// Days since any fixed day; only differences matter.
    pub day: i32,
    /// The day's value: the median or the best of the day's trials. The caller chooses, and must use the same for the whole series.
    pub value: f64,
}

/// Largest number of days in a series: ten years. The number of pairwise slopes grows with its square.
pub const MAX_DAYS: usize = 3660;

/// Why a series cannot be used at all. Being short is not a fault.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum SeriesFault {
    /// A value is infinite or not a number.
    NotFinite {
        /// The day with this value.
        day: i32,
    },
    /// A day occurs twice; the caller has to reduce each day to one value first.
    RepeatedDay {
        /// The day.
        day: i32,
    },
    /// More than [`MAX_DAYS`] days.
    TooManyDays {
        /// Number of days in the series.
        days: usize,
    },
}

/// The series sorted by day.
///
/// # Errors
/// The first [`SeriesFault`] found.
pub fn in_order(series: &[DayValue]) -> Result<Vec<DayValue>, SeriesFault> {
    if series.len() > MAX_DAYS {
        return Err(SeriesFault::TooManyDays { days: series.len() });
    }
    if let Some(bad) = series.iter().find(|one| !one.value.is_finite()) {
        return Err(SeriesFault::NotFinite { day: bad.day });
    }
    let mut ordered = series.to_vec();
    ordered.sort_by_key(|one| one.day);
    match ordered.windows(2).find(|pair| pair[0].day == pair[1].day) {
        Some(pair) => Err(SeriesFault::RepeatedDay { day: pair[0].day }),
        None => Ok(ordered),
    }
}

#[cfg(test)]
pub(crate) mod vectors {
    //! The five worked series that are used to check several rules.
    use super::DayValue;

    pub fn series(days: &[i32], values: &[f64]) -> Vec<DayValue> {
        assert_eq!(days.len(), values.len());
        days.iter().zip(values).map(|(&day, &value)| DayValue { day, value }).collect()
    }

    pub fn a() -> Vec<DayValue> {
        series(&[0, 2, 4, 7, 9, 11, 14], &[8.2, 9.0, 7.5, 10.1, 11.4, 10.8, 12.9])
    }

    pub fn b() -> Vec<DayValue> {
        series(&[0, 1, 2, 3, 4, 5, 6, 7], &[6.0, 6.0, 5.0, 5.0, 4.0, 4.0, 3.0, 4.0])
    }

    pub fn c() -> Vec<DayValue> {
        series(&[1, 2, 3, 4], &[10.0, 12.0, 11.0, 30.0])
    }

    pub fn d() -> Vec<DayValue> {
        series(&[0, 1, 2, 3, 4], &[5.0; 5])
    }

    pub fn e() -> Vec<DayValue> {
        series(&[0, 1, 2, 3, 4, 5, 6], &[31.0, 38.5, 45.0, 42.0, 45.0, 45.0, 45.0])
    }

    /// Asserts equality to the number of digits that the example is published with.
    #[track_caller]
    pub fn close(got: f64, printed: f64, half_unit: f64) {
        assert!((got - printed).abs() <= half_unit, "{got} is not {printed} within {half_unit}");
    }
}

#[cfg(test)]
mod tests {
    use super::vectors::series;
    use super::*;

    #[test]
    fn an_unsorted_series_is_put_in_order() {
        let ordered = in_order(&series(&[3, 1, 2], &[30.0, 10.0, 20.0])).expect("three sound days");
        assert_eq!(ordered, series(&[1, 2, 3], &[10.0, 20.0, 30.0]));
    }

    #[test]
    fn an_unusable_series_gives_the_reason() {
        assert_eq!(in_order(&series(&[1, 2], &[1.0, f64::NAN])), Err(SeriesFault::NotFinite { day: 2 }));
        assert_eq!(in_order(&series(&[4, 1, 4], &[1.0, 2.0, 3.0])), Err(SeriesFault::RepeatedDay { day: 4 }));
        let long = vec![DayValue { day: 0, value: 0.0 }; MAX_DAYS + 1];
        assert_eq!(in_order(&long), Err(SeriesFault::TooManyDays { days: MAX_DAYS + 1 }));
    }
}
