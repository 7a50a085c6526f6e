//! Whether an exercise has sides.

use strum::VariantArray;

/// Whether an exercise is done for each side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Sidedness {
    /// Both sides at once, or the midline.
    None,
    /// One side, then the other; a plan may ask for one only.
    EachSide,
}
