//! The posture in which an exercise is done.

use crate::choice::array;
use strum::VariantArray;

/// The posture in which a level is done. A level that passes through several has the one from which a fall is worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Posture {
    /// On one foot or both, also with a hand or the back against something.
    Standing,
    /// On a chair or another seat.
    Sitting,
    /// On the back, the side or the front.
    Lying,
    /// On one knee or both, also on hands and knees.
    Kneeling,
}

impl Posture {
    /// All postures, in the order of the enum.
    pub const ALL: [Posture; Posture::VARIANTS.len()] = array(Posture::VARIANTS);
}
