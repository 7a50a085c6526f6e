//! Evidence for or against a touch-down in the horizontal signal.

use crate::statistics::median;
use crate::sway::{
    axes::{Axes, along, views},
    filter::zero_phase,
    grid::Grid,
    lanes::mean,
    parameters::{FC_LEAN, SUPPORT_PRE, SUPPORT_SHIFT},
};

/// Number of grid points before an event in which a large swing supports it: one second.
const PRE: usize = 100;
/// Where the lean before an event is averaged: 2.0 to 1.0 s before it, in grid points.
const BEFORE: (usize, usize) = (200, 100);
/// Where the lean after an event is averaged: 0.3 to 1.0 s after it, in grid points.
const AFTER: (usize, usize) = (30, 100);
/// Least number of grid points (0.4 s) after an event for which a lean after it is computed.
const FOLLOW: usize = 40;

pub(super) struct Evidence {
    /// Distance of each point from the trial's median, low-passed at 10 Hz, m/s2.
    distance: Vec<f64>,
    /// Horizontal signal, low-passed at 1 Hz, m/s2.
    lean: [Vec<f64>; 2],
}

/// Whether at least one of the two values exceeds its threshold. Both in m/s2.
pub(super) fn supports(pre: f64, shift: f64) -> bool {
    pre > SUPPORT_PRE || shift > SUPPORT_SHIFT
}

impl Evidence {
    /// Computed from the horizontal signal low-passed at 10 Hz; `None` if no point lies inside the trial.
    pub(super) fn of(grid: &Grid, axes: &Axes, wide: [Vec<f64>; 2], inside: &[usize]) -> Option<Evidence> {
        let middle = |signal: &[f64]| median(&inside.iter().map(|&k| signal[k]).collect::<Vec<_>>());
        let (x, y) = (middle(&wide[0])?, middle(&wide[1])?);
        let points = wide[0].iter().zip(&wide[1]);
        let distance = points.map(|(ml, ap)| length(ml - x, ap - y)).collect();
        let lean = zero_phase(FC_LEAN, [&along(views(&grid.axes), axes.ml), &along(views(&grid.axes), axes.ap)]);
        Some(Evidence { distance, lean })
    }

    /// Largest distance from the median in the second before point `at`, m/s2.
    pub(super) fn pre(&self, at: usize) -> f64 {
        let from = at.saturating_sub(PRE);
        self.distance[from..=at].iter().copied().fold(0.0, f64::max)
    }

    /// Change of the mean lean from before to after point `at`, m/s2.
    pub(super) fn shift(&self, at: usize) -> f64 {
        let count = self.distance.len();
        let before = (at.saturating_sub(BEFORE.0), at.saturating_sub(BEFORE.1));
        let after = (at + AFTER.0, (at + AFTER.1).min(count));
        if at + FOLLOW >= count || before.0 == before.1 {
            return 0.0;
        }
        let change = |signal: &[f64]| mean(&signal[after.0..after.1]) - mean(&signal[before.0..before.1]);
        length(change(&self.lean[0]), change(&self.lean[1]))
    }
}

fn length(x: f64, y: f64) -> f64 {
    libm::sqrt(x * x + y * y)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stepping_at(place: usize, count: usize) -> Evidence {
        let step: Vec<f64> = (0..count).map(|k| if k < place { 0.0 } else { 0.5 }).collect();
        Evidence { distance: step.clone(), lean: [step, vec![0.0; count]] }
    }

    #[test]
    fn a_step_is_seen_as_a_shift_of_its_size() {
        let evidence = stepping_at(500, 1000);
        assert_eq!(evidence.shift(500), 0.5);
        assert_eq!(evidence.pre(499), 0.0);
        assert_eq!(evidence.pre(500), 0.5);
        assert_eq!(evidence.pre(600), 0.5);
    }

    #[test]
    fn too_near_an_end_there_is_no_shift() {
        let evidence = stepping_at(500, 540);
        assert_eq!(evidence.shift(500), 0.0);
        assert_eq!(evidence.shift(499), 0.5);
        assert_eq!(stepping_at(50, 1000).shift(50), 0.0);
    }

    #[test]
    fn either_is_support() {
        assert!(supports(0.61, 0.0) && supports(0.0, 0.26) && !supports(0.6, 0.25));
    }
}
