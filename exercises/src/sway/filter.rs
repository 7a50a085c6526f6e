//! Step 5: Butterworth low-pass of order 4 in two biquads, forward for drawing, forward and backward for figures.
//!
//! K = tan(pi fc/fs), n = 1/(1 + K/Q + K^2), b = (K^2, 2 K^2, K^2) n, a1 = 2 (K^2 - 1) n, a2 = (1 - K/Q + K^2) n, direct
//! form II transposed, each section with unit gain at 0 Hz. Zero phase: odd extension by 15 samples at each end, each
//! pass begun in the steady state for its first value (Gustafsson 1996, IEEE Trans Signal Process 44:988-992, describes
//! the aim; this is the common variant of numerical libraries). Forward and backward together are at -6 dB at fc; the
//! cut-off is not corrected for that.

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

/// A running causal filter of one axis on the 100 per second grid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct LowPass {
    sections: [Biquad; 2],
    state: [[f64; 2]; 2],
}

impl LowPass {
    /// A filter with cut-off `fc` that has always seen `value`.
    pub(crate) fn settled(fc: f64, value: f64) -> LowPass {
        let sections = SECTIONS_Q.map(|q| Biquad::low_pass(fc, q));
        let state = sections.map(|s| [(1.0 - s.b0) * value, (s.b2 - s.a2) * value]);
        LowPass { sections, state }
    }

    /// The next filtered value.
    pub(crate) fn step(&mut self, input: f64) -> f64 {
        let mut x = input;
        for (s, z) in self.sections.iter().zip(&mut self.state) {
            let y = s.b0 * x + z[0];
            z[0] = s.b1 * x - s.a1 * y + z[1];
            z[1] = s.b2 * x - s.a2 * y;
            x = y;
        }
        x
    }
}

/// Filters forward and backward, without delay. A signal of 15 samples or fewer is extended by what it has.
pub(crate) fn zero_phase(fc: f64, signal: &[f64]) -> Vec<f64> {
    let Some(last) = signal.len().checked_sub(1) else {
        return Vec::new();
    };
    let reach = EXTENSION.min(last);
    let mut x = Vec::with_capacity(signal.len() + 2 * reach);
    x.extend((1..=reach).rev().map(|k| 2.0 * signal[0] - signal[k]));
    x.extend_from_slice(signal);
    x.extend((1..=reach).map(|k| 2.0 * signal[last] - signal[last - k]));
    for _ in 0..2 {
        let mut filter = LowPass::settled(fc, x[0]);
        x.iter_mut().for_each(|value| *value = filter.step(*value));
        x.reverse();
    }
    x[reach..=reach + last].to_vec()
}

/// [`zero_phase`] on each of three axes.
pub(crate) fn zero_phase_axes(fc: f64, axes: [&[f64]; 3]) -> [Vec<f64>; 3] {
    axes.map(|axis| zero_phase(fc, axis))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn close(got: f64, want: f64, rel: f64) {
        assert!((got - want).abs() <= rel * want.abs(), "{got} is not {want}");
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
        for value in zero_phase(3.5, &[4.25; 40]) {
            close(value, 4.25, 1e-13);
        }
        let line: Vec<f64> = (0..900).map(|k| 3.0 + 0.01 * f64::from(k)).collect();
        for (k, got) in zero_phase(3.5, &line).iter().enumerate().skip(400).take(100) {
            close(*got, line[k], 1e-9);
        }
    }

    #[test]
    fn half_the_amplitude_is_left_at_the_cut_off() {
        let wave: Vec<f64> = (0..4000).map(|k| libm::sin(2.0 * PI * 3.5 * f64::from(k) / FS)).collect();
        let passed = zero_phase(3.5, &wave);
        let power = |signal: &[f64]| signal[1000..3000].iter().map(|x| x * x).sum::<f64>();
        close(libm::sqrt(power(&passed) / power(&wave)), 0.5, 1e-6);
    }

    #[test]
    fn short_signals_do_not_panic() {
        assert!(zero_phase(3.5, &[]).is_empty());
        assert_eq!(zero_phase(3.5, &[2.0]).len(), 1);
        assert_eq!(zero_phase(3.5, &[1.0, 2.0, 3.0]).len(), 3);
    }

    #[test]
    fn a_running_filter_that_has_settled_does_not_jump() {
        let mut filter = LowPass::settled(3.5, 9.8);
        close(filter.step(9.8), 9.8, 1e-13);
    }
}
