//! Step 5: Butterworth low-pass of order 4 as two biquads. It runs forward for drawing, and forward and backward for figures.
//!
//! K = tan(pi fc/fs), n = 1/(1 + K/Q + K^2), b = (K^2, 2 K^2, K^2) n, a1 = 2 (K^2 - 1) n, a2 = (1 - K/Q + K^2) n, direct form II
//! transposed, each section with unit gain at 0 Hz. Zero phase: odd extension by 15 samples at each end; each pass begins in the
//! steady state for its first value (Gustafsson 1996, IEEE Trans Signal Process 44:988-992, describes the aim; this is the common
//! variant of numerical libraries). Forward and backward together have -6 dB at fc; the cut-off is not corrected for that.

use super::parameters::FS;
use core::f64::consts::PI;

/// Q of the two sections of a Butterworth filter of order 4: 1/(2 cos(pi/8)), 1/(2 cos(3 pi/8)).
const SECTIONS_Q: [f64; 2] = [0.541196100146197, 1.306562964876377];
/// Samples of odd extension at each end.
const EXTENSION: usize = 15;

#[derive(Debug, Clone, Copy, PartialEq)]
struct Biquad {
    b0: f64,
    b1: f64,
    b2: f64,
    a1: f64,
    a2: f64,
}

impl Biquad {
    fn low_pass(fc: f64, q: f64) -> Biquad {
        let k = libm::tan(PI * fc / FS);
        let n = 1.0 / (1.0 + k / q + k * k);
        Biquad {
            b0: k * k * n,
            b1: 2.0 * k * k * n,
            b2: k * k * n,
            a1: 2.0 * (k * k - 1.0) * n,
            a2: (1.0 - k / q + k * k) * n,
        }
    }
}

/// A running causal filter for `N` axes at once on the grid of 100 per second. Each step of a filter depends on the step before;
/// computing the axes side by side lets the processor handle two of them in one instruction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct LowPass<const N: usize> {
    sections: [Biquad; 2],
    state: [[[f64; N]; 2]; 2],
}

impl<const N: usize> LowPass<N> {
    /// A filter with cut-off `fc` (Hz) in the steady state for `values`.
    pub(crate) fn settled(fc: f64, values: [f64; N]) -> LowPass<N> {
        let sections = SECTIONS_Q.map(|q| Biquad::low_pass(fc, q));
        let settled = |s: Biquad| [values.map(|value| (1.0 - s.b0) * value), values.map(|value| (s.b2 - s.a2) * value)];
        LowPass { sections, state: sections.map(settled) }
    }

    /// The next filtered values.
    #[inline]
    pub(crate) fn step(&mut self, input: [f64; N]) -> [f64; N] {
        let mut x = input;
        for (s, [z0, z1]) in self.sections.iter().zip(&mut self.state) {
            for lane in 0..N {
                let y = s.b0 * x[lane] + z0[lane];
                // In this order of operations only the product with y depends on y.
                z0[lane] = (s.b1 * x[lane] + z1[lane]) - s.a1 * y;
                z1[lane] = s.b2 * x[lane] - s.a2 * y;
                x[lane] = y;
            }
        }
        x
    }
}

/// Filters several signals of equal length forward and backward, without delay. A signal of 15 samples or fewer is extended by as
/// many samples as it allows.
pub(crate) fn zero_phase<const N: usize>(fc: f64, signals: [&[f64]; N]) -> [Vec<f64>; N] {
    let Some(last) = signals.first().and_then(|signal| signal.len().checked_sub(1)) else {
        return signals.map(<[f64]>::to_vec);
    };
    let reach = EXTENSION.min(last);
    let at = |k: usize| signals.map(|signal| signal[k]);
    let beyond = |edge: usize, k: usize| signals.map(|signal| 2.0 * signal[edge] - signal[k]);
    let mut x: Vec<[f64; N]> = Vec::with_capacity(last + 1 + 2 * reach);
    x.extend((1..=reach).rev().map(|k| beyond(0, k)));
    x.extend((0..=last).map(at));
    x.extend((1..=reach).map(|k| beyond(last, last - k)));
    run(fc, x[0], x.iter_mut());
    run(fc, x[x.len() - 1], x.iter_mut().rev());
    let mut filtered = signals.map(|signal| Vec::with_capacity(signal.len()));
    for (lane, filtered) in filtered.iter_mut().enumerate() {
        filtered.extend(x[reach..=reach + last].iter().map(|values| values[lane]));
    }
    filtered
}

