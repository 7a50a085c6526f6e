//! What an exercise is done for, in the words of the trade.

use crate::choice::array;
use strum::VariantArray;

/// A purpose of an exercise. What it is good for in particular is in its texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Purpose {
    /// A joint, tendon or nerve moves further or more freely.
    Mobility,
    /// A muscle or tendon gives way less.
    Strength,
    /// A muscle works longer with little load.
    Endurance,
    /// A movement or posture is steered better.
    Control,
    /// Staying upright.
    Balance,
    /// A muscle is lengthened.
    Stretching,
    /// Something hurts less for a while.
    EasingPain,
    /// Rest and breathing.
    Calm,
    /// Being active altogether, such as walking.
    Activity,
    /// Something of daily life, such as getting up from a chair.
    Function,
}

impl Purpose {
    /// All purposes, in the order of the enum.
    pub const ALL: [Purpose; Purpose::VARIANTS.len()] = array(Purpose::VARIANTS);
}
