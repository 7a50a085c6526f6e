//! Areas of ellipses around the sway.
//!
//! C is the covariance with N - 1. chi2(0.95; 2) = -2 ln 0.05. F(0.95; 2, N-2) = (N-2)/2 (0.05^(-2/(N-2)) - 1): with two numerator
//! degrees of freedom the distribution has a closed form, so no special function is needed.

use crate::sway::{lanes::mean, plane::Plane};
use core::f64::consts::PI;

/// -2 ln 0.05.
const CHI2_95: f64 = 5.991464547107979;

pub(super) struct Ellipses {
    pub(super) chi2: f64,
    pub(super) pred_f: f64,
    pub(super) prieto_f: f64,
}

struct Covariance {
    xx: f64,
    yy: f64,
    xy: f64,
}

pub(super) fn of(plane: &Plane) -> Ellipses {
    let n = plane.ml.len() as f64;
    let c = covariance(plane);
    // Rounding can make the determinant of a straight line slightly negative.
    let area = PI * libm::sqrt((c.xx * c.yy - c.xy * c.xy).max(0.0));
    let f = f_95(n);
    Ellipses {
        chi2: CHI2_95 * area,
        pred_f: 2.0 * (n - 1.0) * (n + 1.0) / (n * (n - 2.0)) * f * area,
        prieto_f: 2.0 * f * area,
    }
}

/// Standard deviation along the narrower principal direction.
pub(super) fn narrower_sd(plane: &Plane) -> f64 {
    let c = covariance(plane);
    let half_difference = (c.xx - c.yy) / 2.0;
    let reach = libm::sqrt(half_difference * half_difference + c.xy * c.xy);
    libm::sqrt(((c.xx + c.yy) / 2.0 - reach).max(0.0))
}

fn f_95(n: f64) -> f64 {
    let below = n - 2.0;
    below / 2.0 * libm::expm1(-2.0 / below * libm::log(0.05))
}

fn covariance(plane: &Plane) -> Covariance {
    let (mean_x, mean_y) = (mean(&plane.ml), mean(&plane.ap));
    let mut c = Covariance { xx: 0.0, yy: 0.0, xy: 0.0 };
    for (x, y) in plane.ml.iter().zip(&plane.ap) {
        let (x, y) = (x - mean_x, y - mean_y);
        c.xx += x * x;
        c.yy += y * y;
        c.xy += x * y;
    }
    let below = plane.ml.len() as f64 - 1.0;
    Covariance { xx: c.xx / below, yy: c.yy / below, xy: c.xy / below }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_of_f() {
        // F(0.95; 2, 10) and F(0.95; 2, 120) from printed tables.
        assert!((f_95(12.0) - 4.102821).abs() < 5e-7);
        assert!((f_95(122.0) - 3.071779).abs() < 5e-7);
        assert!((2.0 * f_95(1e9) - CHI2_95).abs() < 1e-6);
    }

    #[test]
    fn a_line_has_no_area_and_no_second_width() {
        let line: Vec<f64> = (0..200).map(|k| f64::from(k % 17)).collect();
        let plane = Plane { ap: line.iter().map(|x| 0.3 * x).collect(), up: line.clone(), ml: line };
        assert!(of(&plane).chi2.abs() < 1e-6);
        assert!(narrower_sd(&plane) < 1e-6);
    }

    #[test]
    fn independent_axes_multiply() {
        let ml = vec![1.0, 1.0, -1.0, -1.0];
        let ap = vec![2.0, -2.0, 2.0, -2.0];
        let got = of(&Plane { up: vec![0.0; 4], ml, ap });
        assert!((got.chi2 - PI * CHI2_95 * libm::sqrt(4.0 / 3.0 * 16.0 / 3.0)).abs() < 1e-12);
    }
}
