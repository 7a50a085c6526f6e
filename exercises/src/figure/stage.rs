//! The frame in which a figure moves.

use super::contact::AnchoredBody;
use super::held::HeldThings;
use super::phone::{self, Phone};
use super::shape::{Point, Shape};
use super::skeleton::Skeleton;
use super::surroundings::{Scene, Surroundings, seen};
use super::{feet, front, hand, palm, side};
use crate::catalogue::{Eyes, Figure, Joint, View};
use crate::sway::SetUp;

/// The size of a picture, in the unit of the painter (pixels, points).
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Size {
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
}

/// A figure with its frame, ready to be drawn at any phase. Finding the frame costs as much as drawing 25 moments, so create one
/// stage per moving figure and keep it.
pub struct Stage {
    figure: Figure,
    held: AnchoredBody,
    around: Surroundings,
    held_things: HeldThings,
    phone: Option<Phone>,
    fit: Fit,
}

/// Number of intervals of the movement that are examined to find the frame.
const SAMPLES: u32 = 24;

/// Share of a picture's width and height that stays free on each side, so that no moment between two samples touches the edge.
const MARGIN: f64 = 0.015;

/// A box that contains every moment of a figure, in centimetres, y up.
#[derive(Debug, Clone, Copy)]
struct Extent {
    low: Point,
    high: Point,
}

/// Maps centimetres, y up, to the picture, y down.
#[derive(Debug, Clone, Copy)]
struct Fit {
    scale: f64,
    left: f64,
    top: f64,
}

impl Stage {
    /// Finds the frame that contains every moment of the figure.
    pub fn new(figure: &Figure, size: Size) -> Stage {
        Stage::set(figure, None, size)
    }

    /// The figure of a balance trial, with the phone and the hands positioned for the set-up, and a support beside it even if the
    /// exercise has none.
    pub fn of_trial(figure: &Figure, set_up: SetUp, size: Size) -> Stage {
        Stage::set(&phone::with_support(figure), Some(set_up), size)
    }

    fn set(figure: &Figure, set_up: Option<SetUp>, size: Size) -> Stage {
        let held = AnchoredBody::new(figure);
        let scene = Scene::new(figure, &held);
        let (around, phone) = (Surroundings::new(&scene), set_up.and_then(|set_up| Phone::new(set_up, &scene)));
        let fit = Fit { scale: 1.0, left: 0.0, top: 0.0 };
        let held_things = HeldThings::new(&scene);
        let mut stage = Stage { figure: figure.clone(), held, around, held_things, phone, fit };
        stage.fit = Fit::new(stage.extent(), size);
        stage
    }

    /// Another figure in the frame of this one, while it is being dragged.
    pub fn with_figure(&self, figure: &Figure) -> Stage {
        let held = AnchoredBody::new(figure);
        let scene = Scene::new(figure, &held);
        let (around, held_things) = (Surroundings::new(&scene), HeldThings::new(&scene));
        Stage { figure: figure.clone(), held, around, held_things, phone: None, fit: self.fit }
    }

    /// Width divided by height of everything that the figure ever covers, for choosing a size without unused space.
    pub fn aspect(figure: &Figure) -> f64 {
        let stage = Stage::new(figure, Size { width: 1.0, height: 1.0 });
        let Extent { low, high } = stage.extent();
        (high.x - low.x) / (high.y - low.y)
    }

    /// The figure at a phase.
    pub fn draw(&self, phase: f64) -> Vec<Shape> {
        self.shapes(phase).iter().map(|shape| shape.map(self.fit.scale, |point| self.fit.place(point))).collect()
    }

    /// What it shows.
    pub(super) fn figure(&self) -> &Figure {
        &self.figure
    }

    /// The body at a phase.
    pub(super) fn body(&self, phase: f64) -> Skeleton {
        self.held.at(phase)
    }

    /// Where a point is in the picture, in the unit of the painter; the point is in centimetres, y up.
    pub(super) fn place(&self, point: Point) -> Point {
        self.fit.place(point)
    }

    fn shapes(&self, phase: f64) -> Vec<Shape> {
        let eyes = self.figure.eyes.unwrap_or(Eyes::Open);
        let angles = self.held.angles(phase);
        let body = seen(self.figure.view, self.held.at(phase));
        let body = self.phone.as_ref().map_or(body, |phone| phone.held(body));
        let painted = match self.figure.view {
            View::Hand => return hand::picture(&self.figure, &angles, &self.held.angles(0.0)),
            View::Palm => return palm::palm(&self.figure, &angles),
            View::Fist => return palm::fist(&self.figure, &angles),
            View::Feet => return feet::both_from_above(&self.figure, &angles),
            View::Foot => return feet::inner_side(&self.figure, &angles),
            View::Head => side::bust(&body, eyes, angles.of(Joint::Jaw)),
            View::Front | View::Above | View::Oblique => front::body(&body, eyes),
            View::Side => side::body(&body, eyes),
        };
        let mut shapes = self.around.behind();
        shapes.extend(self.held_things.behind(&body));
        shapes.extend(painted);
        shapes.extend(self.held_things.before(&body));
        shapes.extend(self.phone.iter().flat_map(|phone| phone.shapes(&body)));
        shapes.extend(self.around.before(&body));
        if self.figure.view == View::Above {
            // Somebody standing, seen from the front, becomes somebody lying with the head on the left, seen from above.
            return shapes.iter().map(|shape| shape.map(1.0, |point| Point { x: -point.y, y: point.x })).collect();
        }
        shapes
    }

    fn extent(&self) -> Extent {
        let mut extent = Extent { low: Point { x: f64::MAX, y: f64::MAX }, high: Point { x: f64::MIN, y: f64::MIN } };
        for sample in 0..=SAMPLES {
            self.shapes(f64::from(sample) / f64::from(SAMPLES)).iter().for_each(|shape| extent.take_in(shape));
        }
        extent
    }
}

impl Extent {
    fn take_in(&mut self, shape: &Shape) {
        let half = shape.stroke.map_or(0.0, |stroke| stroke.width / 2.0);
        for point in shape.outline.iter().flat_map(|piece| piece.points()) {
            self.low = Point { x: self.low.x.min(point.x - half), y: self.low.y.min(point.y - half) };
            self.high = Point { x: self.high.x.max(point.x + half), y: self.high.y.max(point.y + half) };
        }
    }
}

impl Fit {
    fn new(Extent { low, high }: Extent, size: Size) -> Fit {
        let (wide, tall) = ((high.x - low.x).max(1.0), (high.y - low.y).max(1.0));
        let room = 1.0 - 2.0 * MARGIN;
        let scale = (size.width * room / wide).min(size.height * room / tall);
        // Centred horizontally, standing on the lower edge.
        let top = size.height * (1.0 - MARGIN) + low.y * scale;
        Fit { scale, left: (size.width - wide * scale) / 2.0 - low.x * scale, top }
    }

    fn place(&self, point: Point) -> Point {
        Point { x: self.left + point.x * self.scale, y: self.top - point.y * self.scale }
    }
}
