//! Jerk (rate of change of acceleration): its square, integrated by the trapezoid rule over central differences, and figures derived
//! from it.

use crate::sway::{detrend::gradient, parameters::DT, plane::Plane};

pub(super) struct Jerk {
    /// Integral of x'^2, m2/s5.
    pub(super) ml: f64,
    /// Integral of y'^2, m2/s5.
    pub(super) ap: f64,
}

impl Jerk {
    pub(super) fn planar(&self) -> f64 {
        self.ml + self.ap
    }
}

pub(super) fn of(plane: &Plane) -> Jerk {
    Jerk { ml: squared_change(&plane.ml), ap: squared_change(&plane.ap) }
}

/// sqrt(T^5/2 integral), m.
pub(super) fn normalised(integral: f64, time: f64) -> f64 {
    libm::sqrt(time * time * time * time * time / 2.0 * integral)
}

/// -ln(T/peak^2 integral).
pub(super) fn log_dimensionless(integral: f64, time: f64, peak: f64) -> f64 {
    -libm::log(time / (peak * peak) * integral)
}

fn squared_change(signal: &[f64]) -> f64 {
    let change = gradient(signal);
    let areas = change.windows(2).map(|pair| (pair[0] * pair[0] + pair[1] * pair[1]) / 2.0 * DT);
    areas.sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ramp_changes_by_its_slope() {
        let ramp: Vec<f64> = (0..101).map(|k| 3.0 * f64::from(k) / 100.0).collect();
        let got = of(&Plane { ml: ramp, ap: vec![0.0; 101], up: vec![0.0; 101] });
        assert!((got.ml - 9.0).abs() < 1e-9 && got.ap == 0.0);
        assert!((normalised(got.ml, 2.0) - 12.0).abs() < 1e-9);
        assert!((log_dimensionless(9.0, 1.0, 3.0)).abs() < 1e-12);
    }
}
