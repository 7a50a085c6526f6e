//! Draws a figure from its poses: tapered limbs, a face, hands and feet, its surroundings, and arrows for the movement.
//!
//! [`draw`] returns painted shapes for one moment of the movement; the window or the page only paints them. A [`Stage`] keeps what
//! all moments share, including a frame that contains the whole movement, so that a moving figure does not jump.

mod arrow;
mod body;
mod contact;
mod feet;
mod front;
mod furniture;
mod hand;
mod handle;
mod held;
mod motion;
mod outline;
mod palm;
mod phone;
mod room;
mod shape;
mod side;
mod skeleton;
mod space;
mod stage;
mod surroundings;

pub use handle::{Handle, Way, longest_way, phase_of};
pub use shape::{Paint, Piece, Point, Shape, Stroke};
pub use stage::{Size, Stage};

use crate::catalogue::{Contact, Figure};
use contact::AnchoredBody;

/// The figure at `phase` (0 is its first pose, 1 its last; the movement between starts and ends gently), fitted into `size`.
///
/// Shapes are in the order of painting. The frame is the same for all phases.
pub fn draw(figure: &Figure, phase: f64, size: Size) -> Vec<Shape> {
    Stage::new(figure, size).draw(phase)
}

/// How far each contact of a figure is from what it should rest on at `phase`, for checking figures while they are drawn: along the
/// surface and away from it, in centimetres on a body 170 cm tall.
pub fn gaps(figure: &Figure, phase: f64) -> Vec<(Contact, f64, f64)> {
    AnchoredBody::new(figure).gaps(phase)
}

/// The same picture seen in a mirror: what was done by the right side is done by the left. Near is then the figure's left.
pub fn mirrored(shapes: &[Shape], size: Size) -> Vec<Shape> {
    shapes.iter().map(|shape| shape.map(1.0, |point| Point { x: size.width - point.x, ..point })).collect()
}

#[cfg(test)]
mod tests;
