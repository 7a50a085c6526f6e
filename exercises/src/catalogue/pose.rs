//! Positions of the body as joint angles in whole degrees, counted as clinicians do: 0 is standing upright with the arms
//! down.

use std::collections::BTreeMap;

macro_rules! joints {
    ($($(#[$doc:meta])* $name:ident $text:literal $min:literal ..= $max:literal,)*) => {
        /// A joint, or the direction of a part of the body, that can be set in a position.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        pub enum Joint { $($(#[$doc])* $name,)* }

        impl Joint {
            /// All joints.
            pub const ALL: &[Joint] = &[$(Joint::$name,)*];

            /// The joint's name in catalogue files.
            pub fn name(self) -> &'static str {
                match self { $(Joint::$name => $text,)* }
            }

            /// The smallest and the largest angle in degrees that a body can reach, with a little more so that drawings can
            /// be clear.
            pub fn range(self) -> (i16, i16) {
                match self { $(Joint::$name => ($min, $max),)* }
            }
        }
    };
}

joints! {
    /// Lean of the trunk against the vertical: 90 is face down, -90 is on the back.
    Trunk "trunk" -130..=110,
    /// Lean of the trunk toward the near side against the vertical: -90 is lying on the far side.
    TrunkSide "trunk-side" -90..=90,
    /// Rounding of the back: the chest against the pelvis, forward positive.
    Back "back" -50..=60,
    /// Chest bent sideways against the pelvis: to the near side positive.
    BackSide "back-side" -40..=40,
    /// Chest turned against the pelvis: toward the near side positive.
    BackTurn "back-turn" -60..=60,
    /// Lower neck against the chest, forward positive.
    Neck "neck" -50..=60,
    /// Head on the neck: nodding positive.
    Head "head" -40..=50,
    /// Neck and head to the near side.
    NeckSide "neck-side" -45..=45,
    /// Head turned: toward the near side positive.
    HeadTurn "head-turn" -80..=80,
    /// Mouth open (close view of the head).
    Jaw "jaw" 0..=35,
    /// Shoulder blades: back together positive, forward negative.
    Blades "blades" -30..=30,
    /// Shoulders: up to the ears positive.
    Shrug "shrug" -20..=40,
    /// Near shoulder: arm forward and up positive.
    ShoulderNear "shoulder-near" -60..=180,
    /// Far shoulder: arm forward and up positive.
    ShoulderFar "shoulder-far" -60..=180,
    /// Near arm away from the body.
    ShoulderOutNear "shoulder-out-near" -45..=180,
    /// Far arm away from the body.
    ShoulderOutFar "shoulder-out-far" -45..=180,
    /// Near upper arm turned inward positive (the forearm goes across the body).
    ShoulderTurnNear "shoulder-turn-near" -90..=110,
    /// Far upper arm turned inward positive.
    ShoulderTurnFar "shoulder-turn-far" -90..=110,
    /// Near elbow bent.
    ElbowNear "elbow-near" 0..=150,
    /// Far elbow bent.
    ElbowFar "elbow-far" 0..=150,
    /// Near wrist: back of the hand toward the forearm positive.
    WristNear "wrist-near" -85..=85,
    /// Far wrist: back of the hand toward the forearm positive.
    WristFar "wrist-far" -85..=85,
    /// Near forearm turned from the thumb upward: palm up positive, palm down negative. In the close view of the hand from the
    /// thumb's side, 0 is palm down and 180 palm up.
    ForearmTurn "forearm-turn" -90..=180,
    /// Near hip bent.
    HipNear "hip-near" -30..=130,
    /// Far hip bent.
    HipFar "hip-far" -30..=130,
    /// Near leg away from the body.
    HipOutNear "hip-out-near" -30..=60,
    /// Far leg away from the body.
    HipOutFar "hip-out-far" -30..=60,
    /// Near thigh turned outward positive.
    HipTurnNear "hip-turn-near" -45..=65,
    /// Far thigh turned outward positive.
    HipTurnFar "hip-turn-far" -45..=65,
    /// Near knee bent.
    KneeNear "knee-near" -5..=150,
    /// Far knee bent.
    KneeFar "knee-far" -5..=150,
    /// Near ankle: toes up positive.
    AnkleNear "ankle-near" -65..=40,
    /// Far ankle: toes up positive.
    AnkleFar "ankle-far" -65..=40,
    /// The forearm against the horizontal (close view of the hand): hand end up positive.
    Forearm "forearm" -90..=90,
    /// Knuckles bent (close view of the hand).
    Knuckles "knuckles" -30..=95,
    /// Middle joints of the fingers bent (close view of the hand).
    MiddleJoints "middle-joints" 0..=115,
    /// End joints of the fingers bent (close view of the hand).
    EndJoints "end-joints" 0..=90,
    /// Thumb toward the palm positive (close view of the hand).
    Thumb "thumb" -50..=80,
    /// Fingers apart (close view of the palm).
    Spread "spread" 0..=30,
    /// Index finger bent (close view of the palm).
    Index "index" 0..=100,
    /// Middle finger bent (close view of the palm).
    Middle "middle" 0..=100,
    /// Ring finger bent (close view of the palm).
    Ring "ring" 0..=100,
    /// Little finger bent (close view of the palm).
    Little "little" 0..=100,
    /// Near forefoot turned outward positive (close view of the feet from above).
    FootOut "foot-out" -30..=30,
    /// Arch of the near foot raised (close view of the foot).
    Arch "arch" 0..=20,
}

impl Joint {
    /// The joint with this name in catalogue files.
    pub fn from_name(name: &str) -> Option<Joint> {
        Joint::ALL.iter().copied().find(|joint| joint.name() == name)
    }
}

/// A position of the body.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Pose {
    /// Angles in degrees by joint; joints that are not listed are at 0.
    pub angles: BTreeMap<Joint, i16>,
}

impl Pose {
    /// The angle of a joint in degrees.
    pub fn angle(&self, joint: Joint) -> i16 {
        self.angles.get(&joint).copied().unwrap_or(0)
    }
}

impl Pose {
    /// Turns a joint to an angle in degrees, at most as far as it goes.
    pub fn turn(&mut self, joint: Joint, angle: i16) {
        let (least, most) = joint.range();
        match angle.clamp(least, most) {
            0 => drop(self.angles.remove(&joint)),
            angle => drop(self.angles.insert(joint, angle)),
        }
    }
}

impl<const N: usize> From<[(Joint, i16); N]> for Pose {
    fn from(angles: [(Joint, i16); N]) -> Pose {
        Pose { angles: BTreeMap::from(angles) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_joint_is_found_by_its_own_name_only() {
        for &joint in Joint::ALL {
            assert_eq!(Joint::from_name(joint.name()), Some(joint));
        }
        assert_eq!(Joint::from_name("tail"), None);
        assert_eq!(Joint::from_name("knee"), None);
    }

    #[test]
    fn every_joint_can_be_at_zero_degrees() {
        for &joint in Joint::ALL {
            let (min, max) = joint.range();
            assert!(min <= 0 && 0 < max, "{joint:?}");
        }
    }

    #[test]
    fn joints_that_a_position_does_not_name_are_at_zero_degrees() {
        let pose = Pose::from([(Joint::KneeNear, 90)]);
        assert_eq!((pose.angle(Joint::KneeNear), pose.angle(Joint::KneeFar)), (90, 0));
    }
}
