//! Median, quartiles and median absolute deviation: middle and spread that a single outlier does not change.
//!
//! For an even count the median is the mean of the two middle values. Quartiles interpolate linearly between order statistics
//! (Hyndman & Fan 1996, Am Stat 50:361-365, definition 7: the default of common numerical libraries).

use core::cmp::Ordering;

/// Factor from a median absolute deviation to a standard deviation for normal values: 1/0.6745 (Rousseeuw & Croux 1993, J Am Stat
/// Assoc 88:1273-1283).
pub const MAD_TO_SD: f64 = 1.4826;

/// The quartiles of a set of values, in the unit of the values.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Quartiles {
    /// A quarter of the values lie below.
    pub lower: f64,
    /// Half of the values lie below.
    pub middle: f64,
    /// Three quarters of the values lie below.
    pub upper: f64,
}

/// The median, in the unit of the values; `None` if there are no values or one of them is NaN.
pub fn median(values: &[f64]) -> Option<f64> {
    let mut values = sound(values)?;
    let half = values.len() / 2;
    let even = values.len().is_multiple_of(2);
    // Selecting the middle avoids sorting thousands of values.
    let (below, upper, _) = values.select_nth_unstable_by(half, ascending);
    if !even {
        return Some(*upper);
    }
    let lower = below.iter().copied().reduce(f64::max)?;
    Some(lower.midpoint(*upper))
}

/// The median absolute deviation from the median, unscaled (multiply by [`MAD_TO_SD`]); `None` as for [`median`].
pub fn mad(values: &[f64]) -> Option<f64> {
    let middle = median(values)?;
    let distances: Vec<f64> = values.iter().map(|value| (value - middle).abs()).collect();
    median(&distances)
}

/// The value below which the share `q` (0 to 1) of the values lies; `None` as for [`median`], or if `q` is out of range.
pub fn percentile(values: &[f64], q: f64) -> Option<f64> {
    if !(0.0..=1.0).contains(&q) {
        return None;
    }
    let mut values = sound(values)?;
    let place = q * (values.len() - 1) as f64;
    let (_, below, rest) = values.select_nth_unstable_by(place as usize, ascending);
    let next = rest.iter().copied().reduce(f64::min);
    Some(next.map_or(*below, |next| *below + (next - *below) * place.fract()))
}

/// Lower quartile, median and upper quartile; `None` as for [`median`].
pub fn quartiles(values: &[f64]) -> Option<Quartiles> {
    Some(Quartiles { lower: percentile(values, 0.25)?, middle: median(values)?, upper: percentile(values, 0.75)? })
}

/// The order of two numbers that are not NaN. A plain comparison is much faster than the total order.
pub(super) fn ascending(one: &f64, other: &f64) -> Ordering {
    if one < other {
        Ordering::Less
    } else if one > other {
        Ordering::Greater
    } else {
        Ordering::Equal
    }
}

/// A copy of the values if they have a median.
fn sound(values: &[f64]) -> Option<Vec<f64>> {
    let sound = !values.is_empty() && !values.iter().any(|value| value.is_nan());
    sound.then(|| values.to_vec())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn medians_of_odd_and_even_counts() {
        assert_eq!(median(&[3.0, 1.0, 2.0]), Some(2.0));
        assert_eq!(median(&[4.0, 1.0, 2.0, 3.0]), Some(2.5));
        assert_eq!(median(&[7.0]), Some(7.0));
    }

    #[test]
    fn one_outlier_does_not_change_the_spread() {
        assert_eq!(mad(&[10.0, 12.0, 11.0, 13.0, 9.0]), Some(1.0));
        assert_eq!(mad(&[10.0, 12.0, 11.0, 13.0, 900.0]), Some(1.0));
    }

    #[test]
    fn quartiles_interpolate() {
        let cut = quartiles(&[1.0, 2.0, 3.0, 4.0]).expect("four values");
        assert_eq!(cut, Quartiles { lower: 1.75, middle: 2.5, upper: 3.25 });
        let single = quartiles(&[5.0]).expect("one value");
        assert_eq!(single, Quartiles { lower: 5.0, middle: 5.0, upper: 5.0 });
    }

    #[test]
    fn no_values_or_nan_have_no_median() {
        assert_eq!(median(&[]), None);
        assert_eq!(mad(&[]), None);
        assert_eq!(quartiles(&[1.0, f64::NAN]), None);
        assert_eq!(percentile(&[1.0, 2.0], 1.5), None);
        assert_eq!(percentile(&[1.0, 2.0], f64::NAN), None);
        assert_eq!(percentile(&[1.0, 2.0], 1.0), Some(2.0));
    }
}
