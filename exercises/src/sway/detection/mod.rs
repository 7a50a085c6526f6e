//! Detects touch-downs of the lifted foot in the whole record.
//!
//! A candidate is a large swing (largest minus smallest value) of the vertical jerk within 0.30 s: the best single feature for
//! near-falls at the pelvis (Weiss 2010, BMC Res Notes 3:62). Its threshold is the larger of a fixed value and the median plus a
//! multiple of the spread within the same trial. A candidate is *definite* if the swing is very large and the horizontal signal
//! supports it, otherwise *possible*. No study validates this for single-leg stance with a phone on the trunk, so the patient is
//! asked about every event that ends a hold without a tap.

mod evidence;
mod swing;
mod taps;

pub(crate) use taps::match_taps;

use super::{
    axes::{along, axes, views},
    detrend::gradient,
    filter::zero_phase,
    grid::Grid,
    parameters::{FC_EVENT, IGNORE_START_S, REFRACTORY, SWING_HIGH, SWING_HIGH_SPREADS, SWING_LOW, SWING_LOW_SPREADS},
    sample::{Marks, TouchAnswer},
};
use crate::statistics::{MAD_TO_SD, mad, median};
use evidence::Evidence;
use swing::Swing;

/// How certain a touch-down is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Class {
    /// A very large swing that the horizontal signal supports, or an event that matches a tap.
    Definite,
    /// A large swing. It does not end the hold by itself.
    Possible,
    /// The phone was shaken by the tap itself.
    TapKnock,
}

impl Class {
    /// The name under which it is stored and printed.
    pub fn code(self) -> &'static str {
        match self {
            Class::Definite => "definite",
            Class::Possible => "possible",
            Class::TapKnock => "tap_knock",
        }
    }
}

/// One candidate for a touch-down.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Event {
    /// Time of the event, s on the samples' clock.
    pub t_s: f64,
    /// Largest minus smallest vertical jerk, m/s3.
    pub p2p: f64,
    /// Largest horizontal distance from the trial's median in the second before the event, m/s2.
    pub pre: f64,
    /// Change of the mean lean from before to after the event, m/s2; 0 if the record ends too soon after it.
    pub shift: f64,
    /// Whether `pre` or `shift` supports a touch-down.
    pub support: bool,
    /// Time of the tap that matches the event, s on the samples' clock.
    pub tap_s: Option<f64>,
    /// How certain the event is.
    pub class: Class,
    /// What the patient answered when asked about it.
    pub answer: TouchAnswer,
}

/// All events of a record and the thresholds that found them.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Detection {
    /// The events, in order of time.
    pub events: Vec<Event>,
    /// Times of taps that match no candidate, s on the samples' clock.
    pub unmatched_taps_s: Vec<f64>,
    /// Threshold of a candidate, m/s3.
    pub thr_lo: f64,
    /// Threshold of a definite event, m/s3.
    pub thr_hi: f64,
    /// Median swing of the trial, m/s3.
    pub p2p_median: f64,
    /// Median absolute deviation of the swing, m/s3.
    pub p2p_mad: f64,
}

/// Finds the events; `None` if gravity has no direction in the record or no grid point lies inside the trial.
pub(crate) fn detect(grid: &Grid, marks: &Marks) -> Option<Detection> {
    let inside = inside(grid, marks);
    let middle = grid.axes.each_ref().map(|axis| median(axis));
    let [Some(x), Some(y), Some(z)] = middle else {
        return None;
    };
    let axes = axes([x, y, z])?;
    let [x, y, z] = &grid.axes;
    let wide = zero_phase(FC_EVENT, [x, y, z]);
    let swing = Swing::of(gradient(&along(views(&wide), axes.up)));
    let levels: Vec<f64> = inside.iter().map(|&k| swing.size[k]).collect();
    let (p2p_median, p2p_mad) = (median(&levels)?, mad(&levels)?);
    let above = |spreads: f64| p2p_median + spreads * MAD_TO_SD * p2p_mad;
    let thr_lo = SWING_LOW.max(above(SWING_LOW_SPREADS));
    let thr_hi = SWING_HIGH.max(above(SWING_HIGH_SPREADS));
    let candidates = candidates(&swing, &inside, thr_lo);
    let mut events: Vec<Event> = Vec::new();
    // Most trials have no candidate, and the evidence needs another filter pass.
    if !candidates.is_empty() {
        let evidence = Evidence::of(grid, &axes, [along(views(&wide), axes.ml), along(views(&wide), axes.ap)], &inside)?;
        events.extend(candidates.iter().map(|(k, at)| event(grid, &evidence, *at, swing.size[*k], thr_hi)));
    }
    events.sort_by(|one, other| one.t_s.total_cmp(&other.t_s));
    Some(Detection { events, unmatched_taps_s: Vec::new(), thr_lo, thr_hi, p2p_median, p2p_mad })
}

