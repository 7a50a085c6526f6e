//! What a level needs from a household.

use crate::choice::array;
use strum::VariantArray;

/// Something that a level needs. What else there is to say about it, such as its height or its weight, is in the texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Equipment {
    /// A chair that does not slide.
    Chair,
    /// A table.
    Table,
    /// A worktop or another solid support at hip height.
    Worktop,
    /// A free stretch of wall.
    Wall,
    /// A mat, or a carpet that is soft enough to lie on.
    Mat,
    /// A pillow.
    Pillow,
    /// A hand or bath towel.
    Towel,
    /// A flat, firm seat cushion.
    Cushion,
    /// A thick soft cushion or a foam mat.
    Foam,
    /// Shoes that are sturdy and do not slip.
    SturdyShoes,
    /// A bag with something light in it.
    Bag,
    /// A light weight that can be fastened or held.
    LightWeight,
    /// An elastic exercise band.
    Band,
    /// A stick or a broom handle.
    Stick,
    /// A step of stairs, or a low platform that cannot tip.
    Step,
    /// A strap or a long towel.
    Strap,
    /// A door that stays shut, to fasten a band to.
    Door,
    /// An open doorway.
    Doorway,
    /// A handrail or another firm hold beside a step.
    Handrail,
    /// A hammer, or another tool that is heavy at one end.
    Hammer,
    /// A wide rubber band for the fingers.
    RubberBand,
}

impl Equipment {
    /// All equipment, in the order of the enum.
    pub const ALL: [Equipment; Equipment::VARIANTS.len()] = array(Equipment::VARIANTS);
}
