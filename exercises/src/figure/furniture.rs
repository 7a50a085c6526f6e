//! Floor and furniture, positioned by the body that they support.

use super::body::*;
use super::contact::surface;
use super::outline::{rounded, taper};
use super::shape::{Paint, Piece, Point, Shape};
use super::surroundings::Scene;
use crate::catalogue::{Contact, Furniture, View};

impl Scene<'_> {
    /// The floor. It reaches a little beyond the body and everything that stands on it.
    pub(super) fn floor(&self, standing: &[Shape]) -> Shape {
        let (left, right) = self.width();
        let xs = standing.iter().flat_map(|shape| &shape.outline).flat_map(|piece| piece.points()).map(|point| point.x);
        let (left, right) = xs.fold((left - 20.0, right + 20.0), |(low, high), x| (low.min(x), high.max(x)));
        furniture(rounded((left - 6.0, right + 6.0), (-1.6, 0.0), 0.8))
    }

    /// One piece of furniture, positioned for the first pose.
    pub(super) fn piece(&self, piece: Furniture) -> Vec<Shape> {
        match piece {
            Furniture::Chair => self.chair(),
            Furniture::Worktop => self.worktop(),
            Furniture::Wall => self.wall(),
            Furniture::Mat if self.figure.view == View::Above => vec![self.mat_from_above()],
            Furniture::Mat if self.figure.view == View::Oblique => vec![self.mat_seen_oblique()],
            Furniture::Mat => {
                let (left, right) = self.width();
                vec![furniture(rounded((left - 20.0, right + 20.0), (0.0, MAT), 1.2))]
            }
            Furniture::Pillow => self.under_head(),
            Furniture::FoldedTowel if self.figure.furniture.contains(&Furniture::Mat) => self.under_head(),
            Furniture::FoldedTowel | Furniture::Cushion | Furniture::Foam => self.underfoot(piece),
            Furniture::Table => self.table(),
            Furniture::WallAhead => self.wall_ahead(),
            Furniture::WallBeside => self.wall_beside(),
            Furniture::Doorway => self.doorway(),
            Furniture::Door => self.door(),
            Furniture::Step => self.step(),
            Furniture::Handrail => self.handrail(),
            Furniture::Mark => self.mark(),
            // These follow the movement.
            Furniture::Bag | Furniture::Weight | Furniture::Hammer | Furniture::TowelRoll | Furniture::RubberBand => {
                Vec::new()
            }
        }
    }

    fn chair(&self) -> Vec<Shape> {
        let pelvis = self.flat(self.first.spine.pelvis);
        let top = pelvis.y - SEAT;
        if self.figure.view == View::Front {
            return chair_from_front(pelvis.x, top);
        }
        let (back, front) = (pelvis.x - 20.0, pelvis.x + 23.0);
        vec![
            post((back + 1.0, top - 2.0), (back - 2.0, 1.4)),
            post((front - 2.0, top - 2.0), (front + 1.0, 1.4)),
            post((back + 1.0, top - 2.0), (back - 7.0, top + 46.0)),
            furniture(rounded((back - 1.0, front + 1.5), (top - 3.4, top), 1.7)),
        ]
    }

    /// In front of the body, or beside it if seen from the front. If the hands rest on the worktop, it is under them.
    fn worktop(&self) -> Vec<Shape> {
        let edge = self.worktop_edge();
        cupboard(edge.x, edge.y)
    }

    /// Its upper edge on the side of the body.
    pub(super) fn worktop_edge(&self) -> Point {
        let held = [Contact::NearHand, Contact::FarHand].iter().any(|c| self.figure.contacts.contains(c));
        let hand = self.flat(self.first.near_arm.wrist + self.first.near_arm.hand * PALM);
        let stands = [self.first.near_leg.ankle, self.first.far_leg.ankle]
            .map(|ankle| self.flat(ankle).x)
            .into_iter()
            .fold(f64::MIN, f64::max);
        match self.figure.view {
            View::Front | View::Above | View::Oblique => Point { x: stands + 36.0, y: 90.0 },
            _ if held => hand.plus(-7.0, -2.4),
            _ => Point { x: stands + 38.0, y: 90.0 },
        }
    }

    /// A wall behind the back; not visible from the front.
    fn wall(&self) -> Vec<Shape> {
        if self.figure.view == View::Front {
            return Vec::new();
        }
        // Elbows that are pressed back against the wall are as far back as it.
        let elbows = [&self.first, &self.last].into_iter().map(|s| s.near_arm.elbow.x - ELBOW);
        let backs = [&self.first, &self.last].into_iter().flat_map(|s| {
            // The wall is as far behind the spine as the trunk is thick at that height.
            [(44.0, 10.2), (-2.0, 11.3)].map(|(height, thick)| {
                let (place, frame) = s.spine.at(height);
                (place - frame.front * thick).x
            })
        });
        let x = backs.chain(elbows).fold(f64::MAX, f64::min);
        vec![furniture(rounded((x - 6.0, x), (0.0, 182.0), 1.0))]
    }

    /// A cushion that fills the space between the head and the mat.
    fn under_head(&self) -> Vec<Shape> {
        let head = self.flat(self.first.ear);
        if self.figure.view == View::Oblique {
            let at = head.plus(0.0, -8.0);
            return vec![
                Shape::filled(Paint::Ground, rounded((at.x - 17.5, at.x + 16.5), (at.y - 10.5, at.y + 8.5), 6.0)),
                furniture(rounded((at.x - 16.0, at.x + 15.0), (at.y - 9.0, at.y + 7.0), 5.0)),
            ];
        }
        let half = if matches!(self.figure.view, View::Front | View::Oblique) { 6.6 } else { 8.8 };
        let top = (head.y - half).max(MAT + 1.4);
        vec![furniture(rounded((head.x - 13.0, head.x + 12.0), (MAT, top), (top - MAT) * 0.45))]
    }

    fn underfoot(&self, piece: Furniture) -> Vec<Shape> {
        let kneels = self.figure.contacts.first() == Some(&Contact::NearKnee);
        let under = if kneels { self.first.near_leg.knee } else { self.first.near_leg.foot_point(6.0, 0.0) };
        let middle = self.flat(under).x;
        let height = surface(&[piece]);
        let half = 22.0;
        match piece {
            Furniture::FoldedTowel => (0..3)
                .map(|i| f64::from(i) * 0.9)
                .map(|y| furniture(rounded((middle - half, middle + half), (y, y + 0.7), 0.35)))
                .collect(),
            _ => vec![furniture(rounded((middle - half, middle + half), (0.0, height + 0.8), 2.6))],
        }
    }
}

