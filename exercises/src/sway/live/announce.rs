//! A touch-down may be announced while the trial runs, provisionally, no sooner than 1.2 s after the candidate: what
//! supports it lies in the second that follows.

use crate::sway::{
    clean::clean,
    detection::{Class, detect},
    grid::resample,
    parameters::{ANNOUNCE_AFTER_S, MAX_RECORD_S, MAX_SAMPLES},
    quality::Quality,
    sample::{Marks, Sample},
    source::Source,
};

/// A touch-down that may be announced. It ends nothing for good: the final classes come from the whole record.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Announcement {
    /// When the foot seems to have touched, s on the samples' clock.
    pub t_s: f64,
    /// The newest sample it rests on, s.
    pub seen_until_s: f64,
}

/// The first definite touch-down of the record so far that is old enough; `None` where there is none, the set-up does
/// not propose, or the rate is too low. Works through the whole record each time: a few calls a second are enough.
pub fn provisional_touch_down(so_far: &[Sample], t_on_s: f64, source: &Source) -> Option<Announcement> {
    if !source.set_up.sensor_proposes() || so_far.len() > MAX_SAMPLES {
        return None;
    }
    let clean = clean(so_far);
    let seen_until_s = clean.samples.last()?.t_s;
    let marks = Marks::between(t_on_s, seen_until_s);
    if clean.span_s() > MAX_RECORD_S || !marks.sound() {
        return None;
    }
    let grid = resample(&clean)?;
    if !Quality::of(&clean, &grid).fast_enough_to_detect() {
        return None;
    }
    let old_enough = |t: f64| t + ANNOUNCE_AFTER_S <= seen_until_s;
    let events = detect(&grid, &marks)?.events;
    let first = events.iter().find(|event| event.class == Class::Definite && old_enough(event.t_s))?;
    Some(Announcement { t_s: first.t_s, seen_until_s })
}
