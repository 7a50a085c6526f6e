//! What may be wrong with a trial: flags that accompany figures, and reasons for having no figures.

use super::source::SourceFault;
use strum::VariantArray;

/// A caution about figures that are reported nonetheless.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Flag {
    /// 30 to 45 samples per second: figures, but no detection of touch-downs.
    NoDetection,
    /// At least one interval is longer than 0.10 s.
    Gap,
    /// At least one value is near the end of the sensor's range.
    PossibleClipping,
    /// The phone turned by more than 8 degrees.
    PhoneMoved,
    /// The screen lies within 30 degrees of horizontal: front and side cannot be told apart.
    MlApNotIdentified,
    /// The sensor's step is 0.05 m/s2 or more: figures that depend on fine detail are left out.
    CoarseQuantisation,
    /// The sensor ended the hold, and nobody has confirmed it.
    Auto,
    /// A tap ended the hold, and the sensor detected nothing near it.
    TapOnly,
}

impl Flag {
    /// The name under which it is stored and printed.
    pub fn code(self) -> &'static str {
        match self {
            Flag::NoDetection => "no_detection",
            Flag::Gap => "gap",
            Flag::PossibleClipping => "possible_clipping",
            Flag::PhoneMoved => "phone_moved",
            Flag::MlApNotIdentified => "ml_ap_not_identified",
            Flag::CoarseQuantisation => "coarse_quantisation",
            Flag::Auto => "auto",
            Flag::TapOnly => "tap_only",
        }
    }
}

/// Why there are no figures. The hold is still reported if the marks are sound.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Reason {
    /// The start or the end is not finite, or they are not in order.
    MarksInvalid,
    /// The phone was not worn but lay on the support.
    PhoneNotWorn,
    /// The page was hidden while the trial ran.
    Hidden,
    /// The permission to use the sensor was refused.
    PermissionDenied,
    /// No finite sample was received.
    NoSensor,
    /// Longer, or with more samples, than [`MAX_RECORD_S`](super::parameters::MAX_RECORD_S) and
    /// [`MAX_SAMPLES`](super::parameters::MAX_SAMPLES) allow.
    RecordTooLong,
    /// Fewer than 30 samples per second.
    RateTooLow,
    /// More than 5 % of the record is missing.
    TooMuchMissing,
    /// The same values for more than 0.50 s.
    SensorStalled,
    /// The mean is not close to standard gravity: wrong unit, wrong sensor, or shaking.
    GravityImplausible,
    /// The phone turned by more than 15 degrees.
    PhoneMoved,
    /// Less than 8 s of usable samples are left to measure.
    WindowTooShort,
    /// The sway is too small for the sensor's coarse steps.
    SignalBelowResolution,
    /// A figure is not finite, which no phone's readings can cause.
    ValuesImplausible,
}

impl Reason {
    /// The name under which it is stored and printed.
    pub fn code(self) -> &'static str {
        match self {
            Reason::MarksInvalid => "marks_invalid",
            Reason::PhoneNotWorn => "phone_not_worn",
            Reason::Hidden => "hidden",
            Reason::PermissionDenied => "permission_denied",
            Reason::NoSensor => "no_sensor",
            Reason::RecordTooLong => "record_too_long",
            Reason::RateTooLow => "rate_too_low",
            Reason::TooMuchMissing => "too_much_missing",
            Reason::SensorStalled => "sensor_stalled",
            Reason::GravityImplausible => "gravity_implausible",
            Reason::PhoneMoved => "phone_moved",
            Reason::WindowTooShort => "window_too_short",
            Reason::SignalBelowResolution => "signal_below_resolution",
            Reason::ValuesImplausible => "values_implausible",
        }
    }
}

impl From<SourceFault> for Reason {
    fn from(fault: SourceFault) -> Reason {
        match fault {
            SourceFault::Hidden => Reason::Hidden,
            SourceFault::PermissionDenied => Reason::PermissionDenied,
            SourceFault::NoSensor => Reason::NoSensor,
        }
    }
}
