//! The standard normal distribution: upper tail, and the quantile for any probability.
//!
//! The tail is erfc(z/sqrt 2)/2. The quantile starts from the rational form 26.2.23 of Abramowitz & Stegun 1964 (error below 4.5e-4)
//! and is refined by Halley steps on the tail until it is accurate to the last digits.

use core::f64::consts::{PI, SQRT_2};

/// P(Z > z) of a standard normal Z.
pub fn normal_tail(z: f64) -> f64 {
    0.5 * libm::erfc(z / SQRT_2)
}

/// z with P(Z <= z) = `p`; `None` unless 0 < p < 1. `normal_quantile(0.975)` is 1.959963984540054.
pub fn normal_quantile(p: f64) -> Option<f64> {
    if !(p > 0.0 && p < 1.0) {
        return None;
    }
    // Uses the smaller tail: 1 - p is exact for a p near 1, while 1 - tail would lose digits.
    if p > 0.5 { Some(upper(1.0 - p)) } else { Some(-upper(p)) }
}

/// z with P(Z > z) = `tail`, for a tail up to a half.
fn upper(tail: f64) -> f64 {
    let t = libm::sqrt(-2.0 * libm::log(tail));
    let above = 2.515_517 + t * (0.802_853 + t * 0.010_328);
    let below = 1.0 + t * (1.432_788 + t * (0.189_269 + t * 0.001_308));
    let mut z = t - above / below;
    for _ in 0..4 {
        let density = libm::exp(-0.5 * z * z) / libm::sqrt(2.0 * PI);
        if density == 0.0 {
            break;
        }
        let step = (normal_tail(z) - tail) / density;
        z += step / (1.0 - 0.5 * z * step);
    }
    z
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::close;

    #[test]
    fn the_usual_quantiles() {
        close(normal_quantile(0.975).expect("inside"), 1.959_963_984_540_054, 1e-14);
        close(normal_quantile(0.95).expect("inside"), 1.644_853_626_951_472_2, 1e-14);
        close(normal_quantile(0.025).expect("inside"), -1.959_963_984_540_054, 1e-14);
        close(normal_quantile(0.5).expect("inside"), 0.0, 1e-15);
    }

    #[test]
    fn near_one_no_digit_is_lost() {
        let tail = 1.0 / f64::from(1u32 << 30) / f64::from(1u32 << 18);
        let (above, below) = (normal_quantile(1.0 - tail).expect("inside"), normal_quantile(tail).expect("inside"));
        close(above, -below, 1e-14);
    }

    #[test]
    fn far_tails_hold_and_edges_are_refused() {
        close(normal_quantile(1e-300).expect("inside"), -37.047_096_299_361_2, 1e-9);
        for p in [0.0, 1.0, -0.1, 1.1, f64::NAN] {
            assert_eq!(normal_quantile(p), None);
        }
    }

    #[test]
    fn quantile_and_tail_are_inverse() {
        for step in 1..1000 {
            let tail = f64::from(step) / 2000.0;
            let z = normal_quantile(1.0 - tail).expect("inside");
            close(normal_tail(z) / tail, 1.0, 1e-12);
        }
    }
}
