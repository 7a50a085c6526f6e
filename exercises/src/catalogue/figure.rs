//! How an exercise looks, as data: positions of the body given by joint angles, the objects around it, and where it touches
//! them. [`crate::figure`] draws it.

use super::conditions::Eyes;
use super::pose::Pose;
use strum::VariantArray;

/// The direction from which the figure is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum View {
    /// From the figure's right side; the figure faces to the right of the picture. Its right side is the near side.
    Side,
    /// From the front. Its right side is the near side; it is on the left of the picture.
    Front,
    /// A close view of the near forearm and hand from the thumb's side; the fingers point to the right.
    Hand,
    /// From the front and a little from above, for somebody lying on the side, so that bent knees can be seen.
    Oblique,
    /// A close view of the near palm; the fingers point up.
    Palm,
    /// A close view of the near fist from in front of the knuckles; the forearm points to whoever looks.
    Fist,
    /// The side view, close to the head.
    Head,
    /// A close view of both feet from above, as somebody sitting sees them; the toes point up.
    Feet,
    /// A close view of the near foot from its inner side; the toes point to the right.
    Foot,
    /// The front view of somebody who lies on a mat, from above; the head is on the left. Positions are counted as if standing.
    Above,
}

/// An object around the figure or under it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Furniture {
    /// A chair with a back. Its seat is under the pelvis of the first position.
    Chair,
    /// A worktop in front of the body, at hip height.
    Worktop,
    /// A wall behind the back.
    Wall,
    /// A mat to lie on.
    Mat,
    /// A pillow under the head of somebody lying.
    Pillow,
    /// A folded towel under the foot, or under the head of somebody lying.
    FoldedTowel,
    /// A flat seat cushion under the standing foot.
    Cushion,
    /// Foam under the standing foot.
    Foam,
    /// A table: under the forearm in the close views of the hand, otherwise in front of the body, under the hands.
    Table,
    /// A light bag that hangs from the near hand.
    Bag,
    /// A wall in front of the body, where the hands reach.
    WallAhead,
    /// A wall beside the near side (front view).
    WallBeside,
    /// A doorway around the body, as wide as the arms (front view).
    Doorway,
    /// A door in front of the body, to which a band is fastened at the height of the hand.
    Door,
    /// A step of stairs under the near foot. It lies ahead of a foot on the floor behind it, and behind one on the floor ahead.
    Step,
    /// A handrail along the far side, at the height of the far hand.
    Handrail,
    /// A small weight, such as a bottle, in the near hand.
    Weight,
    /// A hammer in the near hand.
    Hammer,
    /// A rolled towel: in the fist in the close views of the hand, under the near knee of somebody lying on the back, otherwise
    /// between the near elbow and the body.
    TowelRoll,
    /// A rubber band round the fingers (close view of the palm).
    RubberBand,
    /// A mark on the wall at the height of the eyes, with the line of sight.
    Mark,
}

/// Where the body touches something that does not move. The first contact of a figure fixes the whole figure in place; limbs
/// named by the others are bent so that they stay where they are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Contact {
    /// The seat bones on a chair.
    Seat,
    /// The upper back on a mat.
    UpperBack,
    /// The lower side of the body on a mat, for somebody lying on the far side.
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
    /// The near hand, which stays where it is in the first position.
    NearHand,
    /// The far hand, which stays where it is in the first position.
    FarHand,
    /// The near hand, which slides: up and down a wall in front, or on a surface under it.
    NearHandSlides,
    /// The far hand, which slides as the near one.
    FarHandSlides,
    /// The near heel, which slides on the floor or the mat.
    NearHeelSlides,
    /// The back of the pelvis on a mat.
    LowBack,
    /// The front of the pelvis on a mat.
    Front,
    /// The near knee and shin on the floor.
    NearKnee,
    /// The far knee and shin on the floor.
    FarKnee,
    /// The far elbow on a mat.
    FarElbow,
}

/// What reaches from one point of a figure to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Tie {
    /// An elastic band.
    Band,
    /// A strap, or a towel, that does not give.
    Strap,
    /// A stick. It is longer than the way between its ends.
    Stick,
}

/// Where a band, a strap or a stick ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum End {
    /// In the near hand.
    NearHand,
    /// In the far hand.
    FarHand,
    /// Round the near thigh, above the knee.
    NearThigh,
    /// Round the far thigh, above the knee.
    FarThigh,
    /// Round the near ankle.
    NearAnkle,
    /// Round the far ankle.
    FarAnkle,
    /// Under the ball of the near foot.
    NearFoot,
    /// Under the ball of the far foot.
    FarFoot,
    /// At the back of the head.
    Head,
    /// At the back of the pelvis.
    Pelvis,
    /// At the door in front of the body.
    Door,
}

/// A band, a strap or a stick between two points. It follows the movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Link {
    /// What it is.
    pub tie: Tie,
    /// One end.
    pub from: End,
    /// The other end.
    pub to: End,
}

/// A point of the body from which an arrow is placed.
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

/// An arrow that shows where to move or to pull. It is placed where its landmark is in the first position.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Arrow {
    /// The point of the body near which the arrow begins.
    pub at: Landmark,
    /// How far to the right of that point it begins, in centimetres on a body 170 cm tall; negative to the left.
    pub right_cm: i16,
    /// How far above that point it begins, in centimetres; negative below.
    pub up_cm: i16,
    /// Its direction at its start, in degrees: 0 to the right of the picture, 90 up.
    pub toward_deg: i16,
    /// Its length along its curve, in centimetres.
    pub length_cm: i16,
    /// The angle by which it turns along its length, in degrees; positive to the left.
    pub bend_deg: i16,
}

/// How an exercise looks.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Figure {
    /// The direction from which the figure is seen.
    pub view: View,
    /// The objects around it.
    pub furniture: Vec<Furniture>,
    /// Bands, straps and sticks that it holds.
    pub links: Vec<Link>,
    /// Whether a dotted plumb line is drawn, for exercises in which alignment matters.
    pub plumb: bool,
    /// Where the body touches something that does not move; the first contact fixes the figure in place.
    pub contacts: Vec<Contact>,
    /// The positions from start to end.
    pub poses: Vec<Pose>,
    /// Arrows that show where to move or to pull.
    pub arrows: Vec<Arrow>,
    /// Whether the eyes are open; if `None`, they are drawn open.
    pub eyes: Option<Eyes>,
}

impl Figure {
    /// Whether the movement from the first position to the last is above all an upward one, as its first arrow shows.
    pub fn moves_up(&self) -> bool {
        self.arrows.first().is_some_and(|arrow| (45..=135).contains(&arrow.toward_deg))
    }
}
