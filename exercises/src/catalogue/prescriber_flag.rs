//! What a prescriber should think of before prescribing an exercise.

use crate::choice::array;
use strum::VariantArray;

/// A condition of a patient that a prescriber should think of. It forbids nothing: whether the exercise suits is a decision of
/// the clinician, and of local rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum PrescriberFlag {
    /// High blood pressure that is not under control, or a heart condition: of long efforts without movement.
    BloodPressure,
    /// Pregnancy: of lying flat, of falls, of pressure in the abdomen.
    Pregnancy,
    /// Medicine that thins the blood: of falls and bruises.
    BloodThinners,
    /// Osteoporosis: of bending and turning the spine under load, and of falls.
    Osteoporosis,
    /// A joint replacement: of movements that are not allowed yet, or never.
    JointReplacement,
    /// An operation that is not healed yet, of the part that the exercise loads.
    UnhealedOperation,
    /// A hernia, or an operation of the abdomen.
    Abdomen,
    /// An operation of the hand or the wrist.
    HandOperation,
    /// A shoulder that was dislocated.
    DislocatedShoulder,
    /// Getting up from the floor is not possible alone.
    CannotGetUp,
}

impl PrescriberFlag {
    /// All flags, in the order of the enum.
    pub const ALL: [PrescriberFlag; PrescriberFlag::VARIANTS.len()] = array(PrescriberFlag::VARIANTS);
}
