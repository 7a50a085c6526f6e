//! The figure seen from the front. Its right side, which is the near side, is on the left of the picture.

use super::body::*;
use super::outline::{closed, ellipse, limb, open, taper};
use super::shape::{Paint, Piece, Point, Shape};
use super::skeleton::{Arm, BodySide, Skeleton};
use super::space::Vec3;
use crate::catalogue::Eyes;

/// The shapes of the figure, in painting order.
pub(super) fn body(s: &Skeleton, eyes: Eyes) -> Vec<Shape> {
    let behind = |arm: &Arm| arm.wrist.x < s.spine.pelvis.x - 4.0;
    let mut shapes = Vec::new();
    let arms = [&s.far_arm, &s.near_arm];
    shapes.extend(arms.iter().filter(|one| behind(one)).flat_map(|one| arm(one)));
    let before = |leg: &BodySide| leg.knee.x > s.spine.pelvis.x + 12.0;
    // Of two bent legs of somebody lying on the side, the lower one is painted as the far one.
    let bent = (s.near_leg.knee - s.near_leg.hip).dot(s.near_leg.ankle - s.near_leg.knee) < THIGH * SHANK * 0.8;
    let lower = (before(&s.near_leg) || bent) && s.spine.frame.up.y < 0.5 && s.spine.frame.up.x.abs() < 0.5;
    let legs = [(&s.far_leg, if lower { Paint::Far } else { Paint::Near }), (&s.near_leg, Paint::Near)];
    shapes.extend(
        legs.iter().filter(|(one, _)| !before(&s.near_leg) || !before(one)).flat_map(|(one, paint)| leg(one, *paint)),
    );
    shapes.extend(trunk(s));
    shapes.extend(head(s, eyes));
    // Thighs that point to whoever looks are in front of the trunk.
    for (one, paint) in legs.iter().filter(|(one, _)| before(&s.near_leg) && before(one)) {
        let outlines = leg(one, *paint);
        shapes.extend(outlines.iter().map(|shape| Shape::line(Paint::Ground, shape.outline.clone(), 1.2)));
        shapes.extend(outlines);
    }
    shapes.extend(arms.iter().filter(|one| !behind(one)).flat_map(|one| arm(one)));
    shapes
}

fn flat(v: Vec3) -> Point {
    Point { x: -v.z, y: v.y }
}

/// The trunk's outline: height along the spine, half the width there.
const TRUNK: [(f64, f64); 12] = [
    (-9.0, 4.0),
    (-5.0, 15.6),
    (0.0, 16.4),
    (7.0, 15.0),
    (16.0, 13.0),
    (26.0, 13.8),
    (36.0, 15.6),
    (43.0, 17.0),
    (48.0, 18.2),
    (51.5, 16.2),
    (54.5, 9.4),
    (57.5, 5.6),
];

fn trunk(s: &Skeleton) -> Vec<Shape> {
    let side = |sign: f64| {
        TRUNK.iter().map(move |&(height, half)| {
            let (place, frame) = s.spine.at(height);
            flat(place + frame.right * (half * sign))
        })
    };
    let points: Vec<_> = side(1.0).chain(side(-1.0).rev()).collect();
    vec![Shape::filled(Paint::Near, closed(&points)), Shape::filled(Paint::Near, taper(flat(s.neck), flat(s.ear), 5.8, 5.2))]
}

/// Outline of one half of the head, measured to its right and up from the point midway between the ears.
const HEAD: [(f64, f64); 7] = [(0.0, 12.9), (5.4, 10.8), (7.6, 5.6), (7.3, -1.0), (5.9, -6.6), (2.8, -10.2), (0.0, -10.9)];

const HAIR: [(f64, f64); 7] = [(0.0, 14.0), (6.0, 11.8), (8.4, 6.2), (7.9, 1.0), (6.6, 2.0), (5.6, 6.8), (0.0, 8.8)];

fn head(s: &Skeleton, eyes: Eyes) -> Vec<Shape> {
    let at = |right: f64, up: f64| flat(s.ear + s.head.step(0.0, up, right));
    let both = |points: &[(f64, f64)]| {
        let right = points.iter().map(|&(r, u)| at(r, u));
        let left = points.iter().rev().filter(|p| p.0 > 0.0).map(|&(r, u)| at(-r, u));
        closed(&right.chain(left).collect::<Vec<_>>())
    };
    let across = at(1.0, 0.0).minus(at(0.0, 0.0)).unit();
    let turn = s.head.front.z.clamp(-1.0, 1.0);
    if turn.abs() > 0.02 {
        return turned_head(s, eyes, turn);
    }
    let mut shapes: Vec<_> =
        [-1.0, 1.0].map(|sign| Shape::filled(Paint::Near, ellipse(at(sign * 7.5, -0.6), across, 1.5, 2.4))).to_vec();
    shapes.push(Shape::filled(Paint::Near, both(&HEAD)));
    shapes.push(Shape::filled(Paint::NearArm, both(&HAIR)));
    shapes.extend([-1.0, 1.0].map(|sign| match eyes {
        Eyes::Open => Shape::filled(Paint::Eyes, ellipse(at(sign * 3.0, 1.2), across, 0.8, 1.1)),
        Eyes::Closed => {
            Shape::line(Paint::Eyes, open(&[at(sign * 1.8, 1.2), at(sign * 3.0, 0.6), at(sign * 4.2, 1.2)]), 0.9)
        }
    }));
    shapes
}

