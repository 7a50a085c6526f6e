//! The shapes that make up a figure: closed areas and strokes, each with the part that it represents.

use crate::choice::array;
use strum::VariantArray;

/// The part that a shape plays; window and paper choose the colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Paint {
    /// Head, trunk and near leg.
    Near,
    /// The near arm and the hair, which must stand out from the body.
    NearArm,
    /// Eyes: dark on the body in both themes.
    Eyes,
    /// Far arm and far leg.
    Far,
    /// The background's colour, for thin gaps between parts of one colour.
    Ground,
    /// Furniture and floor.
    Furniture,
    /// What is held: a band, a stick, a weight.
    Held,
    /// The phone of a balance trial.
    Phone,
    /// The plumb line.
    Plumb,
    /// An arrow that shows where to move or to pull.
    Arrow,
}

impl Paint {
    /// Every part, in no order that matters.
    pub const ALL: [Paint; Paint::VARIANTS.len()] = array(Paint::VARIANTS);

    /// A stable name, for a style sheet's class.
    pub fn name(self) -> &'static str {
        match self {
            Paint::Near => "near",
            Paint::NearArm => "near-arm",
            Paint::Eyes => "eyes",
            Paint::Far => "far",
            Paint::Ground => "ground",
            Paint::Furniture => "furniture",
            Paint::Held => "held",
            Paint::Phone => "phone",
            Paint::Plumb => "plumb",
            Paint::Arrow => "arrow",
        }
    }
}

/// A point of the picture: x points to the right; y points down in the result of [`super::draw`], and up while the figure is built.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Point {
    /// Distance to the right.
    pub x: f64,
    /// Distance down (up while the figure is built).
    pub y: f64,
}

/// One piece of an outline.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Piece {
    /// Begins a new outline here.
    Move(Point),
    /// Straight to here.
    Line(Point),
    /// A cubic Bézier curve: first handle, second handle, end.
    Curve(Point, Point, Point),
    /// Straight back to the beginning.
    Close,
}

/// How a line is drawn. Its ends and corners are round.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Stroke {
    /// Width, in the unit of the points.
    pub width: f64,
    /// Length of a dash and of the gap after it; `None` for an unbroken line.
    pub dash: Option<(f64, f64)>,
}

/// One painted area or line. A list of shapes is painted from first to last.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Shape {
    /// The part it represents.
    pub paint: Paint,
    /// Its outline.
    pub outline: Vec<Piece>,
    /// How a line along the outline is drawn; `None` fills the outline (nonzero rule).
    pub stroke: Option<Stroke>,
}

impl Point {
    pub(super) fn plus(self, right: f64, up: f64) -> Point {
        Point { x: self.x + right, y: self.y + up }
    }

    pub(super) fn minus(self, other: Point) -> Point {
        Point { x: self.x - other.x, y: self.y - other.y }
    }

    pub(super) fn length(self) -> f64 {
        self.x.hypot(self.y)
    }

    /// The point at distance `far` along the direction `along` and `left` to its left.
    pub(super) fn along(self, along: Point, far: f64, left: f64) -> Point {
        self.plus(along.x * far - along.y * left, along.y * far + along.x * left)
    }

    /// This direction with length 1; if its length is 0, the direction to the right.
    pub(super) fn unit(self) -> Point {
        let length = self.length();
        if length < 1e-9 { Point { x: 1.0, y: 0.0 } } else { Point { x: self.x / length, y: self.y / length } }
    }
}

impl Piece {
    /// The points of this piece, handles included.
    pub fn points(&self) -> impl Iterator<Item = Point> {
        let points = match *self {
            Piece::Move(a) | Piece::Line(a) => [Some(a), None, None],
            Piece::Curve(a, b, c) => [Some(a), Some(b), Some(c)],
            Piece::Close => [None; 3],
        };
        points.into_iter().flatten()
    }

    fn map(self, to: impl Fn(Point) -> Point) -> Piece {
        match self {
            Piece::Move(a) => Piece::Move(to(a)),
            Piece::Line(a) => Piece::Line(to(a)),
            Piece::Curve(a, b, c) => Piece::Curve(to(a), to(b), to(c)),
            Piece::Close => Piece::Close,
        }
    }
}

impl Shape {
    pub(super) fn filled(paint: Paint, outline: Vec<Piece>) -> Shape {
        Shape { paint, outline, stroke: None }
    }

    /// An area with straight sides.
    pub(super) fn corners(paint: Paint, points: &[Point]) -> Shape {
        let mut outline: Vec<_> = points.iter().map(|&point| Piece::Line(point)).collect();
        if let Some(first) = outline.first_mut() {
            *first = Piece::Move(points[0]);
        }
        outline.push(Piece::Close);
        Shape::filled(paint, outline)
    }

    pub(super) fn line(paint: Paint, outline: Vec<Piece>, width: f64) -> Shape {
        Shape { paint, outline, stroke: Some(Stroke { width, dash: None }) }
    }

    /// The same shape with every point transformed by `to` and every width multiplied by `scale`.
    pub(super) fn map(&self, scale: f64, to: impl Fn(Point) -> Point) -> Shape {
        Shape {
            paint: self.paint,
            outline: self.outline.iter().map(|piece| piece.map(&to)).collect(),
            stroke: self.stroke.map(|stroke| Stroke {
                width: stroke.width * scale,
                dash: stroke.dash.map(|(on, off)| (on * scale, off * scale)),
            }),
        }
    }

    /// The outline as the `d` attribute of an SVG path, rounded to a tenth of a unit.
    pub fn svg_path(&self) -> String {
        let mut d = String::new();
        let mut put = |letter: char, points: &[Point]| {
            d.push(letter);
            let numbers: Vec<_> = points.iter().map(|p| format!("{:.1} {:.1}", p.x, p.y)).collect();
            d.push_str(&numbers.join(" "));
        };
        for piece in &self.outline {
            match *piece {
                Piece::Move(a) => put('M', &[a]),
                Piece::Line(a) => put('L', &[a]),
                Piece::Curve(a, b, c) => put('C', &[a, b, c]),
                Piece::Close => put('Z', &[]),
            }
        }
        d
    }
}
