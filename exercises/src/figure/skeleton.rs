//! Computes the positions of the joints in space from the joint angles.

use super::body::*;
use super::motion::Angles;
use super::space::{Frame, UP, Vec3, turned};
use crate::catalogue::Joint;

/// A leg in space. Directions have length 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct BodySide {
    pub hip: Vec3,
    pub knee: Vec3,
    pub ankle: Vec3,
    /// Direction of the front of the thigh.
    pub thigh_front: Vec3,
    /// Direction of the front of the shank.
    pub shank_front: Vec3,
    /// From the ankle toward the toes, along the sole.
    pub foot: Vec3,
    /// Perpendicular to the sole, upward.
    pub instep: Vec3,
}

/// An arm in space. Directions have length 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Arm {
    pub shoulder: Vec3,
    pub elbow: Vec3,
    pub wrist: Vec3,
    /// Along the hand toward the fingers.
    pub hand: Vec3,
    /// The side of the hand on which the thumb lies.
    pub thumb: Vec3,
}

/// The trunk as a curve that bends evenly between pelvis and shoulders.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Spine {
    pub pelvis: Vec3,
    pub frame: Frame,
    /// Rounding of the back over its whole length, degrees.
    back: f64,
    /// Side bend of the chest against the pelvis, degrees.
    aside: f64,
    /// Turn of the chest against the pelvis, degrees.
    turn: f64,
}

/// The whole body in space.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Skeleton {
    pub spine: Spine,
    pub neck: Vec3,
    /// The point midway between the ears.
    pub ear: Vec3,
    pub head: Frame,
    pub near_arm: Arm,
    pub far_arm: Arm,
    pub near_leg: BodySide,
    pub far_leg: BodySide,
}

/// The joints of one side.
struct Side {
    /// 1 for near (right), -1 for far.
    sign: f64,
    hip: [Joint; 3],
    knee: Joint,
    ankle: Joint,
    shoulder: [Joint; 3],
    elbow: Joint,
    wrist: Joint,
}

const NEAR: Side = Side {
    sign: 1.0,
    hip: [Joint::HipNear, Joint::HipOutNear, Joint::HipTurnNear],
    knee: Joint::KneeNear,
    ankle: Joint::AnkleNear,
    shoulder: [Joint::ShoulderNear, Joint::ShoulderOutNear, Joint::ShoulderTurnNear],
    elbow: Joint::ElbowNear,
    wrist: Joint::WristNear,
};

const FAR: Side = Side {
    sign: -1.0,
    hip: [Joint::HipFar, Joint::HipOutFar, Joint::HipTurnFar],
    knee: Joint::KneeFar,
    ankle: Joint::AnkleFar,
    shoulder: [Joint::ShoulderFar, Joint::ShoulderOutFar, Joint::ShoulderTurnFar],
    elbow: Joint::ElbowFar,
    wrist: Joint::WristFar,
};

/// The body with its pelvis at the origin.
pub(super) fn skeleton(angles: &Angles) -> Skeleton {
    let of = |joint| angles.of(joint);
    let frame = Frame::UPRIGHT.sideways(of(Joint::TrunkSide)).forward(of(Joint::Trunk));
    let [back, aside, turn] = [Joint::Back, Joint::BackSide, Joint::BackTurn].map(of);
    let spine = Spine { pelvis: Vec3::default(), frame, back, aside, turn };
    let (top, chest) = spine.at(SPINE);
    let neck = top - chest.front * NECK_BACK;
    // The lower neck takes half of the side bend, the head the rest.
    let half = of(Joint::NeckSide) / 2.0;
    let neck_frame = chest.sideways(half).forward(NECK_LEAN + of(Joint::Neck));
    let head = neck_frame.forward(of(Joint::Head) - NECK_LEAN).sideways(half).turned(of(Joint::HeadTurn));
    Skeleton {
        spine,
        neck,
        ear: neck + neck_frame.up * NECK,
        head,
        near_arm: arm(angles, &spine, &NEAR),
        far_arm: arm(angles, &spine, &FAR),
        near_leg: leg(angles, frame, &NEAR),
        far_leg: leg(angles, frame, &FAR),
    }
}

