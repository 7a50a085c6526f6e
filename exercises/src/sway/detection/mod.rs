//! Touch-downs of the lifted foot, over the whole record.
//!
//! A candidate is a large swing (largest less smallest) of the vertical jerk within 0.30 s: the best single feature for
//! near-falls at the pelvis (Weiss 2010, BMC Res Notes 3:62). Its thresholds are the larger of a fixed one and the
//! median plus a multiple of the spread of the same trial. A candidate is *definite* where the swing is very large and
//! the horizontal signal supports it, else *possible*. No study validates this for single-leg stance from a phone on
//! the trunk, so no event ends a hold silently.

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

/// How sure an event is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Class {
    /// A very large swing with support, or one that a tap belongs to.
    Definite,
    /// A large swing; does not end the hold by itself.
    Possible,
    /// The knock of the tap itself.
    TapKnock,
}

impl Class {
    /// The name that is stored and printed.
    pub fn code(self) -> &'static str {
        match self {
            Class::Definite => "definite",
            Class::Possible => "possible",
            Class::TapKnock => "tap_knock",
        }
    }
}

/// One event.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Event {
    /// When, s on the samples' clock.
    pub t_s: f64,
    /// Swing of the vertical jerk, m/s3.
    pub p2p: f64,
    /// Largest horizontal distance from the trial's median in the second up to the event, m/s2.
    pub pre: f64,
    /// Change of the mean lean from before to after, m/s2; 0 where too little follows.
    pub shift: f64,
    /// Whether `pre` or `shift` supports a touch-down.
    pub support: bool,
    /// The tap that belongs to it, s.
    pub tap_s: Option<f64>,
    /// How sure.
    pub class: Class,
    /// What the patient said about it.
    pub answer: TouchAnswer,
}

/// All events of a record and the thresholds that found them.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Detection {
    /// In order of time.
    pub events: Vec<Event>,
    /// Taps that no candidate belongs to, s.
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

/// Finds events; `None` where the record has no direction of gravity or no point of the trial inside.
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
    // Most trials have no candidate, and evidence costs a filter of its own.
    if !candidates.is_empty() {
        let evidence = Evidence::of(grid, &axes, [along(views(&wide), axes.ml), along(views(&wide), axes.ap)], &inside)?;
        events.extend(candidates.iter().map(|(k, at)| event(grid, &evidence, *at, swing.size[*k], thr_hi)));
    }
    events.sort_by(|one, other| one.t_s.total_cmp(&other.t_s));
    Some(Detection { events, unmatched_taps_s: Vec::new(), thr_lo, thr_hi, p2p_median, p2p_mad })
}

/// Points of the trial, one second after its start or later, that are not inside a gap.
fn inside(grid: &Grid, marks: &Marks) -> Vec<usize> {
    let points = grid.points(marks.t_on_s + IGNORE_START_S, marks.t_off_s);
    points.into_iter().flatten().filter(|&k| !grid.bad[k]).collect()
}

/// Points above the threshold, largest swing first, each with the point of its event; one event a second.
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
    fn nothing_is_looked_for_in_the_first_second_or_in_a_gap() {
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
    fn no_point_inside_no_detection() {
        assert_eq!(detect(&grid(|_| 0.0, |_| 0.0), &Marks::between(50.0, 60.0)), None);
    }
}
