//! Where samples come from. This is the only place where the sign of an operating system's readings is changed.

use super::set_up::Placement;
use crate::run::SetUp;
use strum::VariantArray;

/// The kind of source. Figures of different kinds are never compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum SourceKind {
    /// The platform's own sensor service.
    Native,
    /// The web view's `devicemotion` event: at most 60 per second, often rounded to 0.1 m/s2 (W3C Device Orientation and
    /// Motion).
    Web,
    /// A file: tests and replays.
    File,
}

/// The operating system of the device that measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Os {
    /// Android.
    Android,
    /// iOS or iPadOS.
    Ios,
    /// Any other, or not known.
    Other,
}

impl Os {
    /// Whether this system reports all axes opposite to the W3C's and Android's sign, web view and sensor alike.
    pub fn opposite_sign(self) -> bool {
        matches!(self, Os::Ios)
    }

    /// A reading in the sign convention of [`Sample::a`](super::Sample::a). The sign depends on the operating system and is never
    /// guessed from the data, because a phone in a pocket may be upside down.
    pub fn to_specific_force(self, a: [f64; 3]) -> [f64; 3] {
        if self.opposite_sign() { a.map(|axis| -axis) } else { a }
    }
}

/// Which way the screen faces while the phone is worn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Screen {
    /// Away from the body.
    Away,
    /// Towards the body.
    TowardBody,
}

/// Why a source gave no samples or stopped giving them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum SourceFault {
    /// The page was hidden while the trial ran.
    Hidden,
    /// The permission to use the sensor was refused.
    PermissionDenied,
    /// The device has no sensor.
    NoSensor,
}

/// The properties of a source that a result has to keep.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Source {
    /// The kind of source.
    pub kind: SourceKind,
    /// The operating system.
    pub os: Os,
    /// Whether [`Os::to_specific_force`] turned the sign of these samples.
    pub sign_flipped: bool,
    /// The set-up: where the phone was and what ends a trial.
    pub set_up: SetUp,
    /// Which way the screen faced.
    pub screen: Screen,
    /// The sensor's range, m/s2, if it is known.
    pub range_ms2: Option<f64>,
    /// Why the source failed, if it did.
    pub fault: Option<SourceFault>,
}

impl Source {
    /// A file of samples that already have the right sign, phone at the breastbone, screen facing away.
    pub fn file() -> Source {
        Source {
            kind: SourceKind::File,
            os: Os::Other,
            sign_flipped: false,
            set_up: SetUp::AtBreastbone,
            screen: Screen::Away,
            range_ms2: None,
            fault: None,
        }
    }

    /// Where the phone was worn; `None` where it was not worn.
    pub fn placement(&self) -> Option<Placement> {
        self.set_up.placement()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_system_has_the_opposite_sign() {
        assert_eq!(Os::Ios.to_specific_force([0.5, -9.8, 0.0]), [-0.5, 9.8, 0.0]);
        assert_eq!(Os::Android.to_specific_force([0.5, 9.8, 0.0]), [0.5, 9.8, 0.0]);
        assert_eq!(Os::Other.to_specific_force([0.5, 9.8, 0.0]), [0.5, 9.8, 0.0]);
    }
}
