//! The fixed numbers of "sway/1". A change of any of them is a new version: results compare only within one.
//!
//! Settle, guard, thresholds and limits of quality are design choices, not literature; where a number has a source it
//! is named.

/// Names this processing in every stored result.
pub const VERSION: &str = "sway/1";

/// Rate of the resampled grid, 1/s.
pub const FS: f64 = 100.0;
/// Step of the resampled grid, s.
pub const DT: f64 = 0.01;
/// Standard gravity, m/s2.
pub const G0: f64 = 9.80665;

/// Cut-off of the filter for sway, Hz (Mancini 2012, J Neuroeng Rehabil 9:59).
pub const FC_SWAY: f64 = 3.5;
/// Cut-off of the filter for events and spectra, Hz.
pub const FC_EVENT: f64 = 10.0;
/// Cut-off of the filter for a change of lean at an event, Hz.
pub const FC_LEAN: f64 = 1.0;
/// Cut-off of the filter for a phone that is moved, Hz.
pub const FC_TILT: f64 = 0.5;

/// Left out after the start, s: force varies less after the first seconds of one-leg stance (Jonsson 2004, Clin
/// Biomech 19:688-694, there 5 s); patients often hold less than 15 s, so 2 s is the compromise.
pub const SETTLE_S: f64 = 2.0;
/// Left out before the end, s.
pub const GUARD_S: f64 = 0.5;
/// Signal added on both sides of the window while filtering, grid points.
pub(crate) const PAD: usize = 50;
/// Left out on each side of a gap, grid points.
pub(crate) const GAP_MARGIN: usize = 50;
/// Shortest window with figures, s.
pub const MIN_WINDOW_S: f64 = 8.0;
/// Shortest window with spectra, s.
pub const MIN_SPECTRAL_S: f64 = 15.0;

/// An input gap longer than this splits the window, s.
pub const GAP_SPLIT_S: f64 = 0.2;
/// An input gap longer than this is flagged, s.
pub const GAP_WARN_S: f64 = 0.1;
/// More missing than this is not measured, share of the record.
pub const MAX_MISSING: f64 = 0.05;
/// Identical samples for longer than this are not measured, s.
pub const STALL_S: f64 = 0.5;
/// Below this rate there is no detection, 1/s.
pub const FS_DETECT: f64 = 45.0;
/// Below this rate nothing is measured, 1/s.
pub const FS_MIN: f64 = 30.0;
/// How far the mean may be from standard gravity, m/s2.
pub const G_TOLERANCE: f64 = 0.5;
/// A turn of the phone that is flagged, degrees.
pub const TILT_WARN_DEG: f64 = 8.0;
/// A turn of the phone that is not measured, degrees.
pub const TILT_FAIL_DEG: f64 = 15.0;
/// Smallest horizontal part of the screen's axis that tells front from side (30 degrees from lying flat).
pub const AP_MIN_SIN: f64 = 0.5;
/// A step of the sensor that counts as coarse, m/s2.
pub const COARSE_LSB: f64 = 0.05;
/// Sway below this is lost in coarse steps, m/s2.
pub const COARSE_RMS_MIN: f64 = 0.06;
/// Differences up to this are rounding, not a step of the sensor, m/s2.
pub(crate) const LSB_FLOOR: f64 = 1e-4;
/// Values beyond this may be clipped where the sensor's range is not known, m/s2.
pub const CLIP_ABS: f64 = 38.0;
/// Share of a known sensor range from which on values may be clipped.
pub const CLIP_SHARE: f64 = 0.98;

/// Segment of the spectrum, grid points.
pub(crate) const WELCH: usize = 1000;
/// Lowest frequency of the sums, Hz.
pub const BAND_LOW: f64 = 0.15;
/// Highest frequency of the sums, Hz.
pub const BAND_HIGH: f64 = 5.0;

/// Half of the 0.30 s window for the swing of the jerk, grid points.
pub(crate) const SWING_HALF: usize = 15;
/// Least threshold of a candidate, m/s3.
pub const SWING_LOW: f64 = 10.0;
/// Least threshold of a definite touch-down, m/s3.
pub const SWING_HIGH: f64 = 20.0;
/// Spreads above the median for a candidate.
pub const SWING_LOW_SPREADS: f64 = 6.0;
/// Spreads above the median for a definite touch-down.
pub const SWING_HIGH_SPREADS: f64 = 10.0;
/// Two events are at least this far apart, grid points.
pub(crate) const REFRACTORY: usize = 100;
/// Nothing is looked for so soon after the start, s.
pub const IGNORE_START_S: f64 = 1.0;
/// A lasting change of lean that supports an event, m/s2 (about 1.5 degrees).
pub const SUPPORT_SHIFT: f64 = 0.25;
/// A horizontal swing before an event that supports it, m/s2.
pub const SUPPORT_PRE: f64 = 0.6;

/// A tap belongs to a candidate up to this long before it, s.
pub const TAP_BEFORE_S: f64 = 1.5;
/// A tap belongs to a candidate up to this long after it, s.
pub const TAP_AFTER_S: f64 = 0.2;
/// A possible event so near a tap is the tap's own knock, s.
pub const TAP_KNOCK_S: f64 = 0.15;
/// Assumed delay of a tap that no candidate belongs to, s.
pub const TAP_DELAY_S: f64 = 0.5;

/// How long after a candidate it may be announced while the trial runs, s: the evidence needs it.
pub const ANNOUNCE_AFTER_S: f64 = 1.2;

/// Longest record that is processed, s.
pub const MAX_RECORD_S: f64 = 600.0;
/// Most samples that are processed: [`MAX_RECORD_S`] at 500 per second.
pub const MAX_SAMPLES: usize = 300_000;