pub(super) fn furniture(outline: Vec<Piece>) -> Shape {
    Shape::filled(Paint::Furniture, outline)
}

pub(super) fn post(from: (f64, f64), to: (f64, f64)) -> Shape {
    furniture(taper(Point { x: from.0, y: from.1 }, Point { x: to.0, y: to.1 }, 1.7, 1.4))
}

fn chair_from_front(middle: f64, top: f64) -> Vec<Shape> {
    let rest = rounded((middle - 20.0, middle + 20.0), (top + 18.0, top + 46.0), 3.0);
    vec![
        post((middle - 19.0, top - 2.0), (middle - 20.0, 1.4)),
        post((middle + 19.0, top - 2.0), (middle + 20.0, 1.4)),
        post((middle - 18.0, top), (middle - 18.0, top + 30.0)),
        post((middle + 18.0, top), (middle + 18.0, top + 30.0)),
        furniture(rest),
        furniture(rounded((middle - 22.0, middle + 22.0), (top - 3.4, top), 1.7)),
    ]
}

/// A kitchen cupboard with a drawer under its worktop.
fn cupboard(left: f64, top: f64) -> Vec<Shape> {
    let line = |outline| Shape::line(Paint::Furniture, outline, 1.6);
    let across = |from: f64, to: f64, y: f64| {
        line(vec![Piece::Move(Point { x: left + from, y }), Piece::Line(Point { x: left + to, y })])
    };
    let foot = |x: f64| line(vec![Piece::Move(Point { x: left + x, y: 0.8 }), Piece::Line(Point { x: left + x, y: 4.0 })]);
    vec![
        furniture(rounded((left, left + 40.0), (top - 3.6, top), 1.4)),
        line(rounded((left + 5.0, left + 36.0), (4.0, top - 2.0), 1.0)),
        across(5.0, 36.0, top - 18.0),
        across(17.0, 24.0, top - 11.0),
        foot(8.0),
        foot(33.0),
    ]
}
