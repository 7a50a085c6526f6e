//! Draws a figure from its poses: tapered limbs, a face, hands and feet, its surroundings, and arrows for the movement.
//!
//! [`draw`] returns painted shapes for one moment of the movement; the window or the page only paints them. A [`Stage`] keeps what
//! all moments share, including a frame that contains the whole movement, so that a moving figure does not jump.

mod arrow;
mod body;
mod contact;
mod front;
mod furniture;
mod hand;
mod motion;
mod outline;
mod phone;
mod shape;
mod side;
mod skeleton;
mod space;
mod stage;
mod surroundings;

pub use shape::{Paint, Piece, Point, Shape, Stroke};
pub use stage::{Size, Stage};

use crate::catalogue::Figure;

/// The figure at `phase` (0 is its first pose, 1 its last; the movement between starts and ends gently), fitted into `size`.
///
/// Shapes are in the order of painting. The frame is the same for all phases.
pub fn draw(figure: &Figure, phase: f64, size: Size) -> Vec<Shape> {
    Stage::new(figure, size).draw(phase)
}

/// The same picture seen in a mirror: what was done by the right side is done by the left. Near is then the figure's left.
pub fn mirrored(shapes: &[Shape], size: Size) -> Vec<Shape> {
    shapes.iter().map(|shape| shape.map(1.0, |point| Point { x: size.width - point.x, ..point })).collect()
}

#[cfg(test)]
mod tests;
