//! What is measured at a visit, and in what numbers.

use crate::catalogue::{Eyes, Surface};
use crate::choice::array;
use crate::plan::BodySide;
use crate::statistics::median;
use std::ops::RangeInclusive;
use strum::VariantArray;

/// The longest time on one leg that is measured, in tenths of a second.
pub const STANCE_CAP_TENTHS: i32 = 600;
/// The most trials of one measure.
pub const MAX_TRIALS: usize = 3;

/// A measure, with up to [`MAX_TRIALS`] trials.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Measure {
    /// What was measured.
    pub what: Measured,
    /// Before treatment, after it, or once.
    pub moment: Moment,
    /// The side of the body, where there is one.
    pub side: Option<BodySide>,
    /// The results in tenths of the unit, in the order of the trials; at least one.
    pub tenths: Vec<i32>,
}

/// What is measured.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Measured {
    /// Pain in a movement, 0 to 10.
    Pain {
        /// The movement, in words.
        movement: String,
    },
    /// How far a movement goes, in degrees.
    Motion {
        /// The movement, in words.
        movement: String,
    },
    /// Strength of the grip, in kilograms.
    Grip,
    /// Risings from a chair in 30 s.
    ChairRise,
    /// Time on one leg, in seconds, up to [`STANCE_CAP_TENTHS`].
    Stance {
        /// On what.
        surface: Surface,
        /// Open or closed.
        eyes: Eyes,
    },
    /// Anything else.
    Other {
        /// What it is called.
        name: String,
        /// Its unit.
        unit: String,
    },
}

/// When in the visit something was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Moment {
    /// Before treatment.
    Before,
    /// After treatment.
    After,
    /// Once, without regard to treatment.
    Once,
}

impl Moment {
    /// All of them, in the order of the enum.
    pub const ALL: [Moment; Moment::VARIANTS.len()] = array(Moment::VARIANTS);
}

impl Measured {
    /// The results that it can have, in tenths of its unit.
    pub fn range(&self) -> RangeInclusive<i32> {
        match self {
            Measured::Pain { .. } => 0..=100,
            Measured::Motion { .. } => -1_800..=3_600,
            Measured::Grip => 0..=1_500,
            Measured::ChairRise => 0..=600,
            Measured::Stance { .. } => 0..=STANCE_CAP_TENTHS,
            Measured::Other { .. } => -100_000..=100_000,
        }
    }

    /// Whether a result is a whole number.
    pub fn is_whole(&self) -> bool {
        matches!(self, Measured::Pain { .. } | Measured::ChairRise)
    }

    /// Whether it always belongs to one side.
    pub fn needs_side(&self) -> bool {
        matches!(self, Measured::Stance { .. } | Measured::Grip)
    }

    /// Whether the largest of several trials is the result.
    pub fn is_best_of(&self) -> bool {
        matches!(self, Measured::Grip | Measured::ChairRise | Measured::Stance { .. })
    }
}

impl Measure {
    /// The result: the best of the trials where that is usual, otherwise their median. In tenths of the unit.
    pub fn result(&self) -> i32 {
        if self.what.is_best_of() { self.best() } else { self.median() }
    }

    /// The largest result.
    pub fn best(&self) -> i32 {
        self.tenths.iter().copied().max().unwrap_or_default()
    }

    /// The middle result, of two the mean rounded to a tenth of the unit.
    pub fn median(&self) -> i32 {
        let values: Vec<f64> = self.tenths.iter().map(|tenths| f64::from(*tenths)).collect();
        median(&values).map_or(0, |median| libm::round(median) as i32)
    }

    /// Whether the result is as long as it is measured at all: it says "at least".
    pub fn is_capped(&self) -> bool {
        matches!(self.what, Measured::Stance { .. }) && self.result() >= STANCE_CAP_TENTHS
    }

    /// Whether it was the same that was measured, on the same side.
    pub fn is_like(&self, other: &Measure) -> bool {
        (&self.what, self.side) == (&other.what, other.side)
    }
}
