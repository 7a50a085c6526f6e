//! The surroundings of the figure: furniture, plumb line, arrows.

use super::arrow;
use super::body::*;
use super::contact::{AnchoredBody, surface};
use super::outline::ellipse;
use super::shape::{Paint, Piece, Point, Shape, Stroke};
use super::side::{CHIN, on_head};
use super::skeleton::Skeleton;
use super::space::Vec3;
use crate::catalogue::{Contact, Figure, Landmark, View};

/// The parts that do not move, created once for all moments.
pub(super) struct Surroundings {
    behind: Vec<Shape>,
    before: Vec<Shape>,
    /// Whether ear, shoulder and hip are marked (they are compared with the plumb line).
    marked: bool,
}

/// The first pose, seen from the figure's view.
pub(super) struct Scene<'a> {
    pub figure: &'a Figure,
    pub first: Skeleton,
    pub last: Skeleton,
}

/// Projects a point in space onto the picture.
pub(super) fn flat(view: View, v: Vec3) -> Point {
    match view {
        View::Front | View::Above | View::Oblique => Point { x: -v.z, y: v.y },
        _ => Point { x: v.x, y: v.y },
    }
}

/// How far the eyes look down in the oblique view, in degrees.
pub(super) const LOOK_DOWN: f64 = 30.0;

/// The body as it is before it is projected.
pub(super) fn seen(view: View, body: Skeleton) -> Skeleton {
    if view == View::Oblique { body.seen_from_above(LOOK_DOWN) } else { body }
}

impl<'a> Scene<'a> {
    pub fn new(figure: &'a Figure, held: &AnchoredBody) -> Scene<'a> {
        Scene { figure, first: seen(figure.view, held.at(0.0)), last: seen(figure.view, held.at(1.0)) }
    }
}

impl Surroundings {
    pub fn new(scene: &Scene<'_>) -> Surroundings {
        let figure = scene.figure;
        let mut behind: Vec<_> = figure.furniture.iter().flat_map(|&piece| scene.piece(piece)).collect();
        if !matches!(figure.view, View::Above | View::Head | View::Oblique) {
            behind.push(scene.floor(&behind));
        }
        let mut before = scene.plumb();
        let size = if figure.view == View::Head { 0.5 } else { 1.0 };
        before.extend(figure.arrows.iter().flat_map(|arrow| arrow::arrow(scene.landmark(arrow.at), arrow, size)));
        Surroundings { behind, before, marked: figure.plumb && figure.view == View::Side }
    }

    /// The shapes painted before the body, so behind it.
    pub fn behind(&self) -> Vec<Shape> {
        self.behind.clone()
    }

    /// The shapes painted after the body, so in front of it. The marks that are compared with the plumb line move with the body.
    pub fn before(&self, body: &Skeleton) -> Vec<Shape> {
        let marks = [body.ear, body.near_arm.shoulder, body.spine.pelvis].map(|place| Point { x: place.x, y: place.y });
        let mut shapes = self.before.clone();
        if self.marked {
            let right = Point { x: 1.0, y: 0.0 };
            shapes.extend(marks.iter().map(|&mark| Shape::filled(Paint::Ground, ellipse(mark, right, 2.0, 2.0))));
            shapes.extend(marks.iter().map(|&mark| Shape::filled(Paint::Plumb, ellipse(mark, right, 1.4, 1.4))));
        }
        shapes
    }
}

impl Scene<'_> {
    pub(super) fn flat(&self, v: Vec3) -> Point {
        flat(self.figure.view, v)
    }

    /// The horizontal extent of the body over all poses.
    pub(super) fn width(&self) -> (f64, f64) {
        let xs = [&self.first, &self.last].into_iter().flat_map(|s| {
            let legs = [s.near_leg.ankle, s.far_leg.ankle, s.near_leg.knee];
            let arms = [&s.near_arm, &s.far_arm].map(|arm| arm.wrist + arm.hand * PALM);
            legs.into_iter().chain(arms).chain([s.ear, s.spine.pelvis]).map(|v| self.flat(v).x)
        });
        xs.fold((f64::MAX, f64::MIN), |(low, high), x| (low.min(x), high.max(x)))
    }

    fn plumb(&self) -> Vec<Shape> {
        if !self.figure.plumb {
            return Vec::new();
        }
        let x = self.flat(self.last.ear).x;
        let top = self.first.ear.y.max(self.last.ear.y) + 26.0;
        let sits = self.figure.contacts.first() == Some(&Contact::Seat);
        let end = if sits { self.last.spine.pelvis.y - SEAT - 20.0 } else { 10.0 + surface(&self.figure.furniture) };
        let string = vec![Piece::Move(Point { x, y: top }), Piece::Line(Point { x, y: end })];
        let bob = [(0.0, 4.0), (2.4, -0.6), (0.0, -8.0), (-2.4, -0.6)].map(|(dx, dy)| Point { x: x + dx, y: end + dy });
        vec![
            Shape { paint: Paint::Plumb, outline: string, stroke: Some(Stroke { width: 1.1, dash: Some((0.1, 3.0)) }) },
            Shape::corners(Paint::Plumb, &bob),
        ]
    }

    fn landmark(&self, landmark: Landmark) -> Point {
        self::landmark(self.figure.view, &self.first, landmark)
    }
}

/// Where a landmark is on the picture of a body.
pub(super) fn landmark(view: View, s: &Skeleton, landmark: Landmark) -> Point {
    let place = match landmark {
        Landmark::Chin => on_head(s, CHIN),
        Landmark::Crown => on_head(s, (0.0, 13.5)),
        Landmark::Shoulder => s.near_arm.shoulder,
        Landmark::Elbow => s.near_arm.elbow,
        Landmark::Hand => s.near_arm.wrist + s.near_arm.hand * PALM,
        Landmark::Pelvis => s.spine.pelvis,
        Landmark::Knee => s.near_leg.knee,
        Landmark::Heel => s.near_leg.foot_point(-HEEL, 3.0),
        Landmark::Toes => s.near_leg.foot_point(BALL + TOES, 2.0),
    };
    flat(view, place)
}
