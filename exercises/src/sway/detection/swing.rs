//! The swing of the vertical jerk in a sliding window.

use crate::sway::parameters::SWING_HALF;

/// For every grid point, over the 31 points around it (fewer at the ends).
pub(super) struct Swing {
    /// Largest less smallest jerk, m/s3.
    pub(super) size: Vec<f64>,
    /// Grid point of the largest |jerk|, the first of equals.
    pub(super) peak: Vec<usize>,
}

impl Swing {
    pub(super) fn of(jerk: &[f64]) -> Swing {
        let around = |k: usize| (k.saturating_sub(SWING_HALF), (k + SWING_HALF + 1).min(jerk.len()));
        let size = |k: usize| {
            let (from, to) = around(k);
            let ends = jerk[from..to]
                .iter()
                .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &value| (low.min(value), high.max(value)));
            ends.1 - ends.0
        };
        let peak = |k: usize| {
            let (from, to) = around(k);
            (from..to).fold(from, |best, at| if jerk[at].abs() > jerk[best].abs() { at } else { best })
        };
        Swing { size: (0..jerk.len()).map(size).collect(), peak: (0..jerk.len()).map(peak).collect() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_spike_is_seen_by_fifteen_points_on_each_side() {
        let mut jerk = vec![0.0; 100];
        jerk[50] = -4.0;
        jerk[52] = 3.0;
        let got = Swing::of(&jerk);
        assert_eq!((got.size[34], got.size[35], got.size[37]), (0.0, 4.0, 7.0));
        assert_eq!((got.size[65], got.size[67], got.size[68]), (7.0, 3.0, 0.0));
        assert_eq!((got.peak[40], got.peak[67]), (50, 52));
    }

    #[test]
    fn the_window_is_cut_at_the_ends() {
        let got = Swing::of(&[1.0, 5.0, 2.0]);
        assert_eq!((got.size, got.peak), (vec![4.0; 3], vec![1; 3]));
    }
}
