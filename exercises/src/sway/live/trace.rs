//! The live trace: resampled as samples arrive, filtered causally, and turned to the patient's left and front.

use crate::sway::{
    axes::{axes, dot},
    filter::LowPass,
    parameters::{DT, FC_SWAY, FS, GAP_SPLIT_S},
    sample::Sample,
    source::Screen,
};

/// Time constant of the mean vector, s: long compared with sway, short compared with a trial.
const FOLLOW_S: f64 = 5.0;
/// Longest gap that is filled, s. After a longer gap the filter starts over.
const FILL_S: f64 = GAP_SPLIT_S;

/// Times beyond this are not a sensor's times; they are so large that a grid step would be lost in rounding, s.
const LATEST_S: f64 = 4e12;

/// One point of the drawn trace.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TracePoint {
    /// Time, s on the samples' clock.
    pub t_s: f64,
    /// Acceleration towards the patient's left, m/s2.
    pub left: f64,
    /// Acceleration towards the patient's front, m/s2.
    pub front: f64,
}

/// Computes the trace while samples arrive. It lags by the filter's delay (about 0.1 s) and drifts with the mean: it is for drawing
/// only, not for measuring.
#[derive(Debug, Clone, PartialEq)]
pub struct LiveTrace {
    /// Sign that turns the device's ML and AP into the patient's left and front.
    turned: f64,
    running: Option<Running>,
}

#[derive(Debug, Clone, PartialEq)]
struct Running {
    last: Sample,
    /// Time of the next grid point.
    next_s: f64,
    filter: LowPass<3>,
    mean: [f64; 3],
}

impl LiveTrace {
    /// A new trace. If the screen faces the body, left and front change their sign.
    pub fn new(screen: Screen) -> LiveTrace {
        let turned = match screen {
            Screen::Away => 1.0,
            Screen::TowardBody => -1.0,
        };
        LiveTrace { turned, running: None }
    }

    /// Adds a sample and returns the newest point of the trace; `None` if the sample is unusable, reaches no new grid point, or if
    /// front and side cannot be told apart.
    pub fn push(&mut self, sample: Sample) -> Option<TracePoint> {
        let usable = sample.t_s.abs() <= LATEST_S && sample.a.iter().all(|axis| axis.is_finite());
        if !usable {
            return None;
        }
        match &mut self.running {
            Some(running) if sample.t_s <= running.last.t_s => None,
            Some(running) if sample.t_s - running.last.t_s <= FILL_S => {
                let point = running.advance(sample)?;
                self.drawn(point)
            }
            _ => {
                self.running = Some(Running::begin(sample));
                None
            }
        }
    }

    fn drawn(&self, (t_s, filtered): (f64, [f64; 3])) -> Option<TracePoint> {
        let mean = self.running.as_ref()?.mean;
        let axes = axes(mean).filter(|axes| axes.identified)?;
        let off = [0, 1, 2].map(|axis| filtered[axis] - mean[axis]);
        let (left, front) = (self.turned * dot(off, axes.ml), self.turned * dot(off, axes.ap));
        Some(TracePoint { t_s, left, front })
    }
}

impl Running {
    fn begin(sample: Sample) -> Running {
        Running { last: sample, next_s: sample.t_s + DT, filter: LowPass::settled(FC_SWAY, sample.a), mean: sample.a }
    }

