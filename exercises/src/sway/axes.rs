//! Step 4: axes from gravity.
//!
//! v is the mean vector and points up; AP is the screen's axis z made horizontal; ML = v x AP points to the patient's left when the
//! screen faces away. The vector form is exact for any tilt; the two-angle correction of Moe-Nilssen (1998, Clin Biomech 13:320-327)
//! is exact only for a tilt about one axis. A turn of the phone about the vertical cannot be detected.
//!
//! If the screen is within 30 degrees of horizontal, AP and ML cannot be identified. Any pair of horizontal axes is then used, and
//! only figures that do not depend on the choice are reported.

use super::parameters::AP_MIN_SIN;

/// Three unit vectors in device axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Axes {
    pub(crate) up: [f64; 3],
    pub(crate) ap: [f64; 3],
    pub(crate) ml: [f64; 3],
    /// Whether ML and AP really point to the patient's side and front.
    pub(crate) identified: bool,
}

const SCREEN: [f64; 3] = [0.0, 0.0, 1.0];
const TOP: [f64; 3] = [0.0, 1.0, 0.0];

/// The axes for a mean vector; `None` if the vector has no direction.
pub(crate) fn axes(mean: [f64; 3]) -> Option<Axes> {
    let up = scaled(mean, norm(mean))?;
    let forward = horizontal(SCREEN, up);
    let identified = norm(forward) >= AP_MIN_SIN;
    // If the screen lies flat, its normal cannot be made horizontal, but the direction of its top edge can.
    let chosen = if identified { forward } else { horizontal(TOP, up) };
    let ap = scaled(chosen, norm(chosen))?;
    Some(Axes { up, ap, ml: cross(up, ap), identified })
}

/// The component of each point along one axis.
pub(crate) fn along([x, y, z]: [&[f64]; 3], axis: [f64; 3]) -> Vec<f64> {
    let pairs = x.iter().zip(y).zip(z);
    pairs.map(|((x, y), z)| x * axis[0] + y * axis[1] + z * axis[2]).collect()
}

/// Borrows a record's three axes as slices.
pub(crate) fn views(axes: &[Vec<f64>; 3]) -> [&[f64]; 3] {
    axes.each_ref().map(Vec::as_slice)
}

pub(crate) fn norm(v: [f64; 3]) -> f64 {
    libm::sqrt(dot(v, v))
}

pub(crate) fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

pub(crate) fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/// The angle between two vectors, degrees; exact near 0, where the arc cosine is not.
pub(crate) fn angle_deg(a: [f64; 3], b: [f64; 3]) -> f64 {
    libm::atan2(norm(cross(a, b)), dot(a, b)).to_degrees()
}

fn scaled(v: [f64; 3], by: f64) -> Option<[f64; 3]> {
    (by.is_finite() && by > 0.0).then(|| v.map(|axis| axis / by))
}

fn horizontal(v: [f64; 3], up: [f64; 3]) -> [f64; 3] {
    let rise = dot(v, up);
    [0, 1, 2].map(|axis| v[axis] - rise * up[axis])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(a: [f64; 3], b: [f64; 3]) -> bool {
        (0..3).all(|axis| (a[axis] - b[axis]).abs() < 1e-12)
    }

    #[test]
    fn upright_with_the_screen_away_left_is_the_devices_x() {
        // Screen away and top up: the phone's right, as seen by someone who looks at the screen, is the patient's left.
        let got = axes([0.0, 9.8, 0.0]).expect("gravity");
        assert!(got.identified);
        assert!(close(got.up, [0.0, 1.0, 0.0]) && close(got.ap, [0.0, 0.0, 1.0]));
        assert!(close(got.ml, [1.0, 0.0, 0.0]));
    }

    #[test]
    fn a_tilted_phone_has_the_same_axes_in_the_room() {
        // Pitched by 20 degrees: gravity appears on y and z; AP stays horizontal.
        let (sin, cos) = (libm::sin(0.35), libm::cos(0.35));
        let got = axes([0.0, 9.8 * cos, 9.8 * sin]).expect("gravity");
        assert!(close(got.ap, [0.0, -sin, cos]));
        assert!(dot(got.ap, got.up).abs() < 1e-15 && dot(got.ml, got.up).abs() < 1e-15);
    }

    #[test]
    fn lying_flat_front_and_side_are_not_identified() {
        assert!(!axes([0.0, 0.0, 9.8]).expect("gravity").identified);
        let just_above = 30.1_f64.to_radians();
        let just_below = 29.9_f64.to_radians();
        let leaning = |angle: f64| axes([0.0, 9.8 * libm::sin(angle), 9.8 * libm::cos(angle)]);
        assert!(leaning(just_above).expect("gravity").identified);
        assert!(!leaning(just_below).expect("gravity").identified);
    }

    #[test]
    fn without_a_direction_there_are_no_axes() {
        assert_eq!(axes([0.0; 3]), None);
        assert_eq!(axes([f64::MAX; 3]), None);
        assert_eq!(axes([f64::NAN, 0.0, 0.0]), None);
    }

    #[test]
    fn angles() {
        assert!((angle_deg([1.0, 0.0, 0.0], [0.0, 2.0, 0.0]) - 90.0).abs() < 1e-12);
        assert!((angle_deg([1.0, 0.0, 0.0], [1.0, 1e-9, 0.0]) - 1e-9_f64.to_degrees()).abs() < 1e-20);
    }
}
