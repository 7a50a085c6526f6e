//! The room around the figure: walls, doors, table, step, handrail; positioned by the body that touches them.

use super::body::*;
use super::furniture::{furniture, post};
use super::outline::{ellipse, rounded};
use super::shape::{Paint, Point, Shape};
use super::skeleton::Arm;
use super::space::Vec3;
use super::surroundings::{LOOK_DOWN, Scene};
use crate::catalogue::{Contact, Furniture, View};

/// Height of walls and doors.
const TALL: f64 = 182.0;

impl Scene<'_> {
    /// The positions of both arms' elbows, wrists and fingertips at start and end, with the thickness of each.
    fn arms(&self) -> impl Iterator<Item = (Point, f64)> + '_ {
        let points = |arm: &Arm| [(arm.elbow, ELBOW), (arm.wrist, WRIST), (arm.wrist + arm.hand * (PALM * 1.85), 1.5)];
        let bodies = [&self.first, &self.last].into_iter().flat_map(|s| [&s.near_arm, &s.far_arm]);
        bodies.flat_map(points).map(|(place, thick)| (self.flat(place), thick))
    }

    /// A wall in front of the body, as far away as the arms reach.
    pub(super) fn wall_ahead(&self) -> Vec<Shape> {
        let x = self.ahead();
        let top = self.arms().map(|(point, _)| point.y + 12.0).fold(TALL, f64::max);
        vec![furniture(rounded((x, x + 6.0), (0.0, top), 1.0))]
    }

    fn ahead(&self) -> f64 {
        self.arms().map(|(point, thick)| point.x + thick).fold(f64::MIN, f64::max)
    }

    /// A wall that the near side of the last position touches.
    pub(super) fn wall_beside(&self) -> Vec<Shape> {
        let s = &self.last;
        let points = [
            (s.near_arm.elbow, ELBOW),
            (s.near_arm.wrist, WRIST),
            (s.near_arm.wrist + s.near_arm.hand * PALM, 2.8),
            (s.near_leg.ankle, 4.8),
            (s.near_leg.knee, 5.6),
        ];
        let x = points.iter().map(|&(place, thick)| self.flat(place).x - thick).fold(f64::MAX, f64::min);
        vec![furniture(rounded((x - 6.0, x), (0.0, TALL), 1.0))]
    }

    /// Two posts behind the forearms and a lintel.
    pub(super) fn doorway(&self) -> Vec<Shape> {
        let middle = self.flat(self.last.spine.pelvis).x;
        let half = (self.flat(self.last.near_arm.elbow).x - middle).abs();
        let side =
            |sign: f64| furniture(rounded((middle + sign * half - 4.0, middle + sign * half + 4.0), (0.0, 206.0), 1.0));
        vec![side(-1.0), side(1.0), furniture(rounded((middle - half - 4.0, middle + half + 4.0), (199.0, 207.0), 1.0))]
    }

    /// Where a band is fastened to the door: at the height of the hand.
    pub(super) fn door_knob(&self) -> Point {
        let hand = self.flat(self.last.near_arm.wrist);
        Point { x: self.width().1.max(self.ahead()) + 34.0, y: hand.y }
    }

    pub(super) fn door(&self) -> Vec<Shape> {
        let knob = self.door_knob();
        let handle = Point { x: knob.x - 1.2, y: 100.0 };
        let right = Point { x: 1.0, y: 0.0 };
        vec![
            furniture(rounded((knob.x, knob.x + 5.0), (0.0, TALL), 1.0)),
            furniture(ellipse(handle, right, 2.4, 1.6)),
            Shape::filled(Paint::Held, ellipse(knob, right, 2.2, 2.2)),
        ]
    }

    /// A table whose top is under the hands.
    pub(super) fn table(&self) -> Vec<Shape> {
        if self.figure.view != View::Side {
            return Vec::new();
        }
        let hands = [Contact::NearHand, Contact::NearHandSlides].iter().any(|c| self.figure.contacts.contains(c));
        let arm = if hands { &self.first.near_arm } else { &self.first.far_arm };
        let top = arm.wrist.y - WRIST;
        let left = self.arms().map(|(point, _)| point).filter(|point| (point.y - top).abs() < 8.0).map(|point| point.x);
        let left = left.fold(f64::MAX, f64::min) - 3.0;
        vec![
            post((left + 6.0, top - 2.0), (left + 6.0, 1.4)),
            post((left + 64.0, top - 2.0), (left + 64.0, 1.4)),
            furniture(rounded((left, left + 70.0), (top - 3.4, top), 1.2)),
        ]
    }

    /// A step under the near foot.
    pub(super) fn step(&self) -> Vec<Shape> {
        let foot = |along: f64| self.flat(self.first.near_leg.foot_point(along, 0.0)).x;
        let far = [&self.first, &self.last].map(|s| s.far_leg.ankle);
        let lower = if far[0].y < far[1].y { far[0] } else { far[1] };
        let on_toes = self.figure.contacts.first() == Some(&Contact::NearToes);
        let (left, right) = if on_toes {
            (foot(BALL) - 3.0, foot(BALL) + 34.0)
        } else if self.flat(lower).x < foot(0.0) {
            (foot(-HEEL) - 2.0, foot(-HEEL) + 42.0)
        } else {
            (foot(BALL + TOES) - 42.0, foot(BALL + TOES))
        };
        vec![furniture(rounded((left, right), (0.0, STEP), 1.2))]
    }

    /// A rail on the far side, with a post at each end.
    pub(super) fn handrail(&self) -> Vec<Shape> {
        let y = self.first.far_arm.wrist.y - WRIST;
        let (left, right) = self.width();
        let (left, right) = (left - 22.0, right + 22.0);
        vec![
            post((left + 4.0, y), (left + 4.0, 1.4)),
            post((right - 4.0, y), (right - 4.0, 1.4)),
            furniture(rounded((left, right), (y - 3.2, y), 1.6)),
        ]
    }

    /// Where the mark on the wall is: straight ahead of the eyes of somebody sitting or standing upright.
    pub(super) fn mark_at(&self) -> Point {
        Point { x: self.width().1 + 46.0, y: self.flat(self.first.ear).y + 1.7 }
    }

    pub(super) fn mark(&self) -> Vec<Shape> {
        let mark = self.mark_at();
        vec![
            furniture(rounded((mark.x + 1.0, mark.x + 7.0), (0.0, TALL), 1.0)),
            Shape::filled(Paint::Held, ellipse(mark, Point { x: 1.0, y: 0.0 }, 2.2, 3.4)),
        ]
    }

    /// A mat under somebody lying on the side, seen from the front and a little from above.
    pub(super) fn mat_seen_oblique(&self) -> Shape {
        let (left, right) = self.width();
        // The mat's front edge is nearer than the knees, its back edge behind the feet.
        let edge = |ahead: f64| Vec3 { x: ahead, y: MAT, z: 0.0 }.looked_down_on(LOOK_DOWN).y;
        let knees = [&self.first, &self.last].into_iter().flat_map(|s| [s.near_leg.knee.y, s.far_leg.knee.y]);
        let lowest = knees.fold(edge(46.0), f64::min);
        furniture(rounded((left - 18.0, right + 18.0), (lowest - 12.0, edge(-48.0)), 5.0))
    }

    /// A mat under somebody lying, seen from above; the picture is turned afterwards.
    pub(super) fn mat_from_above(&self) -> Shape {
        let (foot, head) = (self.first.near_leg.ankle.y.min(self.last.near_leg.ankle.y), self.first.ear.y);
        let wide = if self.figure.furniture.contains(&Furniture::Pillow) { 42.0 } else { 38.0 };
        furniture(rounded((-wide, wide), (foot.min(-45.0) - 22.0, head + 26.0), 4.0))
    }
}
