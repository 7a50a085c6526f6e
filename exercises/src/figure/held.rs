//! What the figure holds or wears: bands, straps, sticks, weights, a rolled towel. It follows the movement.

use super::body::*;
use super::outline::{ellipse, rounded, taper};
use super::shape::{Paint, Piece, Point, Shape, Stroke};
use super::side::on_head;
use super::skeleton::{Arm, Skeleton};
use super::space::Vec3;
use super::surroundings::{Scene, flat};
use crate::catalogue::{Contact, End, Furniture, Link, Tie, View};

/// How far a stick reaches beyond each hand, in centimetres.
const BEYOND: f64 = 13.0;

/// What one figure holds.
pub(super) struct HeldThings {
    view: View,
    links: Vec<Link>,
    furniture: Vec<Furniture>,
    /// The end of a band at the door, and the mark on the wall.
    knob: Point,
    mark: Point,
    /// The middle of a rolled towel that lies under the knee.
    under_knee: Option<Point>,
}

impl HeldThings {
    pub fn new(scene: &Scene<'_>) -> HeldThings {
        let figure = scene.figure;
        let on_back = matches!(figure.contacts.first(), Some(Contact::UpperBack | Contact::LowBack));
        let knee = scene.flat(scene.first.near_leg.knee);
        HeldThings {
            view: figure.view,
            links: figure.links.clone(),
            furniture: figure.furniture.clone(),
            knob: scene.door_knob(),
            mark: scene.mark_at(),
            under_knee: on_back.then_some(Point { x: knee.x, y: MAT + 3.6 }),
        }
    }

    fn has(&self, piece: Furniture) -> bool {
        self.furniture.contains(&piece)
    }

    /// What the body covers.
    pub fn behind(&self, body: &Skeleton) -> Vec<Shape> {
        let right = Point { x: 1.0, y: 0.0 };
        let mut shapes = Vec::new();
        if let (true, Some(place)) = (self.has(Furniture::TowelRoll), self.under_knee) {
            shapes.push(Shape::filled(Paint::Held, ellipse(place, right, 5.4, 4.0)));
        }
        if self.has(Furniture::Mark) {
            let eye = flat(self.view, on_head(body, (7.4, 1.7)));
            let outline = vec![Piece::Move(eye), Piece::Line(self.mark)];
            shapes.push(Shape { paint: Paint::Plumb, outline, stroke: Some(Stroke { width: 1.1, dash: Some((0.1, 3.0)) }) });
        }
        shapes
    }

    /// What covers the body.
    pub fn before(&self, body: &Skeleton) -> Vec<Shape> {
        let mut shapes: Vec<_> = self.links.iter().map(|link| self.link(link, body)).collect();
        if self.has(Furniture::TowelRoll) && self.under_knee.is_none() {
            let arm = &body.near_arm;
            let place = arm.elbow + (arm.shoulder - arm.elbow) * 0.2 - body.spine.frame.right * 4.6;
            let along = flat(self.view, arm.shoulder).minus(flat(self.view, arm.elbow)).unit();
            shapes.push(Shape::filled(Paint::Held, ellipse(flat(self.view, place), along, 5.2, 3.0)));
        }
        if self.has(Furniture::Weight) {
            shapes.push(self.weight(&body.near_arm));
        }
        if self.has(Furniture::Bag) {
            shapes.extend(bag(flat(self.view, grip(&body.near_arm))));
        }
        shapes
    }

    fn link(&self, link: &Link, body: &Skeleton) -> Shape {
        let (from, to) = (self.end(link.from, body), self.end(link.to, body));
        let way = to.minus(from).unit();
        let (over, width) = match link.tie {
            Tie::Band => (0.0, 2.4),
            Tie::Strap => (0.0, 1.8),
            Tie::Stick => (BEYOND, 2.8),
        };
        let outline = vec![Piece::Move(from.along(way, -over, 0.0)), Piece::Line(to.along(way, over, 0.0))];
        Shape::line(Paint::Held, outline, width)
    }

    fn end(&self, end: End, body: &Skeleton) -> Point {
        let place = match end {
            End::NearHand => grip(&body.near_arm),
            End::FarHand => grip(&body.far_arm),
            End::NearThigh => body.near_leg.knee + (body.near_leg.hip - body.near_leg.knee) * 0.2,
            End::FarThigh => body.far_leg.knee + (body.far_leg.hip - body.far_leg.knee) * 0.2,
            End::NearAnkle => body.near_leg.foot_point(0.0, ANKLE + 4.0),
            End::FarAnkle => body.far_leg.foot_point(0.0, ANKLE + 4.0),
            End::NearFoot => body.near_leg.foot_point(BALL - 2.0, -0.6),
            End::FarFoot => body.far_leg.foot_point(BALL - 2.0, -0.6),
            End::Head => on_head(body, (-11.4, 3.0)),
            End::Pelvis => body.spine.pelvis - body.spine.frame.front * 12.6,
            End::Door => return self.knob,
        };
        flat(self.view, place)
    }

    /// A bottle across the palm.
    fn weight(&self, arm: &Arm) -> Shape {
        let at = |along: f64| flat(self.view, grip(arm) + arm.thumb * along);
        Shape::filled(Paint::Held, taper(at(-5.0), at(8.0), 3.4, 2.6))
    }
}

/// The place in the palm where something is held.
fn grip(arm: &Arm) -> Vec3 {
    arm.wrist + arm.hand * (PALM * 0.95)
}

/// A bag that hangs from the hand.
fn bag(hand: Point) -> Vec<Shape> {
    let strap = |x: f64| Shape::line(Paint::Held, vec![Piece::Move(hand), Piece::Line(hand.plus(x, -11.0))], 1.2);
    let sack = rounded((hand.x - 9.0, hand.x + 9.0), (hand.y - 30.0, hand.y - 11.0), 3.0);
    vec![strap(-6.0), strap(6.0), Shape::filled(Paint::Held, sack)]
}
