//! Interpolates between the poses: one smooth movement that starts and ends gently.

use crate::catalogue::{Joint, Pose};

/// All joint angles of a position in degrees, indexed by the joint's place in [`Joint::ALL`].
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Angles(Vec<f64>);

impl Angles {
    pub fn of(&self, joint: Joint) -> f64 {
        self.0[joint as usize]
    }
}

/// The position at `phase`: 0 is the first pose, 1 the last; a phase outside is clamped.
///
/// Each angle follows a cubic curve through all poses. Its slope is zero at the ends and at poses where it turns back, so no angle
/// goes beyond those of the neighbouring poses.
pub(super) fn between(poses: &[Pose], phase: f64) -> Angles {
    let last = poses.len().saturating_sub(1);
    let place = if phase.is_finite() { phase.clamp(0.0, 1.0) } else { 0.0 } * last as f64;
    let before = (place.floor() as usize).min(last.saturating_sub(1));
    let part = place - before as f64;
    let angle = |joint: Joint| {
        let at = |i: usize| poses.get(i.min(last)).map_or(0.0, |pose| f64::from(pose.angle(joint)));
        let slope = |i: usize| {
            if i == 0 || i >= last { 0.0 } else { gentle(at(i) - at(i - 1), at(i + 1) - at(i)) }
        };
        hermite(at(before), slope(before), at(before + 1), slope(before + 1), part)
    };
    Angles(Joint::ALL.iter().map(|&joint| angle(joint)).collect())
}

/// The slope at an inner pose: zero if the movement turns back there, otherwise the harmonic mean, which never overshoots (Fritsch
/// and Butland 1984, SIAM J Sci Stat Comput 5:300).
fn gentle(into: f64, out: f64) -> f64 {
    if into * out <= 0.0 { 0.0 } else { 2.0 * into * out / (into + out) }
}

fn hermite(a: f64, slope_a: f64, b: f64, slope_b: f64, t: f64) -> f64 {
    let (t2, t3) = (t * t, t * t * t);
    a * (2.0 * t3 - 3.0 * t2 + 1.0) + slope_a * (t3 - 2.0 * t2 + t) + b * (3.0 * t2 - 2.0 * t3) + slope_b * (t3 - t2)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn knee(poses: &[i16], phase: f64) -> f64 {
        let poses: Vec<_> = poses.iter().map(|&angle| Pose::from([(Joint::KneeNear, angle)])).collect();
        between(&poses, phase).of(Joint::KneeNear)
    }

    #[test]
    fn the_movement_passes_through_its_poses() {
        assert_eq!([0.0, 0.5, 1.0].map(|phase| knee(&[10, 50, 20], phase)), [10.0, 50.0, 20.0]);
        assert_eq!((knee(&[10, 50], 0.0), knee(&[10, 50], 1.0), knee(&[10, 50], 0.5)), (10.0, 50.0, 30.0));
    }

    #[test]
    fn the_movement_starts_and_ends_gently() {
        let (start, middle) = (knee(&[0, 100], 0.1), knee(&[0, 100], 0.55) - knee(&[0, 100], 0.45));
        assert!(start < 0.3 * middle, "a tenth from rest is {start}, a tenth in the middle {middle}");
    }

    #[test]
    fn no_angle_goes_beyond_its_poses() {
        for step in 0..=100 {
            let angle = knee(&[0, 90, 95, 10], f64::from(step) / 100.0);
            assert!((0.0..=95.0).contains(&angle), "{angle} at {step} %");
        }
    }

    #[test]
    fn a_phase_out_of_range_is_clamped() {
        assert_eq!((knee(&[3, 9], -4.0), knee(&[3, 9], 7.0), knee(&[3, 9], f64::NAN)), (3.0, 9.0, 3.0));
        assert_eq!(
            (knee(&[3], 0.7), knee(&[], 0.7)),
            (3.0, 0.0),
            "with one pose or none the figure stands still and does not crash"
        );
    }
}