fn arm(angles: &Angles, spine: &Spine, side: &Side) -> Arm {
    let (middle, chest) = spine.at(SHOULDER_AT);
    let out = chest.right * side.sign;
    let (blades, shrug) = (angles.of(Joint::Blades).to_radians(), angles.of(Joint::Shrug).to_radians());
    let shoulder = middle
        + out * (SHOULDER_HALF * blades.cos())
        + chest.step(-SHOULDER_HALF * blades.sin(), SHOULDER_HALF * shrug.sin(), 0.0);
    let [flex, away, turn] = side.shoulder.map(|joint| angles.of(joint));
    let (down, front) = turned(-chest.up, chest.front, flex);
    let (down, out) = turned(down, out, away);
    let (front, _) = turned(front, -out, turn);
    let (fore, bent) = turned(down, front, angles.of(side.elbow));
    let (hand, thumb) = turned(fore, bent, angles.of(side.wrist));
    let rolled = if side.sign > 0.0 { angles.of(Joint::ForearmTurn) } else { 0.0 };
    let (thumb, _) = turned(thumb, hand.cross(thumb), rolled);
    let elbow = shoulder + down * UPPER_ARM;
    Arm { shoulder, elbow, wrist: elbow + fore * FOREARM, hand, thumb }
}

fn leg(angles: &Angles, pelvis: Frame, side: &Side) -> BodySide {
    let out = pelvis.right * side.sign;
    let hip = out * HIP_HALF;
    let [flex, away, turn] = side.hip.map(|joint| angles.of(joint));
    let (down, thigh_front) = turned(-pelvis.up, pelvis.front, flex);
    let (down, out) = turned(down, out, away);
    let (thigh_front, _) = turned(thigh_front, out, turn);
    let (shank, behind) = turned(down, -thigh_front, angles.of(side.knee));
    let shank_front = -behind;
    let (foot, instep) = turned(shank_front, -shank, angles.of(side.ankle));
    let knee = hip + down * THIGH;
    BodySide { hip, knee, ankle: knee + shank * SHANK, thigh_front, shank_front, foot, instep }
}

impl Spine {
    /// The point at `height` (centimetres) along the spine above the hips, or below them if negative, and the orientation of the
    /// trunk there.
    pub fn at(&self, height: f64) -> (Vec3, Frame) {
        const BEND: (f64, f64) = (6.0, SHOULDER_AT);
        let frame = |height: f64| {
            let part = ((height - BEND.0) / (BEND.1 - BEND.0)).clamp(0.0, 1.0);
            self.frame.forward(self.back * part).sideways(self.aside * part).turned(self.turn * part)
        };
        if height <= BEND.0 {
            return (self.pelvis + self.frame.up * height, self.frame);
        }
        let steps = ((height - BEND.0) / 2.0).ceil();
        let step = (height - BEND.0) / steps;
        let mut place = self.pelvis + self.frame.up * BEND.0;
        for i in 0..steps as usize {
            place = place + frame(BEND.0 + (i as f64 + 0.5) * step).up * step;
        }
        (place, frame(height))
    }
}

impl BodySide {
    /// A point of the foot: `along` is the distance along the sole from below the ankle, `above` the height above the sole, in
    /// centimetres.
    pub fn foot_point(&self, along: f64, above: f64) -> Vec3 {
        self.ankle + self.foot * along + self.instep * (above - ANKLE)
    }

    /// Bends hip and knee so that the ankle reaches `ankle`. The foot keeps its direction.
    pub fn reach(&mut self, ankle: Vec3) {
        let (knee, end) = reach(self.hip, ankle, (THIGH, SHANK), self.knee, self.thigh_front);
        let square = |front: Vec3, from: Vec3, to: Vec3| front.square_to((to - from).unit_or(front)).unit_or(front);
        self.thigh_front = square(self.thigh_front, self.hip, knee);
        self.shank_front = square(self.shank_front, knee, end);
        (self.knee, self.ankle) = (knee, end);
    }

