//! The figure seen from its side.

use super::body::*;
use super::outline::{closed, ellipse, limb, open, taper};
use super::shape::{Paint, Piece, Point, Shape};
use super::skeleton::{Arm, BodySide, Skeleton};
use super::space::{Frame, Vec3};
use crate::catalogue::Eyes;

/// The shapes of the figure, from far to near.
pub(super) fn body(s: &Skeleton, eyes: Eyes) -> Vec<Shape> {
    let mut shapes = arm(&s.far_arm, Paint::Far);
    shapes.extend(leg(&s.far_leg, Paint::Far));
    shapes.extend(neck(s));
    shapes.extend(trunk(s, -20.0));
    shapes.extend(head(s, eyes, 0.0));
    shapes.extend(leg(&s.near_leg, Paint::Near));
    shapes.extend(arm(&s.near_arm, Paint::NearArm));
    shapes
}

/// Head, neck and shoulders, with the mouth open by `jaw` degrees.
pub(super) fn bust(s: &Skeleton, eyes: Eyes, jaw: f64) -> Vec<Shape> {
    let mut shapes = neck(s);
    shapes.extend(trunk(s, 34.0));
    shapes.extend(head(s, eyes, jaw));
    shapes
}

fn flat(v: Vec3) -> Point {
    Point { x: v.x, y: v.y }
}

/// The trunk's outline: height along the spine, thickness to the front, thickness to the back.
const TRUNK: [(f64, f64, f64); 12] = [
    (-10.0, 3.0, 5.0),
    (-7.5, 7.4, 9.2),
    (-2.0, 9.2, 11.4),
    (5.0, 9.8, 10.8),
    (12.5, 10.0, 8.6),
    (20.0, 9.9, 7.5),
    (28.0, 10.6, 8.3),
    (36.0, 11.5, 9.6),
    (42.0, 11.1, 10.2),
    (47.5, 8.9, 9.9),
    (52.0, 6.0, 8.8),
    (54.5, 2.6, 7.0),
];

/// The trunk above `from`, a height along the spine.
fn trunk(s: &Skeleton, from: f64) -> Vec<Shape> {
    let side = |front: bool| {
        TRUNK.iter().filter(move |part| part.0 > from).map(move |&(height, fore, aft)| {
            let (place, frame) = s.spine.at(height);
            flat(place + frame.front * if front { fore } else { -aft })
        })
    };
    let points: Vec<_> = side(false).chain(side(true).rev()).collect();
    vec![Shape::filled(Paint::Near, closed(&points))]
}

fn neck(s: &Skeleton) -> Vec<Shape> {
    let (from, to) = (flat(s.neck), flat(s.ear));
    // The limb points upward, so its left is the back.
    vec![Shape::filled(Paint::Near, limb(from, to, &[(0.0, 5.2, 6.4), (0.35, 4.9, 5.2), (0.8, 5.0, 5.0)]))]
}

/// The head's outline, from the forehead down the face and round the back; measured to the front and up from the ear.
const HEAD: [(f64, f64); 22] = [
    (8.4, 8.2),
    (9.4, 5.2),
    (9.0, 3.0),
    (10.1, 1.0),
    (11.7, -1.5),
    (11.1, -2.6),
    (9.8, -3.2),
    (10.0, -4.7),
    (9.6, -5.4),
    (9.7, -6.4),
    (8.9, -7.5),
    (9.2, -9.2),
    (7.4, -10.9),
    (3.6, -9.4),
    (0.2, -6.6),
    (-4.6, -5.6),
    (-8.6, -0.4),
    (-9.9, 4.8),
    (-8.2, 9.8),
    (-3.2, 12.8),
    (2.8, 12.6),
    (6.4, 10.8),
];

const HAIR: [(f64, f64); 15] = [
    (8.3, 9.2),
    (6.4, 8.6),
    (4.6, 6.6),
    (3.4, 3.4),
    (2.6, 1.2),
    (1.4, -1.2),
    (-1.6, -3.2),
    (-3.4, -5.0),
    (-5.2, -5.4),
    (-7.2, -4.0),
    (-10.1, 0.4),
    (-10.6, 5.4),
    (-8.4, 10.8),
    (-2.4, 14.0),
    (4.8, 13.0),
];

/// The chin, measured to the front and up from the ear.
pub(super) const CHIN: (f64, f64) = (9.0, -9.0);

pub(super) fn on_head(s: &Skeleton, (front, up): (f64, f64)) -> Vec3 {
    s.ear + s.head.step(front, up, 0.0)
}

/// The hinge of the jaw, and the first and last point of the outline that move with it.
const HINGE: (f64, f64) = (0.8, -2.4);
const LOWER: (usize, usize) = (7, 13);

/// A point of the lower jaw when the mouth is open by `jaw` degrees.
fn dropped((front, up): (f64, f64), jaw: f64) -> (f64, f64) {
    let (sin, cos) = jaw.to_radians().sin_cos();
    let (x, y) = (front - HINGE.0, up - HINGE.1);
    (HINGE.0 + x * cos + y * sin, HINGE.1 + y * cos - x * sin)
}

