//! Figures about the quality of the record, computed before anything is measured in it.

use super::{
    axes::{angle_deg, cross, dot, norm},
    clean::Clean,
    filter::zero_phase,
    grid::Grid,
    parameters::{
        CLIP_ABS, CLIP_SHARE, COARSE_LSB, FC_TILT, FS_DETECT, FS_MIN, G_TOLERANCE, G0, GAP_WARN_S, LSB_FLOOR, MAX_MISSING,
        STALL_S,
    },
    sample::Sample,
    source::{Source, SourceKind},
    verdict::{Flag, Reason},
    window::Window,
};
use crate::statistics::{median, percentile};

/// Figures about a record.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Quality {
    /// Rows kept after cleaning.
    pub n_raw: usize,
    /// Rows dropped: not finite, or not later than the row before.
    pub dropped: usize,
    /// Sample rate: 1 / median interval, 1/s. `None` with fewer than two rows, like everything that is computed from intervals.
    pub fs_est: Option<f64>,
    /// 95th percentile of |interval - median| / median, without a unit.
    pub jitter_p95: Option<f64>,
    /// Longest interval, s.
    pub max_gap_s: Option<f64>,
    /// Share of the record that is missing, 0 to 1: the sum of max(interval - 1.5 median, 0) divided by the duration.
    pub missing_frac: Option<f64>,
    /// Smallest step between neighbouring values of one axis, m/s2; `None` if no value changes.
    pub lsb: Option<f64>,
    /// Whether the step is 0.05 m/s2 or more.
    pub coarse: bool,
    /// Length of the mean vector of the resampled record, m/s2; `None` if there are no rows.
    pub g_mean: Option<f64>,
    /// Largest absolute value of any axis, m/s2; `None` if there are no rows.
    pub max_abs: Option<f64>,
    /// Longest time with identical samples, s.
    pub stall_s: f64,
    /// Largest turn of the phone from its mean position in the window, degrees; `None` if there is no window.
    pub tilt_change_deg: Option<f64>,
}

impl Quality {
    /// For a record that was not examined.
    pub(crate) fn unseen() -> Quality {
        Quality {
            n_raw: 0,
            dropped: 0,
            fs_est: None,
            jitter_p95: None,
            max_gap_s: None,
            missing_frac: None,
            lsb: None,
            coarse: false,
            g_mean: None,
            max_abs: None,
            stall_s: 0.0,
            tilt_change_deg: None,
        }
    }

    /// For a cleaned record and its grid. The turn of the phone is added later, because it needs the window.
    pub(crate) fn of(clean: &Clean, grid: &Grid) -> Quality {
        let intervals = clean.intervals();
        let typical = median(&intervals);
        let lsb = smallest_step(&clean.samples);
        Quality {
            n_raw: clean.samples.len(),
            dropped: clean.dropped,
            fs_est: typical.map(|typical| 1.0 / typical),
            jitter_p95: typical.and_then(|typical| jitter(&intervals, typical)),
            max_gap_s: intervals.iter().copied().reduce(f64::max),
            missing_frac: typical.map(|typical| missing(&intervals, typical) / clean.span_s()),
            lsb,
            coarse: lsb.is_some_and(|step| step >= COARSE_LSB),
            g_mean: grid.len().checked_sub(1).map(|last| norm(grid.mean(0, last))),
            max_abs: (!clean.samples.is_empty()).then(|| largest(&clean.samples)),
            stall_s: longest_stall(&clean.samples),
            tilt_change_deg: None,
        }
    }

    /// Whether the sample rate allows touch-downs to be detected.
    pub(crate) fn fast_enough_to_detect(&self) -> bool {
        self.fs_est.is_some_and(|rate| rate >= FS_DETECT)
    }

    /// The flags that depend on the record alone, in the order in which they are printed.
    pub(crate) fn flags(&self, source: &Source) -> Vec<Flag> {
        let rate_is_low = self.fs_est.is_some_and(|rate| (FS_MIN..FS_DETECT).contains(&rate));
        let gap = self.max_gap_s.is_some_and(|gap| gap > GAP_WARN_S);
        let known = source.range_ms2.filter(|range| source.kind == SourceKind::Native && *range > 0.0);
        let clipped = self
            .max_abs
            .is_some_and(|largest| largest > CLIP_ABS || known.is_some_and(|range| largest >= CLIP_SHARE * range));
        let all = [(rate_is_low, Flag::NoDetection), (gap, Flag::Gap), (clipped, Flag::PossibleClipping)];
        all.into_iter().filter(|(set, _)| *set).map(|(_, flag)| flag).collect()
    }

