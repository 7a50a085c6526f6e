//! The figures of an exercise: the start and the end of its movement.

use crate::mark::{Mark, part_of_figure};
use crate::style::{mm, of_paint};
use exercises::catalogue::Figure;
use exercises::figure::{Shape, Size, Stage, mirrored};

/// How a figure is shown.
pub struct Pictures {
    /// Width and height of each picture.
    pub size: (f32, f32),
    /// The start and the end of the movement, or a single picture if nothing moves.
    pub shapes: Vec<Vec<Shape>>,
    /// Whether the pictures stand beside each other, not below each other.
    pub beside: bool,
}

/// Greatest width of two pictures beside each other, and of one by itself.
const WIDE: (f32, f32) = (mm(78.0), mm(62.0));
/// Greatest height of a picture: beside another, above another, alone.
const HIGH: (f32, f32, f32) = (mm(50.0), mm(38.0), mm(46.0));
/// A picture that would be lower than this beside another stands above it.
const LOW: f32 = mm(31.0);
/// Room between two pictures.
pub const BETWEEN: f32 = mm(3.5);

impl Pictures {
    /// The pictures of a figure; of somebody's left side if `left`.
    pub fn of(figure: &Figure, left: bool) -> Pictures {
        let aspect = Stage::aspect(figure) as f32;
        let moves = figure.poses.first() != figure.poses.last();
        let high_beside = HIGH.0.min((WIDE.0 - BETWEEN) / 2.0 / aspect);
        let beside = moves && high_beside >= LOW;
        let alone = if moves { HIGH.1 } else { HIGH.2 };
        let high = if beside { high_beside } else { alone.min(WIDE.1 / aspect) };
        let size = Size { width: f64::from(high * aspect), height: f64::from(high) };
        let stage = Stage::new(figure, size);
        let phases: &[f64] = if moves { &[0.0, 1.0] } else { &[0.0] };
        let turned = |shapes: Vec<Shape>| if left { mirrored(&shapes, size) } else { shapes };
        let shapes = phases.iter().map(|phase| turned(stage.draw(*phase))).collect();
        Pictures { size: (high * aspect, high), shapes, beside }
    }

    /// The width of all pictures together.
    pub fn width(&self) -> f32 {
        if self.beside { 2.0 * self.size.0 + BETWEEN } else { self.size.0 }
    }
}

/// A picture with its upper left corner at `to`.
pub fn marks(shapes: &[Shape], to: (f32, f32)) -> Vec<Mark> {
    shapes.iter().map(|shape| part_of_figure(shape, to, of_paint(shape.paint))).collect()
}