/// Grid points from one second after the start to the end of the trial, without those inside a gap.
fn inside(grid: &Grid, marks: &Marks) -> Vec<usize> {
    let points = grid.points(marks.t_on_s + IGNORE_START_S, marks.t_off_s);
    points.into_iter().flatten().filter(|&k| !grid.bad[k]).collect()
}

/// Points whose swing reaches the threshold, largest swing first, each with the grid point of its event. Events are at least a
/// second apart.
fn candidates(swing: &Swing, inside: &[usize], thr_lo: f64) -> Vec<(usize, usize)> {
    let mut order: Vec<usize> = inside.iter().copied().filter(|&k| swing.size[k] >= thr_lo).collect();
    order.sort_by(|&one, &other| swing.size[other].total_cmp(&swing.size[one]));
    let mut accepted: Vec<(usize, usize)> = Vec::new();
    for k in order {
        let at = swing.peak(k);
        if accepted.iter().all(|(_, other)| at.abs_diff(*other) >= REFRACTORY) {
            accepted.push((k, at));
        }
    }
    accepted
}

fn event(grid: &Grid, evidence: &Evidence, at: usize, p2p: f64, thr_hi: f64) -> Event {
    let (pre, shift) = (evidence.pre(at), evidence.shift(at));
    let support = evidence::supports(pre, shift);
    let class = if p2p >= thr_hi && support { Class::Definite } else { Class::Possible };
    let answer = TouchAnswer::NotAsked;
    Event { t_s: grid.time(at), p2p, pre, shift, support, tap_s: None, class, answer }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn grid(up: impl Fn(usize) -> f64, forward: impl Fn(usize) -> f64) -> Grid {
        let count = 2001;
        Grid {
            t_first: 0.0,
            axes: [vec![0.0; count], (0..count).map(|k| 9.8 + up(k)).collect(), (0..count).map(forward).collect()],
            bad: vec![false; count],
        }
    }

    fn knock_at(place: usize, size: f64) -> impl Fn(usize) -> f64 {
        move |k| {
            let after = k as f64 - place as f64;
            if after < 0.0 { 0.0 } else { size * libm::exp(-after / 8.0) * libm::sin(after * 0.45) }
        }
    }

    fn found(grid: &Grid) -> Detection {
        detect(grid, &Marks::between(0.0, 20.0)).expect("gravity and points")
    }

    #[test]
    fn quiet_stance_has_no_events() {
        let got = found(&grid(|_| 0.0, |k| 0.1 * libm::sin(k as f64 / 30.0)));
        assert_eq!((got.events.len(), got.thr_lo, got.thr_hi), (0, SWING_LOW, SWING_HIGH));
    }

    #[test]
    fn a_knock_with_a_new_lean_is_definite_and_without_it_possible() {
        let lean = |k: usize| if k < 1000 { 0.0 } else { 0.8 };
        let got = found(&grid(knock_at(1000, 2.0), lean));
        assert_eq!(got.events.len(), 1);
        let event = got.events[0];
        assert_eq!(event.class, Class::Definite);
        assert!((event.t_s - 10.0).abs() < 0.1 && (event.shift - 0.8).abs() < 0.1);
        let bare = found(&grid(knock_at(1000, 2.0), |_| 0.0)).events[0];
        assert_eq!((bare.class, bare.support), (Class::Possible, false));
        assert!(bare.p2p > SWING_HIGH);
    }

    #[test]
    fn no_event_is_detected_in_the_first_second_or_in_a_gap() {
        assert!(found(&grid(knock_at(40, 2.0), |_| 0.0)).events.is_empty());
        let mut gap = grid(knock_at(1000, 2.0), |_| 0.0);
        gap.bad[960..1080].fill(true);
        assert!(found(&gap).events.is_empty());
    }

    #[test]
    fn events_are_a_second_apart() {
        let two = |apart: usize| {
            let (one, other) = (knock_at(800, 2.0), knock_at(800 + apart, 1.9));
            found(&grid(move |k| one(k) + other(k), |_| 0.0)).events.len()
        };
        assert_eq!((two(60), two(140)), (1, 2));
    }

    #[test]
    fn without_a_point_inside_the_trial_there_is_no_detection() {
        assert_eq!(detect(&grid(|_| 0.0, |_| 0.0), &Marks::between(50.0, 60.0)), None);
    }
}
