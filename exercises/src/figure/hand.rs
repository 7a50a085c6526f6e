//! Close view of the forearm and the hand, seen from the thumb's side.

use super::arrow::arrow;
use super::motion::Angles;
use super::outline::{ellipse, limb, rounded, taper};
use super::shape::{Paint, Piece, Point, Shape};
use crate::catalogue::{Figure, Furniture, Joint, Landmark};

/// Visible length of the forearm, in centimetres.
const FOREARM: f64 = 19.0;
/// Length from wrist to knuckles, in centimetres.
const PALM: f64 = 9.2;

/// Lengths of the three bones of index, middle, ring and little finger.
const FINGERS: [[f64; 3]; 4] = [[4.6, 2.7, 2.2], [5.0, 3.1, 2.3], [4.7, 2.9, 2.3], [3.6, 2.1, 2.0]];
/// Half the thickness of a finger at knuckle, middle joint, end joint and tip.
const THICK: [f64; 4] = [1.36, 1.14, 1.0, 0.8];

/// The pose of the hand, computed from its angles.
struct Hand {
    /// Directions of the forearm, of the palm and of each bone of the fingers, and how far the thumb is bent in; in degrees.
    forearm: f64,
    palm: f64,
    bones: [f64; 3],
    thumb: f64,
    sleeve: Point,
    wrist: Point,
    /// Whether the palm is up: everything is then drawn upside down about the forearm, and the table is under its back.
    palm_up: bool,
}

fn heading(degrees: f64) -> Point {
    let (y, x) = degrees.to_radians().sin_cos();
    Point { x, y }
}

impl Hand {
    fn new(angles: &Angles) -> Hand {
        let forearm = angles.of(Joint::Forearm);
        let palm = forearm + angles.of(Joint::WristNear);
        let first = palm - angles.of(Joint::Knuckles);
        let second = first - angles.of(Joint::MiddleJoints);
        let sleeve = Point::default();
        Hand {
            forearm,
            palm,
            bones: [first, second, second - angles.of(Joint::EndJoints)],
            thumb: angles.of(Joint::Thumb),
            sleeve,
            wrist: sleeve.along(heading(forearm), FOREARM, 0.0),
            palm_up: angles.of(Joint::ForearmTurn) > 90.0,
        }
    }

    /// A point as it lies when the palm is up or down.
    fn turn(&self, point: Point) -> Point {
        Point { y: if self.palm_up { -point.y } else { point.y }, ..point }
    }

    fn turned(&self, shapes: Vec<Shape>) -> Vec<Shape> {
        shapes.iter().map(|shape| shape.map(1.0, |point| self.turn(point))).collect()
    }

    /// A point of the palm: `along` from the wrist toward the fingers, `back` toward the back of the hand.
    fn on_palm(&self, along: f64, back: f64) -> Point {
        self.wrist.along(heading(self.palm), along, back)
    }
}

/// All shapes of the close view, in painting order.
pub(super) fn picture(figure: &Figure, angles: &Angles, first: &Angles) -> Vec<Shape> {
    let (hand, start) = (Hand::new(angles), Hand::new(first));
    let mut shapes = Vec::new();
    if figure.furniture.contains(&Furniture::Table) {
        shapes.push(table(&start));
    }
    for finger in [3, 2, 1] {
        shapes.extend(hand.turned(self::finger(&hand, finger, Paint::Far)));
    }
    if figure.furniture.contains(&Furniture::Bag) {
        shapes.extend(bag(&hand));
    }
    if figure.furniture.contains(&Furniture::TowelRoll) {
        shapes.push(hand.turned(vec![roll(&hand)]).remove(0));
    }
    shapes.extend(hand.turned(forearm_and_palm(&hand)));
    shapes.extend(hand.turned(self::finger(&hand, 0, Paint::Near)));
    shapes.extend(hand.turned(thumb(&hand)));
    shapes.extend(figure.arrows.iter().flat_map(|one| arrow(start.turn(landmark(&start, one.at)), one, 0.4)));
    shapes
}

/// A rolled towel in the fist: between the palm and the middle bones of the fingers.
fn roll(hand: &Hand) -> Shape {
    let first = hand.on_palm(PALM - 1.0, 0.1).along(heading(hand.bones[0]), 4.0, 0.0);
    let palm = hand.on_palm(PALM - 4.6, -2.0);
    let middle = Point { x: (first.x + palm.x) / 2.0, y: (first.y + palm.y) / 2.0 };
    Shape::filled(Paint::Held, ellipse(middle, heading(hand.palm), 4.0, 3.6))
}

fn landmark(hand: &Hand, landmark: Landmark) -> Point {
    match landmark {
        Landmark::Elbow => hand.sleeve,
        _ => hand.on_palm(PALM, 0.0),
    }
}