/// A head that is turned to the right by an angle whose sine is `turn`: the hair of its other side comes into sight.
fn turned_head(s: &Skeleton, eyes: Eyes, turn: f64) -> Vec<Shape> {
    let seen = (1.0 - turn * turn).sqrt();
    let up = s.head.up;
    let across = s.spine.frame.right.square_to(up).unit_or(s.spine.frame.right);
    let at = |right: f64, height: f64| flat(s.ear + across * right + up * height);
    let side = turn.signum();
    let outline = |points: &[(f64, f64)], both: bool| {
        let left = points.iter().rev().filter(|p| both && p.0 > 0.0).map(|&(r, u)| at(r * side, u));
        closed(&points.iter().map(|&(r, u)| at(-r * side, u)).chain(left).collect::<Vec<_>>())
    };
    let nose = Shape::filled(Paint::Near, ellipse(at(8.4 * turn, -1.6), flat(up).unit(), 2.4, 1.9));
    let edge = 8.4 - 9.4 * turn.abs();
    let behind =
        [(2.0, 12.6), (6.4, 11.0), (8.4, 6.0), (8.2, 0.0), (6.4, -5.0), (edge.min(6.0), -3.0), (edge, 2.0), (edge, 8.0)];
    let ear = Shape::filled(Paint::Near, ellipse(at(-7.5 * seen * side, -0.6), flat(up).unit(), 2.5, 1.6));
    let mut shapes =
        vec![nose, Shape::filled(Paint::Near, outline(&HEAD, true)), Shape::filled(Paint::NearArm, outline(&HAIR, true))];
    shapes.extend([Shape::filled(Paint::NearArm, outline(&behind, false)), ear]);
    let right = flat(across).unit();
    let open_eyes =
        [-1.0, 1.0].map(|sign: f64| sign * 3.0 * seen + 7.2 * turn).into_iter().filter(|place| place.abs() < 7.6);
    shapes.extend(open_eyes.map(|place| match eyes {
        Eyes::Open => Shape::filled(Paint::Eyes, ellipse(at(place, 1.2), right, 0.8, 1.1)),
        Eyes::Closed => Shape::line(Paint::Eyes, open(&[at(place - 1.2, 1.2), at(place, 0.6), at(place + 1.2, 1.2)]), 0.9),
    }));
    shapes
}

fn leg(leg: &BodySide, paint: Paint) -> Vec<Shape> {
    let [hip, knee, ankle] = [leg.hip, leg.knee, leg.ankle].map(flat);
    let even = |girths: &[(f64, f64)]| girths.iter().map(|&(part, r)| (part, r, r)).collect::<Vec<_>>();
    let thigh = limb(hip, knee, &even(&[(0.0, 8.0), (0.3, 8.0), (0.7, 6.2), (1.0, 5.4)]));
    let shank = limb(knee, ankle, &even(&[(0.0, 5.3), (0.3, 5.9), (0.6, 4.8), (0.9, 3.4), (1.0, 3.5)]));
    [thigh, shank, foot(leg)].map(|outline| Shape::filled(paint, outline)).to_vec()
}

/// The foot from instep to toes: distance along the sole, height above it, half the width there.
const FOOT: [(f64, f64, f64); 6] =
    [(0.0, 10.0, 3.3), (3.0, 6.6, 3.6), (9.0, 3.8, 4.6), (14.0, 2.0, 4.7), (15.0, 0.4, 3.9), (14.0, 0.0, 2.0)];

fn foot(leg: &BodySide) -> Vec<Piece> {
    let across = leg.foot.cross(leg.instep);
    let side = |sign: f64| {
        FOOT.iter().map(move |&(along, above, half)| flat(leg.foot_point(along, above) + across * (half * sign)))
    };
    closed(&side(1.0).chain(side(-1.0).rev()).collect::<Vec<_>>())
}

fn arm(arm: &Arm) -> Vec<Shape> {
    let [shoulder, elbow, wrist] = [arm.shoulder, arm.elbow, arm.wrist].map(flat);
    let at = |along: f64, aside: f64| flat(arm.wrist + arm.hand * along + arm.thumb * aside);
    let upper = limb(shoulder, elbow, &[(0.0, 5.6, 5.6), (0.3, 5.0, 5.0), (1.0, 3.8, 3.8)]);
    let fore = limb(elbow, wrist, &[(0.0, 3.8, 3.8), (0.3, 3.9, 3.9), (1.0, 2.4, 2.4)]);
    let palm =
        limb(at(0.0, 0.0), at(PALM * 1.85, 0.0), &[(0.0, 2.4, 2.4), (0.3, 3.0, 3.0), (0.8, 2.2, 2.2), (1.0, 1.5, 1.5)]);
    let thumb = taper(at(2.2, 1.4), at(7.4, 4.2), 1.5, 1.1);
    [upper, fore, palm, thumb].map(|outline| Shape::filled(Paint::NearArm, outline)).to_vec()
}
