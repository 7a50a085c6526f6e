//! Two results of one measure, and whether their difference is more than its error.

use super::{Measure, Measured};
use crate::catalogue::{Eyes, Surface};

/// The error of a measure, where a source gives one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum MeasureError {
    /// Pain, 0 to 10: 2 points (low back pain, Childs 2005, Spine 30:1331-1334, 10.1097/01.brs.0000164099.92112.29; in routine care of the
    /// neck 4, Kovacs 2008, BMC Musculoskelet Disord 9:43).
    Pain,
    /// One time on one leg, eyes open, firm floor: 24.1 s (60 to 89 years, n = 25: Goldberg et al. 2011, Gait Posture 33:737-739, seen in a
    /// professional body's digest).
    Stance,
}

impl MeasureError {
    /// That of a measure; `None` where no source is known.
    pub fn of(what: &Measured) -> Option<MeasureError> {
        match what {
            Measured::Pain { .. } => Some(MeasureError::Pain),
            Measured::Stance { surface: Surface::Firm, eyes: Eyes::Open } => Some(MeasureError::Stance),
            _ => None,
        }
    }

    /// The smallest difference that is more than error, in tenths of the unit.
    pub fn tenths(self) -> i32 {
        match self {
            MeasureError::Pain => 20,
            MeasureError::Stance => 241,
        }
    }
}

/// A later result compared with an earlier one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Compared {
    /// The later result less the earlier one, in tenths of the unit.
    pub difference: i32,
    /// The error of the measure, where one is known.
    pub error: Option<MeasureError>,
    /// Whether the difference is less than the error; false where none is known.
    pub within_error: bool,
}

/// Compares two results of the same measure; `None` if either says only "at least", because then the difference is not known.
pub fn compare(earlier: &Measure, later: &Measure) -> Option<Compared> {
    if earlier.is_capped() || later.is_capped() {
        return None;
    }
    let difference = later.result() - earlier.result();
    let error = MeasureError::of(&later.what);
    let within_error = error.is_some_and(|error| difference.abs() < error.tenths());
    Some(Compared { difference, error, within_error })
}
