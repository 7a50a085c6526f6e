//! Close views of the near hand: the palm with the fingers up, and the fist from in front.

use super::arrow::arrow;
use super::motion::Angles;
use super::outline::{closed, ellipse, limb, open, rounded, taper};
use super::shape::{Paint, Point, Shape};
use crate::catalogue::{Figure, Furniture, Joint};

/// The direction at this angle from upright, in degrees, to the left positive.
fn heading(left: f64) -> Point {
    let (sin, cos) = left.to_radians().sin_cos();
    Point { x: -sin, y: cos }
}

fn at(x: f64, y: f64) -> Point {
    Point { x, y }
}

/// One finger of the palm: its root, its direction at rest, how far it moves when the fingers spread, its bones.
struct Finger {
    joint: Joint,
    root: (f64, f64),
    rest: f64,
    spreads: f64,
    bones: [f64; 3],
}

const FINGERS: [Finger; 4] = [
    Finger { joint: Joint::Little, root: (-3.3, 8.0), rest: 5.0, spreads: 1.0, bones: [3.6, 2.1, 2.0] },
    Finger { joint: Joint::Ring, root: (-1.15, 9.3), rest: 1.5, spreads: 0.4, bones: [4.7, 2.9, 2.3] },
    Finger { joint: Joint::Middle, root: (1.1, 9.7), rest: -1.0, spreads: -0.15, bones: [5.0, 3.1, 2.3] },
    Finger { joint: Joint::Index, root: (3.2, 9.0), rest: -4.0, spreads: -0.8, bones: [4.6, 2.7, 2.2] },
];

/// The root of the thumb, and the angle from upright at which it lies at rest.
const THUMB: (Point, f64) = (Point { x: 2.9, y: 3.0 }, -46.0);

impl Finger {
    /// Root, middle joint, end joint and tip. A bent finger points to whoever looks and appears shorter.
    fn joints(&self, angles: &Angles) -> [Point; 4] {
        let bent = angles.of(self.joint);
        let along = heading(self.rest + self.spreads * angles.of(Joint::Spread));
        let mut place = [at(self.root.0, self.root.1); 4];
        for (i, share) in [0.45, 1.25, 1.7].into_iter().enumerate() {
            let seen = (bent * share).to_radians().cos();
            place[i + 1] = place[i].along(along, self.bones[i] * seen, 0.0);
        }
        place
    }
}

/// Ball, middle joint and tip of the thumb.
fn thumb(angles: &Angles) -> [Point; 3] {
    let (root, rest) = THUMB;
    let way = rest + angles.of(Joint::Thumb) - angles.of(Joint::Spread) * 0.6;
    let ball = root.along(heading(way - 8.0), 3.6, 0.0);
    let middle = ball.along(heading(way), 3.3, 0.0);
    [ball, middle, middle.along(heading(way + 6.0), 2.7, 0.0)]
}

/// All shapes of the palm, in painting order.
pub(super) fn palm(figure: &Figure, angles: &Angles) -> Vec<Shape> {
    let fore = limb(at(0.0, -8.0), at(0.0, 0.0), &[(0.0, 3.4, 3.4), (0.6, 2.9, 2.9), (1.0, 2.7, 2.7)]);
    let sleeve = [at(-3.9, -12.0), at(-3.7, -5.4), at(3.7, -5.4), at(3.9, -12.0)];
    let hand = closed(&[
        at(-2.7, -1.0),
        at(-4.1, 3.0),
        at(-4.7, 7.6),
        at(-3.2, 9.2),
        at(0.0, 10.6),
        at(3.2, 10.0),
        at(4.5, 8.4),
        at(4.3, 4.0),
        at(2.8, -0.4),
    ]);
    let mut shapes = vec![Shape::filled(Paint::Near, fore), Shape::corners(Paint::NearArm, &sleeve)];
    shapes.push(Shape::filled(Paint::Near, hand));
    for finger in &FINGERS {
        let joints = finger.joints(angles);
        let thick = [1.2, 1.05, 0.95, 0.8];
        let bones = (0..3).map(|i| taper(joints[i], joints[i + 1], thick[i], thick[i + 1]));
        shapes.extend(apart(bones.collect()));
    }
    let [ball, middle, tip] = thumb(angles);
    shapes.extend(apart(vec![taper(ball, middle, 1.5, 1.25), taper(middle, tip, 1.25, 0.95)]));
    shapes.push(Shape::filled(Paint::Near, taper(THUMB.0, ball, 2.4, 1.5)));
    if figure.furniture.contains(&Furniture::RubberBand) {
        shapes.push(rubber_band(angles));
    }
    shapes.extend(figure.arrows.iter().flat_map(|one| arrow(at(0.0, 9.0), one, 0.4)));
    shapes
}

