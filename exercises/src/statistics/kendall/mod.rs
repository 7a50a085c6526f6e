//! Mann-Kendall test for a trend in one direction, and Kendall's tau-b.
//!
//! S = sum over i<j of sign(y_j - y_i); Var = [n(n-1)(2n+5) - sum t(t-1)(2t+5)]/18 over groups of t tied values; Z = (S-1)/sqrt Var
//! if S is above 0, (S+1)/sqrt Var if below, otherwise 0 (Mann 1945, Econometrica 13:245-259; Kendall 1975, Rank Correlation
//! Methods). Up to [`EXACT_MAX_N`] values p is exact, from the distribution of S over all orders of the same values; for more values
//! the normal approximation with continuity correction is used.
//!
//! With 4 values or fewer, no order reaches p < 0.05. The test assumes independent days: serial correlation makes p too small.

mod exact;

use super::{DayValue, SeriesFault, in_order, normal::normal_tail};

/// Length of the longest series for which p is exact.
pub const EXACT_MAX_N: usize = 60;

/// The result of the test for one series.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct MannKendall {
    /// Number of values.
    pub n: usize,
    /// Number of rising pairs minus number of falling pairs.
    pub s: i64,
    /// Variance of S if there is no trend, corrected for ties.
    pub variance: f64,
    /// Standard normal score with continuity correction; 0 where the variance is 0.
    pub z: f64,
    /// Two-sided p of the normal approximation; 1 where the variance is 0.
    pub p_normal: f64,
    /// Two-sided p over all orders of the same values; `None` above [`EXACT_MAX_N`] values.
    pub p_exact: Option<f64>,
    /// Kendall's tau-b of value against day, -1 to 1; `None` where all values are equal.
    pub tau_b: Option<f64>,
}

impl MannKendall {
    /// The p-value to judge by: the exact one if there is one.
    pub fn p(&self) -> f64 {
        self.p_exact.unwrap_or(self.p_normal)
    }
}

/// Tests one series for a trend.
///
/// # Errors
/// [`SeriesFault`] if the series cannot be used.
pub fn mann_kendall(series: &[DayValue]) -> Result<MannKendall, SeriesFault> {
    let series = in_order(series)?;
    let values: Vec<f64> = series.iter().map(|one| one.value).collect();
    Ok(of_values(&values))
}

/// Kendall's tau-b of value against day; `None` where it is undefined: all values equal, or fewer than two.
///
/// # Errors
/// [`SeriesFault`] if the series cannot be used.
pub fn tau_b(series: &[DayValue]) -> Result<Option<f64>, SeriesFault> {
    Ok(mann_kendall(series)?.tau_b)
}

/// [`MannKendall::variance`] of days in order, without the sums of the rest.
pub(super) fn variance_of(series: &[DayValue]) -> f64 {
    let values: Vec<f64> = series.iter().map(|one| one.value).collect();
    variance(values.len(), &tie_groups(&values))
}

fn of_values(values: &[f64]) -> MannKendall {
    let s = score(values);
    let ties = tie_groups(values);
    let variance = variance(values.len(), &ties);
    let z = if variance > 0.0 { (s - s.signum()) as f64 / libm::sqrt(variance) } else { 0.0 };
    let p_normal = if variance > 0.0 { (2.0 * normal_tail(z.abs())).min(1.0) } else { 1.0 };
    MannKendall {
        n: values.len(),
        s,
        variance,
        z,
        p_normal,
        p_exact: (values.len() <= EXACT_MAX_N).then(|| exact::two_sided(s, &ties)),
        tau_b: tau(s, values.len(), &ties),
    }
}

fn score(values: &[f64]) -> i64 {
    let mut s = 0;
    for (place, earlier) in values.iter().enumerate() {
        for later in &values[place + 1..] {
            s += i64::from(later > earlier) - i64::from(later < earlier);
        }
    }
    s
}

/// Sizes of the groups of equal values, including groups of one; they add up to the number of values.
fn tie_groups(values: &[f64]) -> Vec<usize> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    // Compared with `==` and not in total order, because zero and minus zero are the same value.
    let mut groups: Vec<usize> = sorted.chunk_by(|one, other| one == other).map(<[f64]>::len).collect();
    // Sorted, so that rounding is the same whichever value is the frequent one.
    groups.sort_unstable();
    groups
}

