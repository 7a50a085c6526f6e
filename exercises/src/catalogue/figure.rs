//! How an exercise looks, as data: positions of the body from joint angles, what stands around it, where it touches.
//! [`crate::figure`] draws it.

use super::conditions::Eyes;
use super::pose::Pose;
use strum::VariantArray;

/// From where the figure is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum View {
    /// From the figure's right side; it faces to the right of the picture. Near is its right.
    Side,
    /// From the front. Near is its right, which is on the left of the picture.
    Front,
    /// A close look at the near forearm and hand from the thumb's side; the fingers point to the right.
    Hand,
}

/// What stands around the figure or lies under it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Furniture {
    /// A chair with a back, its seat under the pelvis of the first position.
    Chair,
    /// A worktop in front, at the height of the hip.
    Worktop,
    /// A wall behind the back.
    Wall,
    /// A mat to lie on.
    Mat,
    /// A pillow under the head of somebody lying.
    Pillow,
    /// A folded towel: under the foot, or under the head of somebody lying.
    FoldedTowel,
    /// A flat seat cushion under the standing foot.
    Cushion,
    /// Foam under the standing foot.
    Foam,
    /// A table under the forearm (close view of the hand).
    Table,
    /// A light bag that hangs from the hand (close view of the hand).
    Bag,
}

/// Where the body touches something that does not move.
/// The first of a figure's contacts holds the whole figure in place; limbs named after it are bent so that they stay.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Contact {
    /// The seat bones on a chair.
    Seat,
    /// The upper back on a mat.
    UpperBack,
    /// The lower side of the body on a mat, lying on the far side.
    FarSide,
    /// The whole sole of the near foot on the floor.
    NearSole,
    /// The whole sole of the far foot on the floor.
    FarSole,
    /// The ball of the near foot on the floor; the heel may rise.
    NearToes,
    /// The ball of the far foot on the floor; the heel may rise.
    FarToes,
    /// The heel of the near foot on the floor; the toes may rise.
    NearHeel,
    /// The heel of the far foot on the floor; the toes may rise.
    FarHeel,
    /// The near hand where it is in the first position.
    NearHand,
    /// The far hand where it is in the first position.
    FarHand,
}

/// A point of the body at which an arrow is placed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Landmark {
    /// The chin.
    Chin,
    /// The top of the head.
    Crown,
    /// The near shoulder.
    Shoulder,
    /// The near elbow.
    Elbow,
    /// The near hand, or the knuckles in the close view.
    Hand,
    /// The middle of the pelvis.
    Pelvis,
    /// The near knee.
    Knee,
    /// The near heel.
    Heel,
    /// The near toes.
    Toes,
}

/// An arrow that shows where to move or to pull. It stands where its landmark is in the first position.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Arrow {
    /// The point of the body beside which it begins.
    pub at: Landmark,
    /// How far right of that point it begins, in centimetres of a body 170 cm tall.
    pub right_cm: i16,
    /// How far above that point it begins, in centimetres.
    pub up_cm: i16,
    /// Where it points at its start: degrees, 0 to the right of the picture, 90 up.
    pub toward_deg: i16,
    /// Its length along its way, in centimetres.
    pub length_cm: i16,
    /// By how many degrees it turns along its way; positive to the left.
    pub bend_deg: i16,
}

/// How an exercise looks.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Figure {
    /// From where it is seen.
    pub view: View,
    /// What stands around it.
    pub furniture: Vec<Furniture>,
    /// Whether the dotted plumb line is drawn, where alignment is the point.
    pub plumb: bool,
    /// Where it touches what does not move; the first holds it in place.
    pub contacts: Vec<Contact>,
    /// The positions from start to end.
    pub poses: Vec<Pose>,
    /// Where to move or to pull.
    pub arrows: Vec<Arrow>,
    /// Whether the eyes are open; `None` is drawn open.
    pub eyes: Option<Eyes>,
}
