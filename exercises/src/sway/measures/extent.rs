//! The size of the sway: root mean squares, ranges, path.

use crate::sway::{
    lanes::{dot, ends, mean},
    parameters::DT,
    plane::Plane,
};

pub(super) struct Extent {
    pub(super) duration_s: f64,
    pub(super) rms_ml: f64,
    pub(super) rms_ap: f64,
    pub(super) rms_v: f64,
    pub(super) rms_planar: f64,
    pub(super) mean_dist: f64,
    pub(super) range_ml: f64,
    pub(super) range_ap: f64,
    pub(super) path: f64,
    /// Largest distance from the mean, m/s2.
    pub(super) peak: f64,
}

pub(super) fn of(plane: &Plane) -> Extent {
    let count = plane.ml.len() as f64;
    let (square_ml, square_ap) = (mean_square(&plane.ml), mean_square(&plane.ap));
    let (mean_ml, mean_ap) = (mean(&plane.ml), mean(&plane.ap));
    let points = || plane.ml.iter().zip(&plane.ap);
    Extent {
        duration_s: (plane.ml.len().saturating_sub(1)) as f64 * DT,
        rms_ml: libm::sqrt(square_ml),
        rms_ap: libm::sqrt(square_ap),
        rms_v: libm::sqrt(mean_square(&plane.up)),
        rms_planar: libm::sqrt(square_ml + square_ap),
        mean_dist: points().map(|(x, y)| length(*x, *y)).sum::<f64>() / count,
        range_ml: range(&plane.ml),
        range_ap: range(&plane.ap),
        path: path(plane),
        peak: libm::sqrt(
            points().map(|(x, y)| square(x - mean_ml, y - mean_ap)).fold(0.0, |a, b| if b > a { b } else { a }),
        ),
    }
}

fn mean_square(signal: &[f64]) -> f64 {
    dot(signal, signal) / signal.len() as f64
}

fn range(signal: &[f64]) -> f64 {
    let (low, high) = ends(signal);
    high - low
}

fn path(plane: &Plane) -> f64 {
    let steps = plane.ml.windows(2).zip(plane.ap.windows(2));
    steps.map(|(x, y)| length(x[1] - x[0], y[1] - y[0])).sum()
}

fn length(x: f64, y: f64) -> f64 {
    libm::sqrt(square(x, y))
}

fn square(x: f64, y: f64) -> f64 {
    x * x + y * y
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_walked_once() {
        let plane = Plane {
            ml: vec![1.0, -1.0, -1.0, 1.0, 1.0],
            ap: vec![1.0, 1.0, -1.0, -1.0, 1.0],
            up: vec![0.0, 0.0, 0.0, 0.0, 5.0],
        };
        let got = of(&plane);
        assert_eq!((got.path, got.range_ml, got.range_ap), (8.0, 2.0, 2.0));
        assert_eq!((got.rms_ml, got.rms_ap), (1.0, 1.0));
        assert!((got.mean_dist - core::f64::consts::SQRT_2).abs() < 1e-15);
        assert!((got.rms_v - libm::sqrt(5.0)).abs() < 1e-15);
        assert_eq!(got.duration_s, 0.04);
    }
}
