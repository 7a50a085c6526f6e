//! The important difference of a series: the smallest change that is worth mentioning.
//!
//! Formulas: SEM = SD sqrt(1 - ICC); MDC95 = 1.96 sqrt 2 SEM; MDC90 = 1.645 sqrt 2 SEM; the mean of k independent days
//! divides the SEM by sqrt k (Weir 2005, J Strength Cond Res 19:231-240).
//!
//! Rule (our design); the first that applies is used:
//! 1. a minimal detectable change given by the caller;
//! 2. from 8 days on, the person's own: 1.96 sqrt 2 s / sqrt k, with s = 1.4826 MAD of the residuals from the Theil-Sen
//!    line and k = min(7, n/2) days averaged at each end;
//! 3. 24.1 s / sqrt k, only for people of 60 years or older, eyes open, on a firm floor (single-leg stance, n = 25, 60 to 89 years:
//!    SEM 8.7 s, MDC95 24.1 s; Goldberg et al. 2011, Gait Posture 33:737-739, seen in a professional body's digest);
//! 4. otherwise there is none.

use super::{
    DayValue, TheilSen,
    median::{MAD_TO_SD, mad},
};
use core::f64::consts::SQRT_2;

/// MDC95 of one single-leg stance trial, eyes open, in older adults, seconds (Goldberg et al. 2011).
pub const FALLBACK_MDC95_S: f64 = 24.1;
/// Least number of days for which a person's own spread is used.
pub const OWN_SPREAD_MIN_DAYS: usize = 8;
/// Largest number of days averaged at each end: a week.
const END_DAYS: usize = 7;

/// The conditions of a series of stance times that decide whether the published figure applies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StanceFallback {
    /// The person is 60 years old or older.
    pub sixty_or_older: bool,
    /// Eyes open.
    pub eyes_open: bool,
    /// On a firm floor.
    pub firm_floor: bool,
}

/// How an important difference was found.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum DifferenceBasis {
    /// The caller gave it.
    Given,
    /// The person's own day-to-day spread.
    OwnSpread {
        /// Robust standard deviation of the days around the line, in the unit of the values.
        sd: f64,
        /// Days averaged at each end.
        averaged_days: usize,
    },
    /// The published figure for older adults.
    OlderAdults {
        /// Days averaged at each end.
        averaged_days: usize,
    },
}

/// The change over the whole span that counts as important.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ImportantDifference {
    /// In the unit of the values, 0 or more.
    pub difference: f64,
    /// How it was found.
    pub basis: DifferenceBasis,
}

/// 1.96 sqrt 2 SEM: without a real change, the difference of two single measurements exceeds it in one of twenty pairs.
pub fn mdc95(sem: f64) -> f64 {
    1.96 * SQRT_2 * sem
}

/// 1.645 sqrt 2 SEM: like [`mdc95`], but exceeded in one of ten pairs.
pub fn mdc90(sem: f64) -> f64 {
    1.645 * SQRT_2 * sem
}

/// The important difference of a series around its `line`; `None` if no rule applies. A `given` difference that is negative or not
/// finite is ignored.
pub fn important_difference(
    series: &[DayValue],
    line: &TheilSen,
    given: Option<f64>,
    stance: Option<StanceFallback>,
) -> Option<ImportantDifference> {
    let given = given.filter(|difference| difference.is_finite() && *difference >= 0.0);
    if let Some(difference) = given {
        return Some(ImportantDifference { difference, basis: DifferenceBasis::Given });
    }
    let averaged_days = END_DAYS.min(series.len() / 2);
    let shrink = libm::sqrt(averaged_days as f64);
    if series.len() >= OWN_SPREAD_MIN_DAYS {
        let residuals: Vec<f64> = series.iter().map(|one| one.value - line.at(one.day)).collect();
        let sd = MAD_TO_SD * mad(&residuals)?;
        let basis = DifferenceBasis::OwnSpread { sd, averaged_days };
        return Some(ImportantDifference { difference: mdc95(sd) / shrink, basis });
    }
    let applies = stance.is_some_and(|how| how.sixty_or_older && how.eyes_open && how.firm_floor);
    (applies && averaged_days > 0).then(|| ImportantDifference {
        difference: FALLBACK_MDC95_S / shrink,
        basis: DifferenceBasis::OlderAdults { averaged_days },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::{a, b, close};
    use crate::statistics::{DayValue, theil_sen};

    const OLDER: StanceFallback = StanceFallback { sixty_or_older: true, eyes_open: true, firm_floor: true };

    fn of(series: &[DayValue], given: Option<f64>, stance: Option<StanceFallback>) -> Option<ImportantDifference> {
        let line = theil_sen(series, 0.95).expect("sound").expect("two days or more");
        important_difference(series, &line, given, stance)
    }

    #[test]
    fn the_published_figures_follow_from_the_formula() {
        close(mdc95(8.7), 24.115, 5e-4);
        close(mdc95(8.7) / libm::sqrt(7.0), 9.1, 0.05);
        close(1.96 * 1.02, 2.00, 5e-3);
        close(mdc90(1.02), 2.37, 5e-3);
        close(mdc95(1.02), 2.83, 5e-3);
    }

    #[test]
    fn a_given_difference_takes_precedence() {
        let got = of(&b(), Some(2.0), Some(OLDER)).expect("given");
        assert_eq!(got, ImportantDifference { difference: 2.0, basis: DifferenceBasis::Given });
        assert_eq!(of(&a(), Some(-1.0), None), None);
        assert_eq!(of(&a(), Some(f64::NAN), None), None);
    }

    #[test]
    fn eight_days_have_a_spread_of_their_own() {
        // Residuals of vector B from 6.25 - 0.5 x: -.25 .25 -.25 .25 -.25 .25 -.25 1.25; median 0, MAD .25.
        let got = of(&b(), None, Some(OLDER)).expect("eight days");
        assert!(matches!(got.basis, DifferenceBasis::OwnSpread { averaged_days: 4, .. }));
        close(got.difference, 1.96 * SQRT_2 * 1.4826 * 0.25 / 2.0, 1e-12);
    }

    #[test]
    fn seven_days_take_the_published_figure_only_where_it_applies() {
        let got = of(&a(), None, Some(OLDER)).expect("applies");
        assert_eq!(got.basis, DifferenceBasis::OlderAdults { averaged_days: 3 });
        close(got.difference, 24.1 / libm::sqrt(3.0), 1e-12);
        for missing in [
            StanceFallback { sixty_or_older: false, ..OLDER },
            StanceFallback { eyes_open: false, ..OLDER },
            StanceFallback { firm_floor: false, ..OLDER },
        ] {
            assert_eq!(of(&a(), None, Some(missing)), None);
        }
        assert_eq!(of(&a(), None, None), None);
    }

    #[test]
    fn a_week_is_the_most_that_is_averaged() {
        let long: Vec<DayValue> = (0..40).map(|day| DayValue { day, value: f64::from(day % 5) }).collect();
        let got = of(&long, None, None).expect("forty days");
        assert!(matches!(got.basis, DifferenceBasis::OwnSpread { averaged_days: 7, .. }));
    }
}
