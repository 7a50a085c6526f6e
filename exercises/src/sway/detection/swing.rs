//! The swing (largest minus smallest value) of the vertical jerk in a sliding window.

use crate::sway::parameters::SWING_HALF;

/// The swing over the 31 points around each grid point; fewer points at the ends.
pub(super) struct Swing {
    /// Largest minus smallest jerk, m/s3.
    pub(super) size: Vec<f64>,
    jerk: Vec<f64>,
}

impl Swing {
    pub(super) fn of(jerk: Vec<f64>) -> Swing {
        let largest = around(&jerk, f64::NEG_INFINITY, f64::max);
        let smallest = around(&jerk, f64::INFINITY, f64::min);
        Swing { size: largest.iter().zip(&smallest).map(|(high, low)| high - low).collect(), jerk }
    }

    /// The grid point with the largest |jerk| around point `k`; if several are equal, the first.
    pub(super) fn peak(&self, k: usize) -> usize {
        let (from, to) = (k.saturating_sub(SWING_HALF), (k + SWING_HALF + 1).min(self.jerk.len()));
        (from..to).fold(from, |best, at| if self.jerk[at].abs() > self.jerk[best].abs() { at } else { best })
    }
}

/// The extreme value of the 31 points around each point. A window as wide as a power of two is made of two windows of half that
/// width; two overlapping windows of 16 make one of 31.
fn around(signal: &[f64], beyond: f64, extreme: impl Fn(f64, f64) -> f64) -> Vec<f64> {
    let edge = [beyond; SWING_HALF];
    let mut window = [&edge, signal, &edge].concat();
    let mut narrow = |apart: usize| {
        for k in 0..window.len() - apart {
            window[k] = extreme(window[k], window[k + apart]);
        }
        window.truncate(window.len() - apart);
    };
    [1, 2, 4, 8, SWING_HALF].into_iter().for_each(&mut narrow);
    window
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_spike_is_seen_by_fifteen_points_on_each_side() {
        let mut jerk = vec![0.0; 100];
        jerk[50] = -4.0;
        jerk[52] = 3.0;
        let got = Swing::of(jerk);
        assert_eq!((got.size[34], got.size[35], got.size[37]), (0.0, 4.0, 7.0));
        assert_eq!((got.size[65], got.size[67], got.size[68]), (7.0, 3.0, 0.0));
        assert_eq!((got.peak(40), got.peak(67)), (50, 52));
    }

    #[test]
    fn the_window_is_cut_at_the_ends() {
        let got = Swing::of(vec![1.0, 5.0, 2.0]);
        assert_eq!([0, 1, 2].map(|k| got.peak(k)), [1; 3]);
        assert_eq!(got.size, [4.0; 3]);
    }

    #[test]
    fn the_fast_extremes_equal_those_of_a_plain_search() {
        let jerk: Vec<f64> = (0..200).map(|k| f64::from(k * k * 13 % 97)).collect();
        let got = Swing::of(jerk.clone());
        for k in 0..jerk.len() {
            let window = &jerk[k.saturating_sub(15)..(k + 16).min(jerk.len())];
            let high = window.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            let low = window.iter().copied().fold(f64::INFINITY, f64::min);
            assert_eq!(got.size[k], high - low, "point {k}");
        }
    }
}
