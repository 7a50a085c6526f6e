//! What is on a page: lines of text and shapes. Coordinates are points from the top left.

use crate::font::{Face, Run};
use crate::style::{Colour, Style};
use exercises::figure::{Piece, Point, Shape};

/// How a shape is painted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Paint {
    /// Its area.
    Fill(Colour),
    /// Its outline, with round ends and corners: width, and dash and gap.
    Line(Colour, f32, Option<(f32, f32)>),
}

/// The way in which a text runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// From left to right.
    Right,
    /// From below upwards.
    Up,
}

/// One thing on a page.
#[derive(Debug, Clone)]
pub enum Mark {
    /// A line of text.
    Text {
        /// Where its baseline begins.
        from: (f32, f32),
        /// Its weight.
        face: Face,
        /// Height of an em.
        size: f32,
        /// Its colour.
        ink: Colour,
        /// Its letters.
        run: Run,
        /// Where it runs.
        way: Way,
    },
    /// A shape.
    Shape {
        /// Its outline.
        outline: Vec<Piece>,
        /// How it is painted.
        paint: Paint,
    },
}

/// Share of a circle's radius at which the handles of a quarter of it are.
const HANDLE: f32 = 0.5523;

fn point(x: f32, y: f32) -> Point {
    Point { x: f64::from(x), y: f64::from(y) }
}

/// A line of text that begins at `from`, the start of its baseline.
pub fn text(style: Style, run: Run, from: (f32, f32)) -> Mark {
    Mark::Text { from, face: style.face, size: style.size, ink: style.ink, run, way: Way::Right }
}

/// The same, from below upwards.
pub fn text_up(style: Style, run: Run, from: (f32, f32)) -> Mark {
    Mark::Text { from, face: style.face, size: style.size, ink: style.ink, run, way: Way::Up }
}

/// The outline of a rectangle.
pub fn rectangle(x: f32, y: f32, width: f32, height: f32) -> Vec<Piece> {
    let (right, below) = (x + width, y + height);
    polygon(&[(x, y), (right, y), (right, below), (x, below)])
}

/// The outline of an area with straight sides.
pub fn polygon(corners: &[(f32, f32)]) -> Vec<Piece> {
    let mut outline: Vec<Piece> = corners.iter().map(|&(x, y)| Piece::Line(point(x, y))).collect();
    if let (Some(first), Some(&(x, y))) = (outline.first_mut(), corners.first()) {
        *first = Piece::Move(point(x, y));
        outline.push(Piece::Close);
    }
    outline
}

/// The outline of a circle.
pub fn circle(x: f32, y: f32, radius: f32) -> Vec<Piece> {
    let bent = radius * HANDLE;
    let at = |right: f32, down: f32| point(x + right, y + down);
    vec![
        Piece::Move(at(radius, 0.0)),
        Piece::Curve(at(radius, bent), at(bent, radius), at(0.0, radius)),
        Piece::Curve(at(-bent, radius), at(-radius, bent), at(-radius, 0.0)),
        Piece::Curve(at(-radius, -bent), at(-bent, -radius), at(0.0, -radius)),
        Piece::Curve(at(bent, -radius), at(radius, -bent), at(radius, 0.0)),
        Piece::Close,
    ]
}

/// A straight line.
pub fn line(from: (f32, f32), to: (f32, f32), colour: Colour, width: f32) -> Mark {
    let outline = vec![Piece::Move(point(from.0, from.1)), Piece::Line(point(to.0, to.1))];
    Mark::Shape { outline, paint: Paint::Line(colour, width, None) }
}

/// A filled shape.
pub fn filled(outline: Vec<Piece>, colour: Colour) -> Mark {
    Mark::Shape { outline, paint: Paint::Fill(colour) }
}

/// A shape of which the outline is drawn.
pub fn outlined(outline: Vec<Piece>, colour: Colour, width: f32) -> Mark {
    Mark::Shape { outline, paint: Paint::Line(colour, width, None) }
}

/// A part of a figure, moved by `to`.
pub fn part_of_figure(shape: &Shape, to: (f32, f32), colour: Colour) -> Mark {
    let moved = |at: Point| Point { x: at.x + f64::from(to.0), y: at.y + f64::from(to.1) };
    let outline = shape.outline.iter().map(|piece| match *piece {
        Piece::Move(a) => Piece::Move(moved(a)),
        Piece::Line(a) => Piece::Line(moved(a)),
        Piece::Curve(a, b, c) => Piece::Curve(moved(a), moved(b), moved(c)),
        Piece::Close => Piece::Close,
    });
    let paint = shape.stroke.map_or(Paint::Fill(colour), |stroke| {
        Paint::Line(colour, stroke.width as f32, stroke.dash.map(|(on, off)| (on as f32, off as f32)))
    });
    Mark::Shape { outline: outline.collect(), paint }
}