    /// The reasons that depend on the record alone, in the order in which they are printed. Comparisons are written so that a figure
    /// that is missing or NaN counts against the record.
    pub(crate) fn reasons(&self) -> Vec<Reason> {
        let holds = |figure: Option<f64>, test: &dyn Fn(f64) -> bool| figure.is_some_and(test);
        let all = [
            (holds(self.fs_est, &|rate| rate >= FS_MIN), Reason::RateTooLow),
            (holds(self.missing_frac, &|share| share <= MAX_MISSING), Reason::TooMuchMissing),
            (self.stall_s <= STALL_S, Reason::SensorStalled),
            (holds(self.g_mean, &|g| (g - G0).abs() <= G_TOLERANCE), Reason::GravityImplausible),
        ];
        all.into_iter().filter(|(fine, _)| !fine).map(|(_, reason)| reason).collect()
    }
}

/// Largest angle between the slowly filtered vector and the window's mean, over the window, degrees.
pub(crate) fn tilt_change_deg(grid: &Grid, window: &Window) -> f64 {
    let mean = grid.mean(window.k0, window.k1);
    let [x, y, z] = &grid.axes;
    let slow = zero_phase(FC_TILT, [x, y, z]);
    let vectors = (window.k0..=window.k1).map(|k| [slow[0][k], slow[1][k], slow[2][k]]);
    // The angle falls as its cotangent grows, so only the angle for the largest cotangent has to be computed.
    let cotangent = |v: &[f64; 3]| {
        let (along, across) = (dot(*v, mean), cross(*v, mean));
        along * along.abs() / dot(across, across)
    };
    let with_cotangent = vectors.map(|v| (cotangent(&v), v));
    let farthest = with_cotangent.reduce(|most, next| if next.0 < most.0 || most.0.is_nan() { next } else { most });
    farthest.map_or(0.0, |(_, v)| angle_deg(v, mean))
}

fn jitter(intervals: &[f64], typical: f64) -> Option<f64> {
    let off: Vec<f64> = intervals.iter().map(|interval| (interval - typical).abs()).collect();
    percentile(&off, 0.95).map(|off| off / typical)
}

fn missing(intervals: &[f64], typical: f64) -> f64 {
    intervals.iter().map(|interval| (interval - 1.5 * typical).max(0.0)).sum()
}

fn largest(samples: &[Sample]) -> f64 {
    let mut most = [0.0_f64; 3];
    for sample in samples {
        for (most, value) in most.iter_mut().zip(sample.a) {
            *most = if value.abs() > *most { value.abs() } else { *most };
        }
    }
    most.into_iter().fold(0.0, f64::max)
}

fn smallest_step(samples: &[Sample]) -> Option<f64> {
    let mut smallest = [f64::INFINITY; 3];
    for pair in samples.windows(2) {
        for (axis, smallest) in smallest.iter_mut().enumerate() {
            let step = (pair[1].a[axis] - pair[0].a[axis]).abs();
            let step = if step > LSB_FLOOR { step } else { f64::INFINITY };
            *smallest = if step < *smallest { step } else { *smallest };
        }
    }
    smallest.into_iter().reduce(f64::min).filter(|smallest| smallest.is_finite())
}