/// Round the end of the thumb and the fingers.
fn rubber_band(angles: &Angles) -> Shape {
    let joints: Vec<_> = FINGERS.iter().map(|finger| finger.joints(angles)[2]).collect();
    let [_, middle, tip] = thumb(angles);
    let thumb = at((middle.x + tip.x) / 2.0 + 0.9, (middle.y + tip.y) / 2.0);
    let way = [joints[0].plus(-1.0, 0.0), joints[1], joints[2], joints[3].plus(0.9, 0.0), thumb];
    Shape::line(Paint::Held, open(&way), 0.9)
}

/// Bones with a thin gap around each.
fn apart(bones: Vec<Vec<super::shape::Piece>>) -> Vec<Shape> {
    let gaps: Vec<_> = bones.iter().map(|bone| Shape::line(Paint::Ground, bone.clone(), 0.6)).collect();
    gaps.into_iter().chain(bones.into_iter().map(|bone| Shape::filled(Paint::Near, bone))).collect()
}

/// All shapes of the fist that turns about the forearm, in painting order. Thumb up is no turn; palm up turns it to the left.
pub(super) fn fist(figure: &Figure, angles: &Angles) -> Vec<Shape> {
    let up = heading(angles.of(Joint::ForearmTurn));
    let right = Point { x: up.y, y: -up.x };
    let put = |x: f64, y: f64| at(0.0, 0.0).along(right, x, y);
    let mut shapes = vec![Shape::filled(Paint::NearArm, ellipse(at(0.0, 0.0), right, 6.0, 6.2))];
    if figure.furniture.contains(&Furniture::Table) {
        shapes.push(Shape::filled(Paint::Furniture, rounded((-26.0, 26.0), (-8.4, -6.2), 0.8)));
    }
    if figure.furniture.contains(&Furniture::Hammer) {
        shapes.push(Shape::filled(Paint::Held, taper(put(0.6, -8.5), put(0.6, 20.0), 1.2, 1.0)));
        let head = [put(-5.0, 17.6), put(4.6, 18.2), put(7.4, 20.0), put(4.6, 21.8), put(-5.0, 22.4)];
        shapes.push(Shape::corners(Paint::Held, &head));
    }
    let back = limb(put(-3.4, -3.4), put(-3.4, 3.8), &[(0.0, 2.4, 2.6), (0.5, 3.0, 3.2), (1.0, 2.4, 2.6)]);
    shapes.push(Shape::filled(Paint::Near, back));
    let finger = |y: f64, end: f64, thick: f64| taper(put(-3.8, y), put(end, y), thick, thick * 0.92);
    shapes.extend(apart(vec![
        finger(-4.0, 3.0, 1.2),
        finger(-1.5, 3.7, 1.35),
        finger(1.2, 3.9, 1.4),
        finger(3.9, 3.5, 1.35),
    ]));
    shapes
        .extend(apart(vec![taper(put(4.6, 1.4), put(3.0, 5.0), 1.6, 1.4), taper(put(3.0, 5.0), put(-0.4, 6.2), 1.4, 1.1)]));
    shapes.extend(figure.arrows.iter().flat_map(|one| arrow(at(0.0, 0.0), one, 0.5)));
    shapes
}