fn head(s: &Skeleton, eyes: Eyes, jaw: f64) -> Vec<Shape> {
    let at = |place| flat(on_head(s, place));
    let outline = |points: &[(f64, f64)]| closed(&points.iter().map(|&p| at(p)).collect::<Vec<_>>());
    let mut face = HEAD;
    let mut mouth = Vec::new();
    if jaw > 0.0 {
        face[LOWER.0..=LOWER.1].iter_mut().for_each(|place| *place = dropped(*place, jaw));
        let inside = [(9.6, -3.4), (6.0, -3.8), dropped((6.0, -4.2), jaw), dropped((9.6, -4.9), jaw)];
        mouth.push(Shape::corners(Paint::Eyes, &inside.map(at)));
    }
    let eye = match eyes {
        Eyes::Open => Shape::filled(Paint::Eyes, ellipse(at((6.9, 1.7)), direction(&s.head), 0.75, 1.1)),
        Eyes::Closed => Shape::line(Paint::Eyes, open(&[at((5.7, 1.7)), at((6.8, 1.0)), at((8.0, 1.4))]), 0.9),
    };
    let ear = Shape::filled(Paint::Near, ellipse(at((-0.5, -0.6)), direction(&s.head), 1.7, 2.7));
    let mut shapes = vec![Shape::filled(Paint::Near, outline(&face))];
    shapes.extend(mouth);
    shapes.extend([Shape::filled(Paint::NearArm, outline(&HAIR)), ear, eye]);
    shapes
}

fn direction(frame: &Frame) -> Point {
    flat(frame.front).unit()
}

fn leg(leg: &BodySide, paint: Paint) -> Vec<Shape> {
    let [hip, knee, ankle] = [leg.hip, leg.knee, leg.ankle].map(flat);
    // The limb points downward, so its left is the front.
    let thigh = limb(
        hip,
        knee,
        &[(0.0, 8.2, 9.3), (0.14, 8.6, 9.2), (0.32, 8.5, 8.3), (0.62, 7.3, 6.4), (0.88, 5.9, 5.2), (1.0, 5.5, 5.2)],
    );
    let shank = limb(
        knee,
        ankle,
        &[(0.0, 5.4, 5.2), (0.12, 5.0, 5.6), (0.32, 4.4, 6.8), (0.55, 3.8, 5.6), (0.85, 3.2, 3.5), (1.0, 3.4, 3.5)],
    );
    [thigh, shank, foot(leg)].map(|outline| Shape::filled(paint, outline)).to_vec()
}

/// The foot; the toes stay on the floor while the heel rises.
fn foot(leg: &BodySide) -> Vec<Piece> {
    let at = |along: f64, above: f64| flat(leg.foot_point(along, above));
    // A foot that lies on its back does not press the toes into the floor.
    let bend = if leg.instep.y < 0.0 { 0.0 } else { (-leg.foot.y).asin().to_degrees().clamp(0.0, 60.0) };
    let ball = leg.foot_point(BALL, 0.0);
    let toe = |along: f64, above: f64| {
        let (forward, up) = super::space::turned(leg.foot, leg.instep, bend * pressed(leg));
        flat(ball + forward * along + up * above)
    };
    closed(&[
        at(-4.4, 7.6),
        at(-5.0, 3.6),
        at(-5.6, 1.6),
        at(-3.6, 0.0),
        at(3.0, 0.25),
        at(BALL - 1.5, 0.0),
        toe(3.0, 0.0),
        toe(TOES - 0.6, 0.3),
        toe(TOES - 0.4, 2.4),
        toe(2.2, 3.4),
        at(8.0, 5.6),
        at(4.2, 8.4),
        at(0.0, 10.4),
    ])
}

/// How far the toes are bent (0 to 1): fully on the floor, not at all in the air.
fn pressed(leg: &BodySide) -> f64 {
    let height = leg.foot_point(BALL, 0.0).y;
    (1.0 - (height - 3.0) / 6.0).clamp(0.0, 1.0)
}

fn arm(arm: &Arm, paint: Paint) -> Vec<Shape> {
    let [shoulder, elbow, wrist] = [arm.shoulder, arm.elbow, arm.wrist].map(flat);
    // The limb points downward, so its left is the front.
    let upper = limb(shoulder, elbow, &[(0.0, 5.6, 5.8), (0.25, 5.2, 5.2), (0.6, 4.3, 4.3), (1.0, 3.8, 3.9)]);
    let fore = limb(elbow, wrist, &[(0.0, 3.8, 3.8), (0.25, 4.0, 3.9), (0.65, 3.1, 3.0), (1.0, 2.4, 2.4)]);
    let mut shapes = [upper, fore].map(|outline| Shape::filled(paint, outline)).to_vec();
    shapes.extend(hand(arm, paint));
    shapes
}

fn hand(arm: &Arm, paint: Paint) -> [Shape; 2] {
    let at = |along: f64, aside: f64| flat(arm.wrist + arm.hand * along + arm.thumb * aside);
    let palm = limb(
        at(0.0, 0.0),
        at(PALM * 1.85, 0.0),
        &[(0.0, 2.4, 2.4), (0.25, 3.1, 3.0), (0.5, 3.2, 3.1), (0.8, 2.3, 2.3), (1.0, 1.5, 1.5)],
    );
    let thumb = taper(at(2.2, 1.4), at(7.6, 4.4), 1.5, 1.1);
    [Shape::filled(paint, palm), Shape::filled(paint, thumb)]
}
