//! Spectra by Welch's method, and the figures of a spectrum.
//!
//! Periodic Hann window of L = min(N, 1000) points, half overlapped, the mean of each segment removed, one-sided density (Welch
//! 1967, IEEE Trans Audio Electroacoust 15:70-73). Sums run over 0.15 to 5.0 Hz. Only 49 frequencies are needed, so no fast
//! transform is used; the module `fourier` explains how they are summed.
//!
//! With m_k the sum of f^k P df: power m0; centroidal frequency sqrt(m2/m0); frequency dispersion sqrt(1 - m1^2/(m0 m2));
//! f50 and f95 where the running sum reaches 50 and 95 % of m0, linear within the bin (Prieto 1996, IEEE Trans Biomed
//! Eng 43:956-966).

use super::fourier::Fourier;
use crate::sway::lanes::mean;
use crate::sway::parameters::{BAND_HIGH, BAND_LOW, FS, WELCH};

/// Figures of one spectrum.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Spectrum {
    /// Power in the band, m2/s4.
    pub pwr: f64,
    /// Centroidal frequency, Hz; `None` from coarse steps.
    pub cf: Option<f64>,
    /// Median frequency, Hz.
    pub f50: f64,
    /// Frequency below which 95 % of the power lies, Hz; `None` from coarse steps.
    pub f95: Option<f64>,
    /// Frequency dispersion, 0 (one frequency) to 1.
    pub fd: f64,
}

/// Power density at the frequencies (bins) of the band.
pub(super) struct Density {
    /// Width of a bin, Hz.
    pub(super) df: f64,
    /// Number of the first bin in the band; its frequency is this number times `df`.
    pub(super) first: usize,
    /// One-sided density, m2/s4/Hz.
    pub(super) power: Vec<f64>,
}

/// The spectral densities of signals of equal length, which must not be 0.
pub(super) fn densities<const N: usize>(signals: [&[f64]; N]) -> [Density; N] {
    let length = signals.iter().map(|signal| signal.len()).min().unwrap_or(0).min(WELCH);
    let df = FS / length as f64;
    let first = (BAND_LOW / df - 1e-9).ceil() as usize;
    let last = ((BAND_HIGH / df + 1e-9).floor() as usize).min(length / 2);
    let fourier = Fourier::new(length, first, last);
    let hann: Vec<f64> = fourier.cosines().iter().map(|cos| 0.5 - 0.5 * cos).collect();
    let weight: f64 = hann.iter().map(|w| w * w).sum();
    signals.map(|signal| {
        let mut power = vec![0.0; (last + 1).saturating_sub(first)];
        let mut tapered = vec![0.0; length];
        let segments = signal.windows(length).step_by(length - length / 2);
        let scale = 2.0 / (FS * weight * segments.len() as f64);
        for segment in segments {
            let mean = mean(segment);
            tapered.iter_mut().zip(segment).zip(&hann).for_each(|((into, x), w)| *into = (x - mean) * w);
            fourier.add_squares(&tapered, &mut power);
        }
        power.iter_mut().for_each(|value| *value *= scale);
        Density { df, first, power }
    })
}

impl Density {
    /// The figures; `None` if the power is zero or not finite.
    pub(super) fn figures(&self) -> Option<Spectrum> {
        let moment = |order: u32| -> f64 {
            let terms = self.power.iter().zip(self.first..).map(|(power, bin)| {
                let frequency = bin as f64 * self.df;
                (0..order).fold(*power, |product, _| product * frequency)
            });
            terms.sum::<f64>() * self.df
        };
        let (m0, m1, m2) = (moment(0), moment(1), moment(2));
        if !(m0 > 0.0 && m2.is_finite()) {
            return None;
        }
        Some(Spectrum {
            pwr: m0,
            cf: Some(libm::sqrt(m2 / m0)),
            f50: self.reaches(0.5 * m0)?,
            f95: Some(self.reaches(0.95 * m0)?),
            fd: libm::sqrt((1.0 - m1 * m1 / (m0 * m2)).max(0.0)),
        })
    }

    /// The frequency at which the running sum reaches `target`, Hz.
    fn reaches(&self, target: f64) -> Option<f64> {
        let mut below = 0.0;
        for (power, bin) in self.power.iter().zip(self.first..) {
            let here = below + power * self.df;
            if here >= target {
                let start = bin as f64 * self.df - self.df;
                return Some(start + self.df * (target - below) / (here - below));
            }
            below = here;
        }
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;

    fn wave(size: f64, hz: f64, points: usize) -> Vec<f64> {
        (0..points).map(|k| size * libm::sin(2.0 * PI * hz * k as f64 / FS)).collect()
    }

    fn figures(signal: &[f64]) -> Option<Spectrum> {
        let [density] = densities([signal]);
        density.figures()
    }

    #[test]
    fn the_band_has_49_bins() {
        let [got] = densities([&wave(1.0, 1.0, 2000)]);
        assert_eq!((got.first, got.power.len()), (2, 49));
    }

    #[test]
    fn a_wave_has_its_power_and_frequency() {
        let got = figures(&wave(0.4, 1.3, 2751)).expect("power");
        assert!((got.pwr - 0.08).abs() < 1e-6);
        assert!((got.cf.expect("fine steps") - 1.3).abs() < 5e-3);
        assert!((got.f50 - 1.25).abs() < 0.06);
    }

    #[test]
    fn silence_has_no_spectrum() {
        assert_eq!(figures(&[0.0; 2000]), None);
        assert_eq!(figures(&[f64::MAX, -f64::MAX].repeat(1000)), None);
    }
}