fn table(hand: &Hand) -> Shape {
    let top = hand.sleeve.y - 3.8;
    // If the forearm lies on the table, the hand is beyond the table's edge; if the forearm stands on its elbow, it is not.
    let right = if hand.forearm < 30.0 { hand.wrist.x - 2.6 } else { hand.wrist.x + 16.0 };
    Shape::filled(Paint::Furniture, rounded((hand.sleeve.x, right), (top - 2.0, top), 0.6))
}

fn bag(hand: &Hand) -> Vec<Shape> {
    let grip = hand.turn(hand.on_palm(PALM, -0.6).along(heading(hand.bones[0]), 2.4, -1.0));
    let (top, half) = (grip.y - 9.0, 6.5);
    let p = |x: f64, y: f64| Point { x: grip.x + x, y };
    let strap = |x: f64| Shape::line(Paint::Furniture, vec![Piece::Move(p(0.0, grip.y)), Piece::Line(p(x, top))], 0.8);
    let sack = [(-half, top), (half, top), (half + 1.4, top - 13.0), (-half - 1.4, top - 13.0)];
    let mut shapes = vec![strap(-3.4), strap(3.4)];
    shapes.push(Shape::corners(Paint::Furniture, &sack.map(|(x, y)| p(x, y))));
    shapes
}

fn forearm_and_palm(hand: &Hand) -> Vec<Shape> {
    let along = heading(hand.forearm);
    // The back of the hand is to the left of the direction.
    let fore = limb(
        hand.sleeve.along(along, 8.0, 0.0),
        hand.wrist,
        &[(0.0, 3.0, 3.0), (0.4, 2.8, 2.8), (0.8, 2.4, 2.3), (1.0, 2.3, 2.2)],
    );
    // The sleeve is cut off square at the edge of the picture and slightly wider at its cuff.
    let sleeve = [(0.0, 4.0), (12.6, 3.4), (13.0, 3.1), (13.0, -3.1), (12.6, -3.4), (0.0, -4.0)];
    let sleeve = sleeve.map(|(far, left)| hand.sleeve.along(along, far, left));
    let palm = limb(
        hand.wrist,
        hand.on_palm(PALM - 1.0, -0.1),
        &[(0.0, 2.3, 2.2), (0.3, 2.2, 2.7), (0.6, 1.9, 2.4), (0.9, 1.6, 1.7), (1.0, 1.5, 1.5)],
    );
    vec![Shape::filled(Paint::Near, fore), Shape::corners(Paint::NearArm, &sleeve), Shape::filled(Paint::Near, palm)]
}

/// One finger; 0 is the index finger. The others are drawn slightly behind it, so that they can be distinguished.
fn finger(hand: &Hand, finger: usize, paint: Paint) -> Vec<Shape> {
    let behind = finger as f64;
    let knuckle = hand.on_palm(PALM - 1.0 - behind * behind * 0.13, 0.1 + behind * 0.5);
    let mut at = knuckle;
    let mut bones = Vec::new();
    for (bone, length) in FINGERS[finger].iter().enumerate() {
        let end = at.along(heading(hand.bones[bone] + behind * 3.0), *length, 0.0);
        bones.push(taper(at, end, THICK[bone], THICK[bone + 1]));
        at = end;
    }
    let mut shapes = apart(bones, paint);
    shapes.push(Shape::filled(paint, ellipse(knuckle, heading(hand.palm), 1.9, 1.4)));
    shapes
}

/// The thumb: beside the hand, or bent over the bent fingers, where it appears shortened.
fn thumb(hand: &Hand) -> Vec<Shape> {
    let turn = |part: f64, rest: f64| heading(hand.palm - rest - hand.thumb * part);
    let seen = 1.0 - 0.3 * (hand.thumb / 60.0).clamp(0.0, 1.0);
    let root = hand.on_palm(1.6, -0.8);
    let ball = root.along(turn(0.5, 30.0), 4.0 * seen, 0.0);
    let middle = ball.along(turn(0.3, 22.0), 3.2 * seen, 0.0);
    let tip = middle.along(turn(-0.5, 12.0), 2.4 * seen, 0.0);
    let mut shapes = apart(vec![taper(ball, middle, 1.45, 1.2), taper(middle, tip, 1.2, 0.9)], Paint::Near);
    // The ball of the thumb belongs to the palm, so there is no gap between them.
    shapes.push(Shape::filled(Paint::Near, taper(root, ball, 2.2, 1.45)));
    shapes
}

/// Bones of one colour with a thin gap around each.
fn apart(bones: Vec<Vec<Piece>>, paint: Paint) -> Vec<Shape> {
    let gaps: Vec<_> = bones.iter().map(|bone| Shape::line(Paint::Ground, bone.clone(), 0.6)).collect();
    gaps.into_iter().chain(bones.into_iter().map(|bone| Shape::filled(paint, bone))).collect()
}