    /// Fills the grid up to the sample. Returns the newest filtered point, if a new grid point was reached.
    fn advance(&mut self, sample: Sample) -> Option<(f64, [f64; 3])> {
        let mut newest = None;
        let step = sample.t_s - self.last.t_s;
        let slowness = 1.0 / (FOLLOW_S * FS);
        while self.next_s <= sample.t_s {
            let weight = (self.next_s - self.last.t_s) / step;
            let between = [0, 1, 2].map(|axis| self.last.a[axis] + weight * (sample.a[axis] - self.last.a[axis]));
            let point = self.filter.step(between);
            for (mean, value) in self.mean.iter_mut().zip(point) {
                *mean += slowness * (value - *mean);
            }
            newest = Some((self.next_s, point));
            self.next_s += DT;
        }
        self.last = sample;
        newest
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn feed(trace: &mut LiveTrace, from: i32, to: i32, at: impl Fn(f64) -> [f64; 3]) -> Vec<TracePoint> {
        let sample = |k: i32| Sample { t_s: f64::from(k) / 60.0, a: at(f64::from(k) / 60.0) };
        (from..to).filter_map(|k| trace.push(sample(k))).collect()
    }

    #[test]
    fn a_lean_to_the_left_is_drawn_to_the_left_whichever_way_the_screen_looks() {
        let away = |t: f64| [if t > 2.0 { 0.5 } else { 0.0 }, 9.8, 0.0];
        let mut trace = LiveTrace::new(Screen::Away);
        let last = *feed(&mut trace, 0, 180, away).last().expect("points");
        assert!(last.left > 0.3 && last.front.abs() < 1e-9, "{last:?}");
        // Turned about its long axis the phone's x points to the right.
        let toward = |t: f64| [if t > 2.0 { -0.5 } else { 0.0 }, 9.8, 0.0];
        let mut trace = LiveTrace::new(Screen::TowardBody);
        assert!(feed(&mut trace, 0, 180, toward).last().expect("points").left > 0.3);
    }

    #[test]
    fn the_trace_follows_about_a_tenth_of_a_second_late() {
        let wave = |t: f64| [0.3 * libm::sin(2.0 * core::f64::consts::PI * 0.5 * t), 9.8, 0.0];
        let mut trace = LiveTrace::new(Screen::Away);
        let points = feed(&mut trace, 0, 600, wave);
        let late = points.iter().filter(|point| point.t_s > 5.0);
        for point in late {
            let was = wave(point.t_s - 0.119)[0];
            assert!((point.left - was).abs() < 0.05, "{point:?} against {was}");
        }
    }

    #[test]
    fn between_two_samples_the_straight_line_is_drawn() {
        let ramp = |t: f64| [0.2 * t, 9.8, 0.0];
        let last = |rate: i32| {
            let mut trace = LiveTrace::new(Screen::Away);
            let sample = |k: i32| Sample { t_s: f64::from(k) / f64::from(rate), a: ramp(f64::from(k) / f64::from(rate)) };
            let points: Vec<TracePoint> = (0..=2 * rate).filter_map(|k| trace.push(sample(k))).collect();
            *points.iter().rfind(|point| point.t_s < 1.905).expect("points")
        };
        let (fine, coarse) = (last(100), last(20));
        assert!((fine.t_s - coarse.t_s).abs() < 0.045 && (fine.left - coarse.left).abs() < 0.01, "{fine:?} {coarse:?}");
    }

    #[test]
    fn a_gap_restarts_the_trace_and_unusable_samples_are_ignored() {
        let mut trace = LiveTrace::new(Screen::Away);
        assert!(!feed(&mut trace, 0, 60, |_| [0.0, 9.8, 0.0]).is_empty());
        let odd = |t_s: f64, x: f64| Sample { t_s, a: [x, 9.8, 0.0] };
        assert_eq!(trace.push(odd(0.5, 1.0)), None);
        assert_eq!(trace.push(odd(f64::NAN, 1.0)), None);
        assert_eq!(trace.push(odd(1.0, f64::NAN)), None);
        assert_eq!(trace.push(odd(1e12, 0.7)), None);
        let after = trace.push(odd(1e12 + 0.1, 0.7)).expect("the grid continued");
        assert!(after.left.abs() < 1e-9);
    }

    #[test]
    fn a_screen_that_lies_flat_is_not_drawn() {
        let mut trace = LiveTrace::new(Screen::Away);
        assert!(feed(&mut trace, 0, 120, |_| [0.0, 0.0, 9.8]).is_empty());
    }
}
