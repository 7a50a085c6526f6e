//! Wilson's score limits of a proportion, plain and for clustered counts.
//!
//! centre = (p + z^2/2n)/(1 + z^2/n), half = z sqrt(p(1-p)/n + z^2/4n^2)/(1 + z^2/n), clamped to 0 to 1 (Wilson 1927, J Am Stat
//! Assoc 22:209-212; recommended for small n by Brown, Cai & DasGupta 2001, Stat Sci 16:101-133). Doses of one day are alike; the
//! design effect 1 + (m-1) rho (Kish 1965, Survey Sampling) shrinks n.
//!
//! A fully logged period is a count, not a sample: show k of n. Show limits only if the period is to represent other periods.

use super::normal::normal_quantile;

/// A lower and an upper limit, in the unit of the limited value.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Interval {
    /// The lower limit.
    pub low: f64,
    /// The upper limit.
    pub high: f64,
}

/// Limits of the share `done` of `planned` at a `confidence` between 0 and 1 (0.95 is usual). `None` if nothing was planned, if more
/// was done than planned, or if the confidence is out of range.
pub fn wilson(done: u32, planned: u32, confidence: f64) -> Option<Interval> {
    limits(done, planned, f64::from(planned), confidence)
}

/// Like [`wilson`], for counts in clusters of `per_cluster` (doses a day) whose members correlate by `rho` (0 to 1). The limits are
/// wider than the plain ones. `None` also for a cluster below 1 or a rho outside 0 to 1.
pub fn wilson_clustered(done: u32, planned: u32, confidence: f64, per_cluster: f64, rho: f64) -> Option<Interval> {
    let effect = design_effect(per_cluster, rho)?;
    limits(done, planned, f64::from(planned) / effect, confidence)
}

/// 1 + (per_cluster - 1) rho: the factor by which clustering increases a variance. `None` if an argument is out of range.
pub fn design_effect(per_cluster: f64, rho: f64) -> Option<f64> {
    let sound = per_cluster >= 1.0 && per_cluster.is_finite() && (0.0..=1.0).contains(&rho);
    sound.then_some(1.0 + (per_cluster - 1.0) * rho)
}

fn limits(done: u32, planned: u32, n: f64, confidence: f64) -> Option<Interval> {
    if planned == 0 || done > planned || !(confidence > 0.0 && confidence < 1.0) {
        return None;
    }
    let z = normal_quantile(0.5 + confidence / 2.0)?;
    let p = f64::from(done) / f64::from(planned);
    let z2n = z * z / n;
    let centre = (p + z2n / 2.0) / (1.0 + z2n);
    let half = z * libm::sqrt(p * (1.0 - p) / n + z2n / (4.0 * n)) / (1.0 + z2n);
    // For 0 % and 100 % the limit is exact; rounding must not leave a lower limit of 1e-17.
    let low = if done == 0 { 0.0 } else { (centre - half).max(0.0) };
    let high = if done == planned { 1.0 } else { (centre + half).min(1.0) };
    Some(Interval { low, high })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::close;

    #[track_caller]
    fn check(got: Option<Interval>, low: f64, high: f64) {
        let got = got.expect("a sound count");
        close(got.low, low, 5e-7);
        close(got.high, high, 5e-7);
    }

    #[test]
    fn ninety_five_percent() {
        check(wilson(0, 10, 0.95), 0.0, 0.277533);
        check(wilson(10, 10, 0.95), 0.722467, 1.0);
        check(wilson(5, 7, 0.95), 0.358934, 0.917781);
        check(wilson(42, 60, 0.95), 0.574913, 0.801018);
        check(wilson(84, 140, 0.95), 0.517226, 0.677433);
        check(wilson(118, 140, 0.95), 0.773526, 0.893876);
        check(wilson(1, 1, 0.95), 0.206549, 1.0);
        check(wilson(0, 1, 0.95), 0.0, 0.793451);
    }

    #[test]
    fn ninety_percent() {
        check(wilson(42, 60, 0.90), 0.595792, 0.786949);
    }

    #[test]
    fn doses_of_one_day_are_alike() {
        close(design_effect(7.0, 0.2).expect("sound"), 2.2, 1e-12);
        close(140.0 / 2.2, 63.636364, 5e-7);
        check(wilson_clustered(84, 140, 0.95, 7.0, 0.2), 0.477280, 0.711335);
        assert_eq!(wilson_clustered(84, 140, 0.95, 7.0, 0.0), wilson(84, 140, 0.95));
    }

    #[test]
    fn an_invalid_proportion_has_no_limits() {
        assert_eq!(wilson(0, 0, 0.95), None);
        assert_eq!(wilson(3, 2, 0.95), None);
        assert_eq!(wilson(1, 2, 1.0), None);
        assert_eq!(wilson(1, 2, f64::NAN), None);
        assert_eq!(wilson_clustered(1, 2, 0.95, 0.5, 0.2), None);
        assert_eq!(wilson_clustered(1, 2, 0.95, 7.0, -0.1), None);
    }
}
