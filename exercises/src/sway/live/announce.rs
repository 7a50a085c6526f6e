//! Announces a touch-down provisionally while the trial runs, no sooner than 1.2 s after the candidate, because the evidence for it
//! lies in the second that follows it.

use crate::sway::{
    clean::clean,
    detection::{Class, detect},
    grid::resample,
    parameters::{ANNOUNCE_AFTER_S, MAX_RECORD_S, MAX_SAMPLES},
    quality::Quality,
    sample::{Marks, Sample},
    source::Source,
};

/// A touch-down that may be announced. It is provisional: the final classes are computed from the whole record after the trial.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Announcement {
    /// When the foot seems to have touched, s on the samples' clock.
    pub t_s: f64,
    /// Time of the newest sample that was used, s on the samples' clock.
    pub seen_until_s: f64,
}

/// The first definite touch-down in the record so far that is old enough to announce; `None` if there is none, if the set-up does
/// not let the sensor propose, or if the sample rate is too low. Each call processes the whole record, so a few calls per second are
/// enough.
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