fn longest_stall(samples: &[Sample]) -> f64 {
    let same = |one: &Sample, other: &Sample| one.a == other.a;
    let runs = samples.chunk_by(same).map(|run| match (run.first(), run.last()) {
        (Some(first), Some(last)) => last.t_s - first.t_s,
        _ => 0.0,
    });
    runs.fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sway::{clean::clean, grid::resample};

    fn quality(rows: impl IntoIterator<Item = (f64, [f64; 3])>) -> Quality {
        let rows: Vec<Sample> = rows.into_iter().map(|(t_s, a)| Sample { t_s, a }).collect();
        let clean = clean(&rows);
        resample(&clean).map_or(Quality::unseen(), |grid| Quality::of(&clean, &grid))
    }

    fn steady(rate: f64, seconds: f64) -> impl Iterator<Item = (f64, [f64; 3])> {
        let count = (rate * seconds) as usize;
        (0..=count).map(move |k| (k as f64 / rate, [0.002 * (k % 3) as f64, 9.8, 0.0]))
    }

    #[test]
    fn a_good_record_has_no_flags_or_reasons() {
        let got = quality(steady(100.0, 10.0));
        assert_eq!(got.reasons(), vec![]);
        assert_eq!(got.flags(&Source::file()), vec![]);
        assert!(got.fast_enough_to_detect());
    }

    #[test]
    fn slow_rates() {
        let at = |rate| quality(steady(rate, 10.0));
        assert_eq!(at(29.0).reasons(), vec![Reason::RateTooLow]);
        assert_eq!(at(40.0).reasons(), vec![]);
        assert_eq!(at(40.0).flags(&Source::file()), vec![Flag::NoDetection]);
        assert!(!at(40.0).fast_enough_to_detect());
    }

    #[test]
    fn gaps_are_flagged_and_much_missing_is_a_reason() {
        let without = |from: f64, to: f64| quality(steady(100.0, 10.0).filter(move |(t, _)| *t <= from || *t >= to));
        assert_eq!(without(5.0, 5.15).flags(&Source::file()), vec![Flag::Gap]);
        assert_eq!(without(5.0, 5.15).reasons(), vec![]);
        assert_eq!(without(5.0, 5.7).reasons(), vec![Reason::TooMuchMissing]);
    }

    #[test]
    fn a_stalled_sensor_and_one_that_repeats_now_and_then() {
        let stalled = |until: f64| {
            quality(steady(100.0, 10.0).map(move |(t, a)| (t, if t > 3.0 && t < until { [0.1, 9.8, 0.0] } else { a })))
        };
        assert_eq!(stalled(3.3).reasons(), vec![]);
        assert_eq!(stalled(3.6).reasons(), vec![Reason::SensorStalled]);
    }

    #[test]
    fn other_units_do_not_give_gravity() {
        let in_g = quality(steady(100.0, 10.0).map(|(t, a)| (t, a.map(|axis| axis / G0))));
        assert_eq!(in_g.reasons(), vec![Reason::GravityImplausible]);
        let huge = quality(steady(100.0, 10.0).map(|(t, _)| (t, [f64::MAX, f64::MAX, t])));
        assert!(huge.reasons().contains(&Reason::GravityImplausible));
    }

    #[test]
    fn clipping_by_the_reference_and_by_a_known_range() {
        let knock = |x: f64| quality(steady(100.0, 10.0).map(move |(t, a)| (t, if t == 5.0 { [x, 9.8, 0.0] } else { a })));
        assert_eq!(knock(39.0).flags(&Source::file()), vec![Flag::PossibleClipping]);
        assert_eq!(knock(19.5).flags(&Source::file()), vec![]);
        let native = Source { kind: SourceKind::Native, range_ms2: Some(19.6133), ..Source::file() };
        assert_eq!(knock(19.5).flags(&native), vec![Flag::PossibleClipping]);
        assert_eq!(knock(19.0).flags(&native), vec![]);
    }

    #[test]
    fn rounded_values_have_a_coarse_step() {
        let rounded = quality(steady(100.0, 10.0).map(|(t, _)| (t, [((t * 3.0) % 1.0 * 10.0).round() / 10.0, 9.8, 0.0])));
        assert!(rounded.coarse);
        assert!((rounded.lsb.expect("steps") - 0.1).abs() < 1e-12);
        assert!(!quality(steady(100.0, 10.0)).coarse);
    }

    #[test]
    fn one_row_has_no_rate() {
        let got = quality([(1.0, [0.0, 9.8, 0.0])]);
        assert_eq!((got.n_raw, got.fs_est, got.lsb), (1, None, None));
        assert_eq!(got.reasons(), vec![Reason::RateTooLow, Reason::TooMuchMissing]);
    }

    #[test]
    fn the_farthest_tilt_counts_however_long_the_vector_is() {
        // Upright for a long time, then leaning by 5 degrees while shaken to twice the length of the vector, then by 8 degrees while
        // falling to half of it.
        let held = [(0.0_f64, 9.8, 6000), (5.0, 20.0, 1000), (8.0, 5.0, 1000)];
        let of = |axis: fn(f64) -> f64| {
            held.iter().flat_map(|(lean, long, points)| vec![axis(lean.to_radians()) * long; *points]).collect::<Vec<_>>()
        };
        let grid = Grid { t_first: 0.0, axes: [of(f64::sin), of(f64::cos), of(|_| 0.0)], bad: vec![false; 8000] };
        let window = Window { k0: 0, k1: 7999, t0: 0.0, t1: 79.99 };
        let mean = grid.mean(0, 7999);
        let upright = libm::atan2(mean[0], mean[1]).to_degrees();
        let got = tilt_change_deg(&grid, &window);
        assert!(got >= 8.0 - upright - 1e-6 && upright < 2.0, "{got} from {upright}");
    }
}
