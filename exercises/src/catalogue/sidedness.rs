//! Whether an exercise is done for each side of the body.

use strum::VariantArray;

/// Whether an exercise is done for each side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Sidedness {
    /// Both sides work at once, or the exercise is for the middle of the body.
    None,
    /// First one side, then the other; a plan may prescribe only one of them.
    EachSide,
    /// The sides take turns within one set: a movement to the left, then one to the right. Both belong to it.
    Alternating,
}
