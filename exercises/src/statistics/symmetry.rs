//! Side-to-side comparison: the involved side as a share of the other, and the cases in which the share is not informative.
//!
//! 100 * involved / uninvolved, for times (more is better). 90 % is the customary threshold of hop and strength tests; its
//! predictive value is unclear (Senorski 2025, Br J Sports Med, 10.1136/bjsports-2025-110284), and none is known for stance times.
//! The uninvolved side declines too, so the share can look too good (Jordan & Bishop 2024, Strength Cond J 46:406-414). Show the
//! seconds beside the share, and use the same statistic on both sides.
//!
//! Exceptions (our design): if the uninvolved side is at the cap, the share is an upper bound; if the involved side is, a lower
//! bound; if both are, not informative; if the uninvolved side is below 5 s, it is not computed. A difference below the minimal
//! detectable change lies within measurement error.

/// The customary threshold of the share, percent; none is published for stance times.
pub const SYMMETRY_LINE_PERCENT: f64 = 90.0;
/// If the uninvolved side's time is below this, the share is not computed, seconds.
pub const SYMMETRY_FLOOR_S: f64 = 5.0;

/// The times of both sides, computed by the same statistic.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SymmetryInput {
    /// Time of the side with the complaint, seconds.
    pub involved_s: f64,
    /// Time of the other side, seconds.
    pub uninvolved_s: f64,
    /// Longest possible time of a trial, seconds.
    pub cap_s: Option<f64>,
    /// Minimal detectable change of the statistic, seconds.
    pub detectable_s: Option<f64>,
}

/// The verdict on the share.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum SymmetryVerdict {
    /// The share, percent.
    Percent(f64),
    /// The share is this or less, percent: the uninvolved side is at the cap.
    AtMost(f64),
    /// The share is this or more, percent: the involved side is at the cap.
    AtLeast(f64),
    /// Both sides are at the cap.
    NotInformative,
    /// The uninvolved side is below [`SYMMETRY_FLOOR_S`].
    NotComputed,
    /// A time is negative or not a finite number.
    NoTime,
}

/// The result of comparing the two sides.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Symmetry {
    /// The share, or why there is none.
    pub verdict: SymmetryVerdict,
    /// Involved minus uninvolved side, seconds, as measured; `None` if one of the times is invalid.
    pub difference_s: Option<f64>,
    /// Whether the difference lies below the minimal detectable change; `None` if that cannot be decided.
    pub within_error: Option<bool>,
}

/// Compares two sides.
pub fn side_to_side(input: &SymmetryInput) -> Symmetry {
    let SymmetryInput { involved_s, uninvolved_s, cap_s, detectable_s } = *input;
    let is_time = |time: f64| time.is_finite() && time >= 0.0;
    if !is_time(involved_s) || !is_time(uninvolved_s) {
        let verdict = SymmetryVerdict::NoTime;
        return Symmetry { verdict, difference_s: None, within_error: None };
    }
    let capped = |time: f64| cap_s.is_some_and(|cap| time >= cap);
    let caps = (capped(involved_s), capped(uninvolved_s));
    let difference = involved_s - uninvolved_s;
    Symmetry {
        verdict: share(involved_s, uninvolved_s, caps),
        difference_s: Some(difference),
        within_error: within_error(difference.abs(), caps, detectable_s),
    }
}

fn share(involved_s: f64, uninvolved_s: f64, caps: (bool, bool)) -> SymmetryVerdict {
    if uninvolved_s < SYMMETRY_FLOOR_S {
        return SymmetryVerdict::NotComputed;
    }
    let percent = 100.0 * involved_s / uninvolved_s;
    match caps {
        (false, false) => SymmetryVerdict::Percent(percent),
        (false, true) => SymmetryVerdict::AtMost(percent),
        (true, false) => SymmetryVerdict::AtLeast(percent),
        (true, true) => SymmetryVerdict::NotInformative,
    }
}

/// If one side is at the cap, the true difference may be larger than the measured one. It can then be shown to exceed the
/// measurement error, but not to lie within it.
fn within_error(difference: f64, caps: (bool, bool), detectable_s: Option<f64>) -> Option<bool> {
    let detectable = detectable_s.filter(|change| change.is_finite() && *change >= 0.0)?;
    match caps {
        (false, false) => Some(difference < detectable),
        (true, true) => None,
        _ => (difference >= detectable).then_some(false),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::close;

    fn compare(involved_s: f64, uninvolved_s: f64, cap_s: Option<f64>) -> Symmetry {
        side_to_side(&SymmetryInput { involved_s, uninvolved_s, cap_s, detectable_s: Some(9.1) })
    }

    #[test]
    fn a_plain_share() {
        let got = compare(12.4, 18.6, Some(45.0));
        let SymmetryVerdict::Percent(percent) = got.verdict else { panic!("{got:?}") };
        close(percent, 66.67, 5e-3);
        assert_eq!(got.within_error, Some(true));
    }

    #[test]
    fn the_uninvolved_side_at_the_cap_bounds_from_above() {
        let got = compare(31.0, 45.0, Some(45.0));
        let SymmetryVerdict::AtMost(percent) = got.verdict else { panic!("{got:?}") };
        close(percent, 68.89, 5e-3);
        assert_eq!(got.within_error, Some(false));
        assert_eq!(compare(40.0, 45.0, Some(45.0)).within_error, None);
    }

    #[test]
    fn the_involved_side_at_the_cap_bounds_from_below() {
        let got = compare(45.0, 30.0, Some(45.0));
        assert_eq!(got.verdict, SymmetryVerdict::AtLeast(150.0));
    }

    #[test]
    fn both_sides_at_the_cap_are_not_informative() {
        let got = compare(45.0, 45.0, Some(45.0));
        assert_eq!((got.verdict, got.within_error), (SymmetryVerdict::NotInformative, None));
    }

    #[test]
    fn too_short_to_divide_by() {
        assert_eq!(compare(3.0, 0.0, None).verdict, SymmetryVerdict::NotComputed);
        assert_eq!(compare(3.0, 4.9, None).verdict, SymmetryVerdict::NotComputed);
        assert_eq!(compare(3.0, 5.0, None).verdict, SymmetryVerdict::Percent(60.0));
    }

    #[test]
    fn invalid_times_are_not_compared() {
        for (involved, uninvolved) in [(f64::NAN, 9.0), (9.0, f64::INFINITY), (-1.0, 9.0)] {
            let got = compare(involved, uninvolved, None);
            assert_eq!((got.verdict, got.difference_s), (SymmetryVerdict::NoTime, None));
        }
    }
}
