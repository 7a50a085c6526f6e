//! The fixed numbers of "sway/1". Changing any of them makes a new version: results are comparable only within one version.
//!
//! Settle, guard, thresholds and limits of quality are design choices, not taken from literature, unless a source is named.

/// The name of this processing in every stored result.
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
/// Cut-off of the filter for detecting that the phone was turned, Hz.
pub const FC_TILT: f64 = 0.5;

/// Time left out after the start, s: force varies less after the first seconds of one-leg stance (Jonsson 2004, Clin Biomech
/// 19:688-694, there 5 s); patients often hold less than 15 s, so 2 s is the compromise.
pub const SETTLE_S: f64 = 2.0;
/// Time left out before the end, s.
pub const GUARD_S: f64 = 0.5;
/// Signal added on both sides of the window while filtering, grid points.
pub(crate) const PAD: usize = 50;
/// Left out on each side of a gap, grid points.
pub(crate) const GAP_MARGIN: usize = 50;
/// Shortest window for which figures are computed, s.
pub const MIN_WINDOW_S: f64 = 8.0;
/// Shortest window for which spectra are computed, s.
pub const MIN_SPECTRAL_S: f64 = 15.0;

/// An input gap longer than this splits the window, s.
pub const GAP_SPLIT_S: f64 = 0.2;
/// An input gap longer than this is flagged, s.
pub const GAP_WARN_S: f64 = 0.1;
/// If a larger share of the record than this is missing, it is not measured (0 to 1).
pub const MAX_MISSING: f64 = 0.05;
/// If identical samples last longer than this, the record is not measured, s.
pub const STALL_S: f64 = 0.5;
/// Below this sample rate touch-downs are not detected, 1/s.
pub const FS_DETECT: f64 = 45.0;
/// Below this sample rate nothing is measured, 1/s.
pub const FS_MIN: f64 = 30.0;
/// Largest allowed difference between the mean's length and standard gravity, m/s2.
pub const G_TOLERANCE: f64 = 0.5;
/// A turn of the phone by more than this is flagged, degrees.
pub const TILT_WARN_DEG: f64 = 8.0;
/// If the phone turned by more than this, the record is not measured, degrees.
pub const TILT_FAIL_DEG: f64 = 15.0;
/// Smallest horizontal part of the screen's axis that tells front from side (30 degrees from lying flat).
pub const AP_MIN_SIN: f64 = 0.5;
/// A sensor step of this size or more counts as coarse, m/s2.
pub const COARSE_LSB: f64 = 0.05;
/// Sway smaller than this cannot be measured with coarse steps, m/s2.
pub const COARSE_RMS_MIN: f64 = 0.06;
/// Differences up to this size are rounding and not a step of the sensor, m/s2.
pub(crate) const LSB_FLOOR: f64 = 1e-4;
/// Values beyond this may be clipped, if the sensor's range is not known, m/s2.
pub const CLIP_ABS: f64 = 38.0;
/// Share of a known sensor range above which values may be clipped (0 to 1).
pub const CLIP_SHARE: f64 = 0.98;

/// Length of a segment of the spectrum, grid points.
pub(crate) const WELCH: usize = 1000;
/// Lowest frequency of the band, Hz.
pub const BAND_LOW: f64 = 0.15;
/// Highest frequency of the band, Hz.
pub const BAND_HIGH: f64 = 5.0;

/// Half of the 0.30 s window for the swing of the jerk, grid points.
pub(crate) const SWING_HALF: usize = 15;
/// Least threshold of a candidate, m/s3.
pub const SWING_LOW: f64 = 10.0;
/// Least threshold of a definite touch-down, m/s3.
pub const SWING_HIGH: f64 = 20.0;
/// Threshold of a candidate above the median, in multiples of the spread.
pub const SWING_LOW_SPREADS: f64 = 6.0;
/// Threshold of a definite touch-down above the median, in multiples of the spread.
pub const SWING_HIGH_SPREADS: f64 = 10.0;
/// Two events are at least this far apart, grid points.
pub(crate) const REFRACTORY: usize = 100;
/// Touch-downs are not detected in this time after the start, s.
pub const IGNORE_START_S: f64 = 1.0;
/// A lasting change of lean of more than this supports an event, m/s2 (about 1.5 degrees).
pub const SUPPORT_SHIFT: f64 = 0.25;
/// A horizontal swing before an event of more than this supports it, m/s2.
pub const SUPPORT_PRE: f64 = 0.6;

/// A tap matches a candidate up to this long before the tap, s.
pub const TAP_BEFORE_S: f64 = 1.5;
/// A tap matches a candidate up to this long after the tap, s.
pub const TAP_AFTER_S: f64 = 0.2;
/// A possible event this close to a tap is taken for the knock of the tap itself, s.
pub const TAP_KNOCK_S: f64 = 0.15;
/// Assumed delay of a tap that matches no candidate, s.
pub const TAP_DELAY_S: f64 = 0.5;

/// Delay after a candidate before it may be announced while the trial runs, s: the evidence for it comes after it.
pub const ANNOUNCE_AFTER_S: f64 = 1.2;

/// Longest record that is processed, s.
pub const MAX_RECORD_S: f64 = 600.0;
/// Largest number of samples that are processed: [`MAX_RECORD_S`] at 500 per second.
pub const MAX_SAMPLES: usize = 300_000;