fn variance(n: usize, ties: &[usize]) -> f64 {
    let term = |count: usize| {
        let count = count as f64;
        count * (count - 1.0) * (2.0 * count + 5.0)
    };
    let tied: f64 = ties.iter().map(|&group| term(group)).sum();
    (term(n) - tied) / 18.0
}

/// S / sqrt(P (P - T)): all P pairs differ in the day, and T of them are tied in the value.
fn tau(s: i64, n: usize, ties: &[usize]) -> Option<f64> {
    let pairs = |count: usize| (count * count.saturating_sub(1) / 2) as f64;
    let tied: f64 = ties.iter().map(|&group| pairs(group)).sum();
    let below = libm::sqrt(pairs(n)) * libm::sqrt(pairs(n) - tied);
    (below > 0.0).then(|| (s as f64 / below).clamp(-1.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::{a, b, c, close, d, e};

    struct Printed {
        s: i64,
        variance: f64,
        z: f64,
        p: f64,
        exact: f64,
        tau: Option<f64>,
    }

    #[track_caller]
    fn check(series: &[DayValue], want: &Printed) {
        let got = mann_kendall(series).expect("a sound series");
        assert_eq!(got.s, want.s);
        close(got.variance, want.variance, 5e-7);
        close(got.z, want.z, 5e-7);
        close(got.p_normal, want.p, 5e-7);
        close(got.p_exact.expect("short"), want.exact, 1e-12);
        match (got.tau_b, want.tau) {
            (Some(got), Some(want)) => close(got, want, 5e-7),
            (got, want) => assert_eq!(got.is_some(), want.is_some()),
        }
    }

    #[test]
    fn rising_without_ties() {
        check(
            &a(),
            &Printed { s: 15, variance: 44.333333, z: 2.102630, p: 0.035498, exact: 152.0 / 5040.0, tau: Some(0.714286) },
        );
    }

    #[test]
    fn falling_with_ties() {
        check(
            &b(),
            &Printed {
                s: -21,
                variance: 59.666667,
                z: -2.589191,
                p: 0.009620,
                exact: 192.0 / 40320.0,
                tau: Some(-0.827516),
            },
        );
    }

    #[test]
    fn four_days_with_an_outlier() {
        check(
            &c(),
            &Printed { s: 4, variance: 8.666667, z: 1.019049, p: 0.308180, exact: 8.0 / 24.0, tau: Some(4.0 / 6.0) },
        );
    }

    #[test]
    fn equal_values_show_no_trend() {
        check(&d(), &Printed { s: 0, variance: 0.0, z: 0.0, p: 1.0, exact: 1.0, tau: None });
    }

    #[test]
    fn many_values_at_the_cap() {
        check(
            &e(),
            &Printed {
                s: 13,
                variance: 35.666667,
                z: 2.009324,
                p: 0.044503,
                exact: 192.0 / 5040.0,
                tau: Some(13.0 / libm::sqrt(21.0 * 15.0)),
            },
        );
    }

    #[test]
    fn no_days_and_one_day_are_no_trend() {
        let none = mann_kendall(&[]).expect("empty is sound");
        assert_eq!((none.n, none.s, none.p(), none.tau_b), (0, 0, 1.0, None));
        let one = mann_kendall(&[DayValue { day: 1, value: 2.0 }]).expect("one is sound");
        assert_eq!((one.n, one.s, one.p(), one.tau_b), (1, 0, 1.0, None));
    }

    #[test]
    fn above_sixty_the_approximation_is_used() {
        let long: Vec<DayValue> = (0..61).map(|day| DayValue { day, value: f64::from(day % 7) }).collect();
        let got = mann_kendall(&long).expect("a sound series");
        assert_eq!(got.p_exact, None);
        assert_eq!(got.p(), got.p_normal);
    }

    #[test]
    fn a_zero_with_a_minus_sign_is_tied_with_zero() {
        assert_eq!(tie_groups(&[0.0, -0.0, 1.0]), vec![1, 2]);
    }
}