/// One pass in the direction of `points`, started in the steady state for the `first` values.
fn run<'a, const N: usize>(fc: f64, first: [f64; N], points: impl Iterator<Item = &'a mut [f64; N]>) {
    let mut filter = LowPass::settled(fc, first);
    for values in points {
        *values = filter.step(*values);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn close(got: f64, want: f64, rel: f64) {
        assert!((got - want).abs() <= rel * want.abs(), "{got} is not {want}");
    }

    fn alone(fc: f64, signal: &[f64]) -> Vec<f64> {
        let [got] = zero_phase(fc, [signal]);
        got
    }

    #[test]
    fn signals_filtered_side_by_side_do_not_affect_each_other() {
        let one: Vec<f64> = (0..300).map(|k| f64::from(k * k % 37)).collect();
        let other: Vec<f64> = (0..300).map(|k| f64::from(k * 7 % 11) - 4.0).collect();
        assert_eq!(zero_phase(10.0, [&one, &other, &one]), [alone(10.0, &one), alone(10.0, &other), alone(10.0, &one)]);
    }

    #[test]
    fn the_coefficients_at_both_cut_offs() {
        for (fc, q, want) in [
            (3.5, 0, [0.01002183723706608, -1.624445835763332, 0.6645331847115963]),
            (3.5, 1, [0.011113838007977429, -1.8014489204269384, 0.845904272458848]),
            (10.0, 0, [0.06188519529976448, -1.0485995763626117, 0.2961403575616695]),
            (10.0, 1, [0.07795634051646255, -1.3209134308194264, 0.6327387928852765]),
        ] {
            let got = Biquad::low_pass(fc, SECTIONS_Q[q]);
            close(got.b0, want[0], 1e-13);
            close(got.b1, 2.0 * want[0], 1e-13);
            close(got.b2, want[0], 1e-13);
            close(got.a1, want[1], 1e-13);
            close(got.a2, want[2], 1e-13);
        }
    }

    #[test]
    fn a_constant_passes_and_a_line_keeps_its_place() {
        for value in alone(3.5, &[4.25; 40]) {
            close(value, 4.25, 1e-13);
        }
        let line: Vec<f64> = (0..900).map(|k| 3.0 + 0.01 * f64::from(k)).collect();
        for (k, got) in alone(3.5, &line).iter().enumerate().skip(400).take(100) {
            close(*got, line[k], 1e-9);
        }
    }

    #[test]
    fn half_the_amplitude_is_left_at_the_cut_off() {
        let wave: Vec<f64> = (0..4000).map(|k| libm::sin(2.0 * PI * 3.5 * f64::from(k) / FS)).collect();
        let passed = alone(3.5, &wave);
        let power = |signal: &[f64]| signal[1000..3000].iter().map(|x| x * x).sum::<f64>();
        close(libm::sqrt(power(&passed) / power(&wave)), 0.5, 1e-6);
    }

    #[test]
    fn short_signals_do_not_panic() {
        assert!(alone(3.5, &[]).is_empty());
        assert_eq!(alone(3.5, &[2.0]).len(), 1);
        assert_eq!(alone(3.5, &[1.0, 2.0, 3.0]).len(), 3);
    }

    #[test]
    fn a_running_filter_that_has_settled_does_not_jump() {
        let mut filter = LowPass::settled(3.5, [9.8]);
        close(filter.step([9.8])[0], 9.8, 1e-13);
    }
}
