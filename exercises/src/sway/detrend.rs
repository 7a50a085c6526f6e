//! Step 6: removes the linear trend; and the derivative that several measures use.

use super::lanes::{mean, sum};
use super::parameters::FS;

/// Subtracts the least-squares line from a signal.
pub(crate) fn detrend(signal: &mut [f64]) {
    let count = signal.len() as f64;
    if signal.is_empty() {
        return;
    }
    let middle = (count - 1.0) / 2.0;
    let mean = mean(signal);
    let up = sum(signal, |k, value| (k as f64 - middle) * (value - mean));
    // The sum of (k - middle)^2 over all points k.
    let across = count * (count * count - 1.0) / 12.0;
    let slope = if across > 0.0 { up / across } else { 0.0 };
    for (k, value) in signal.iter_mut().enumerate() {
        *value -= mean + slope * (k as f64 - middle);
    }
}

/// Central differences per second, one-sided at both ends. For a single value the result is 0.
pub(crate) fn gradient(signal: &[f64]) -> Vec<f64> {
    let count = signal.len();
    if count < 2 {
        return vec![0.0; count];
    }
    let step = |k: usize| match k {
        0 => (signal[1] - signal[0]) * FS,
        k if k == count - 1 => (signal[k] - signal[k - 1]) * FS,
        k => (signal[k + 1] - signal[k - 1]) / 2.0 * FS,
    };
    (0..count).map(step).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_leaves_nothing_and_a_bump_stays() {
        let mut line: Vec<f64> = (0..100).map(|k| 7.0 - 0.3 * f64::from(k)).collect();
        detrend(&mut line);
        assert!(line.iter().all(|value| value.abs() < 1e-12));
        let mut bump = [1.0, -2.0, 1.0];
        detrend(&mut bump);
        assert_eq!(bump, [1.0, -2.0, 1.0]);
        detrend(&mut []);
        let mut single = [5.0];
        detrend(&mut single);
        assert_eq!(single, [0.0]);
    }

    #[test]
    fn differences_are_one_sided_at_the_ends() {
        let got = gradient(&[0.0, 0.01, 0.04, 0.09]);
        for (got, want) in got.iter().zip([1.0, 2.0, 4.0, 5.0]) {
            assert!((got - want).abs() < 1e-12);
        }
        assert_eq!(gradient(&[3.0]), vec![0.0]);
        assert!(gradient(&[]).is_empty());
    }
}
