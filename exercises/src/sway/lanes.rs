//! Sums and extremes in four interleaved lanes: each step depends on the fourth one before it instead of the last one, so that a
//! processor can do several at a time. The rounding error of a sum is no larger than when adding one by one.

/// The sum of `term(index, value)` over all values.
pub(crate) fn sum(values: &[f64], term: impl Fn(usize, f64) -> f64) -> f64 {
    let mut lanes = [0.0; 4];
    let fours = values.chunks_exact(4);
    let rest = (values.len() - fours.remainder().len()..).zip(fours.remainder());
    let rest: f64 = rest.map(|(place, value)| term(place, *value)).sum();
    for (four, values) in fours.enumerate() {
        for (lane, value) in values.iter().enumerate() {
            lanes[lane] += term(4 * four + lane, *value);
        }
    }
    (lanes[0] + lanes[1]) + (lanes[2] + lanes[3]) + rest
}

/// The mean; NaN if there are no values.
pub(crate) fn mean(values: &[f64]) -> f64 {
    sum(values, |_, value| value) / values.len() as f64
}

/// The sum of products, up to the length of the shorter slice.
pub(crate) fn dot(one: &[f64], other: &[f64]) -> f64 {
    let common = one.len().min(other.len());
    let (one, other) = (one[..common].chunks_exact(4), other[..common].chunks_exact(4));
    let rest: f64 = one.remainder().iter().zip(other.remainder()).map(|(a, b)| a * b).sum();
    let mut lanes = [0.0; 4];
    for (a, b) in one.zip(other) {
        for lane in 0..4 {
            lanes[lane] += a[lane] * b[lane];
        }
    }
    (lanes[0] + lanes[1]) + (lanes[2] + lanes[3]) + rest
}

/// The least and the greatest value; infinity and minus infinity if there are no values. No value may be NaN.
pub(crate) fn ends(values: &[f64]) -> (f64, f64) {
    let (mut low, mut high) = ([f64::INFINITY; 4], [f64::NEG_INFINITY; 4]);
    let mut look = |values: &[f64]| {
        for (lane, value) in values.iter().enumerate() {
            low[lane] = if *value < low[lane] { *value } else { low[lane] };
            high[lane] = if *value > high[lane] { *value } else { high[lane] };
        }
    };
    let fours = values.chunks_exact(4);
    look(fours.remainder());
    fours.for_each(look);
    (low.into_iter().fold(f64::INFINITY, f64::min), high.into_iter().fold(f64::NEG_INFINITY, f64::max))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_value_counts_once_whatever_the_length() {
        for count in 0..14_u32 {
            let values: Vec<f64> = (0..count).map(|k| f64::from(k * 7 % 5) - 1.0).collect();
            let plain = |term: &dyn Fn(usize, f64) -> f64| values.iter().enumerate().map(|(k, v)| term(k, *v)).sum::<f64>();
            assert_eq!(sum(&values, |place, value| place as f64 * value), plain(&|place, value| place as f64 * value));
            assert_eq!(dot(&values, &values), plain(&|_, value| value * value));
            let low = values.iter().copied().fold(f64::INFINITY, f64::min);
            let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            assert_eq!(ends(&values), (low, high), "{count} values");
        }
        assert_eq!((mean(&[1.0, 2.0, 6.0]), dot(&[1.0, 2.0], &[3.0])), (3.0, 3.0));
        assert!(mean(&[]).is_nan());
    }
}