    /// Lays the foot flat without changing where it points.
    pub fn flatten(&mut self) {
        self.foot = self.foot.square_to(UP).unit_or(self.shank_front);
        self.instep = UP;
    }

    /// Lays the shin flat without changing where it points. The foot keeps its angle with the shin.
    pub fn kneel(&mut self) {
        let shank = (self.ankle - self.knee).unit_or(UP);
        let ankle = self.foot.dot(-shank).atan2(self.foot.dot(self.shank_front)).to_degrees();
        let flat = shank.square_to(UP).unit_or(self.shank_front);
        self.ankle = self.knee + flat * SHANK;
        self.shank_front = -UP;
        (self.foot, self.instep) = turned(self.shank_front, -flat, ankle);
    }

    fn shift(&mut self, by: Vec3) {
        for place in [&mut self.hip, &mut self.knee, &mut self.ankle] {
            *place = *place + by;
        }
    }
}

impl Arm {
    /// Bends shoulder and elbow so that the wrist reaches `wrist`. The hand keeps its direction.
    pub fn reach(&mut self, wrist: Vec3) {
        let down = self.elbow - self.shoulder;
        (self.elbow, self.wrist) = reach(self.shoulder, wrist, (UPPER_ARM, FOREARM), self.elbow, -self.thumb - down);
    }

    fn shift(&mut self, by: Vec3) {
        for place in [&mut self.shoulder, &mut self.elbow, &mut self.wrist] {
            *place = *place + by;
        }
    }
}

impl Skeleton {
    /// The whole body moved by `by`.
    pub fn shifted(mut self, by: Vec3) -> Skeleton {
        for place in [&mut self.spine.pelvis, &mut self.neck, &mut self.ear] {
            *place = *place + by;
        }
        self.near_arm.shift(by);
        self.far_arm.shift(by);
        self.near_leg.shift(by);
        self.far_leg.shift(by);
        self
    }

    /// The whole body as it is seen from the front by eyes that look down by `degrees`.
    pub fn seen_from_above(mut self, degrees: f64) -> Skeleton {
        let turn = |v: &mut Vec3| *v = v.looked_down_on(degrees);
        [&mut self.spine.pelvis, &mut self.neck, &mut self.ear].into_iter().for_each(turn);
        for frame in [&mut self.spine.frame, &mut self.head] {
            [&mut frame.front, &mut frame.up, &mut frame.right].into_iter().for_each(turn);
        }
        for arm in [&mut self.near_arm, &mut self.far_arm] {
            [&mut arm.shoulder, &mut arm.elbow, &mut arm.wrist, &mut arm.hand, &mut arm.thumb].into_iter().for_each(turn);
        }
        for leg in [&mut self.near_leg, &mut self.far_leg] {
            [&mut leg.hip, &mut leg.knee, &mut leg.ankle].into_iter().for_each(turn);
            [&mut leg.thigh_front, &mut leg.shank_front, &mut leg.foot, &mut leg.instep].into_iter().for_each(turn);
        }
        self
    }
}

/// Two bones from `root` toward `target`. Returns the joint between them, bent to the side of `hint` (or of `otherwise`), and the
/// end, which is `target` or as close to it as the bones reach.
fn reach(root: Vec3, target: Vec3, bones: (f64, f64), hint: Vec3, otherwise: Vec3) -> (Vec3, Vec3) {
    let way = target - root;
    let distance = way.length().clamp((bones.0 - bones.1).abs() + 0.5, (bones.0 + bones.1) * 0.9995);
    let direction = way.unit_or(-otherwise);
    let along = (bones.0 * bones.0 - bones.1 * bones.1 + distance * distance) / (2.0 * distance);
    let aside = (bones.0 * bones.0 - along * along).max(0.0).sqrt();
    // A straight limb bends to no particular side, so a little of `otherwise` is added to decide.
    let pole = ((hint - root) + otherwise.unit_or(direction) * 0.5).square_to(direction).unit_or(otherwise);
    (root + direction * along + pole * aside, root + direction * distance)
}
