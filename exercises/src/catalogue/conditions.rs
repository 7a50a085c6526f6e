//! The conditions under which somebody stands: the surface, the eyes, the feet and the arms.

use strum::VariantArray;

/// What a balance exercise is stood on, from a household. From firm to soft.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Surface {
    /// The bare or thinly covered floor.
    Firm,
    /// A bath towel folded twice.
    FoldedTowel,
    /// A flat, firm seat cushion on a floor that does not slip.
    Cushion,
    /// A thick soft cushion or a foam mat.
    Foam,
}

impl Surface {
    /// Whether the surface gives way under the foot.
    pub fn is_soft(self) -> bool {
        self != Surface::Firm
    }
}

/// Whether the eyes are open or closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Eyes {
    /// Open, looking at a spot at eye level.
    Open,
    /// Closed.
    Closed,
}

/// What the person wears on the feet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Feet {
    /// Nothing.
    Bare,
    /// Socks or shoes.
    Covered,
}

/// Where the arms were.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Arms {
    /// Crossed on the chest.
    Crossed,
    /// Hands on the hips.
    OnHips,
    /// Hanging, or free to move.
    Free,
    /// A hand holds the phone, or rests over the support.
    HandInUse,
}
