//! The phone during a balance trial and the position of the hands: the three set-ups of "sway/1".

use super::body::*;
use super::shape::{Paint, Point, Shape};
use super::skeleton::{Arm, Skeleton};
use super::space::{FRONT, RIGHT, UP, Vec3};
use super::surroundings::{Scene, flat};
use crate::catalogue::{Figure, Furniture, View};
use crate::sway::SetUp;

/// Half of the phone's height, width and thickness, in centimetres. It is drawn thicker than a real one, so that it is visible from
/// the side.
const HALF: (f64, f64, f64) = (7.6, 3.9, 1.3);
/// Height of a hand above the support when it is ready to take hold, in centimetres.
const READY: f64 = 5.0;
/// Height of the breastbone along the spine, and thickness of the chest there, in centimetres.
const BREASTBONE: (f64, f64) = (33.0, 11.2);
/// Width of the gap around the phone, which separates it from a body of similar brightness.
const GAP: f64 = 1.1;

/// The phone in one picture.
pub(super) struct Phone {
    set_up: SetUp,
    view: View,
    /// The upper edge of the support, on the body's side.
    support: Point,
}

/// The same figure with a support to hold on to, because nobody should stand on one leg without one. The plumb line is removed,
/// because it would cross the support or the phone.
pub(super) fn with_support(figure: &Figure) -> Figure {
    let mut figure = Figure { plumb: false, ..figure.clone() };
    if !figure.furniture.contains(&Furniture::Worktop) {
        figure.furniture.push(Furniture::Worktop);
    }
    figure
}

impl Phone {
    /// For a picture of the whole body; `None` in a close view, which shows no phone.
    pub fn new(set_up: SetUp, scene: &Scene<'_>) -> Option<Phone> {
        let view = scene.figure.view;
        matches!(view, View::Front | View::Side).then(|| Phone { set_up, view, support: scene.worktop_edge() })
    }

    /// The body with its hands positioned for the set-up.
    pub fn held(&self, mut body: Skeleton) -> Skeleton {
        match (self.set_up, self.view) {
            // Seen from the front, the support is beside the figure's left.
            (SetUp::OnSupport, View::Front) => self.ready(&mut body.far_arm),
            (SetUp::OnSupport, _) => self.ready(&mut body.near_arm),
            (SetUp::AtBreastbone, _) => {
                let (spine, chest) = body.spine.at(BREASTBONE.0);
                at_breastbone(&mut body.near_arm, spine + chest.front * BREASTBONE.1, chest.front, chest.up);
                self.ready(&mut body.far_arm);
            }
            (SetUp::InPocket, _) => {}
        }
        body
    }

    /// Places a hand over the support, ready to take hold.
    fn ready(&self, arm: &mut Arm) {
        let (edge, height) = (self.support.x, self.support.y + READY);
        let (wrist, out) = match self.view {
            View::Front => (Vec3 { x: 14.0, y: height, z: -edge }, -RIGHT),
            _ => (Vec3 { x: edge, y: height, z: arm.shoulder.z * 0.8 }, FRONT),
        };
        arm.reach(wrist);
        arm.hand = (out - UP * 0.16).unit_or(out);
        arm.thumb = arm.hand.cross(UP).unit_or(UP);
    }

    /// The phone, with a fine gap around it.
    pub fn shapes(&self, body: &Skeleton) -> Vec<Shape> {
        let (tall, wide, thick) = HALF;
        let (middle, along, across) = match (self.set_up, self.view) {
            // The phone lies flat under the hand.
            (SetUp::OnSupport, View::Front) => (self.on_support(wide), RIGHT * (wide + 2.0), UP * thick),
            (SetUp::OnSupport, _) => (self.on_support(tall), FRONT * tall, UP * thick),
            (SetUp::AtBreastbone, view) => {
                let (spine, chest) = body.spine.at(BREASTBONE.0);
                let aside = if view == View::Front { chest.right * wide } else { chest.front * thick };
                (spine + chest.front * (BREASTBONE.1 + thick), chest.up * tall, aside)
            }
            (SetUp::InPocket, view) => {
                let (spine, hips) = body.spine.at(2.0);
                let (place, aside) = match view {
                    View::Front => (spine + hips.right * (FLANK - 7.5), hips.right),
                    _ => (spine + hips.front * 5.0, hips.front),
                };
                (place, hips.up * tall, aside * wide)
            }
        };
        let corners = |grown: f64| {
            let grow = |half: Vec3| half * (1.0 + grown / half.length().max(0.1));
            let (along, across) = (grow(along), grow(across));
            [along + across, along - across, -along - across, across - along].map(|corner| flat(self.view, middle + corner))
        };
        vec![Shape::corners(Paint::Ground, &corners(GAP)), Shape::corners(Paint::Phone, &corners(0.0))]
    }

    /// Position of a phone's middle if it lies on the support and `half` is the distance from its middle to its edge.
    fn on_support(&self, half: f64) -> Vec3 {
        let (x, y) = (self.support.x + 3.0 + half, self.support.y + HALF.2);
        match self.view {
            View::Front => Vec3 { x: 14.0, y, z: -x },
            _ => Vec3 { x, y, z: 0.0 },
        }
    }
}

/// Places the palm on the back of the phone, which faces away from the chest.
fn at_breastbone(arm: &mut Arm, chest: Vec3, front: Vec3, up: Vec3) {
    let wrist =
        chest + front * (2.0 * HALF.2 + 2.6) - up * (HALF.0 - 1.0) + Vec3 { z: arm.shoulder.z * 0.12, ..Vec3::default() };
    arm.reach(wrist);
    arm.hand = up;
    arm.thumb = if arm.shoulder.z > 0.0 { -RIGHT } else { RIGHT };
}
