//! Outlines of rounded shapes: smooth closed curves, tapered limbs, rounded boxes.

use super::shape::{Piece, Point};

/// A smooth closed curve through the points.
pub(super) fn closed(points: &[Point]) -> Vec<Piece> {
    let n = points.len();
    let at = |i: usize| points[i % n];
    let tangent = |i: usize| at(i + 1).minus(at(i + n - 1)).unit();
    let mut outline = vec![Piece::Move(points[0])];
    outline.extend((0..n).map(|i| bow(at(i), tangent(i), at(i + 1), tangent(i + 1))));
    outline.push(Piece::Close);
    outline
}

/// A smooth open curve through the points.
pub(super) fn open(points: &[Point]) -> Vec<Piece> {
    let last = points.len() - 1;
    let tangent = |i: usize| points[(i + 1).min(last)].minus(points[i.saturating_sub(1)]).unit();
    let mut outline = vec![Piece::Move(points[0])];
    outline.extend((0..last).map(|i| bow(points[i], tangent(i), points[i + 1], tangent(i + 1))));
    outline
}

fn bow(from: Point, leaving: Point, to: Point, arriving: Point) -> Piece {
    let handle = to.minus(from).length() * 0.36;
    Piece::Curve(from.along(leaving, handle, 0.0), to.along(arriving, -handle, 0.0), to)
}

/// An ellipse with half axes `along` the direction and `across` it.
pub(super) fn ellipse(middle: Point, direction: Point, along: f64, across: f64) -> Vec<Piece> {
    // The handle length at which four curves come closest to a circle.
    const K: f64 = 0.552_284_75;
    let at = |a: f64, l: f64| middle.along(direction, a * along, l * across);
    vec![
        Piece::Move(at(1.0, 0.0)),
        Piece::Curve(at(1.0, K), at(K, 1.0), at(0.0, 1.0)),
        Piece::Curve(at(-K, 1.0), at(-1.0, K), at(-1.0, 0.0)),
        Piece::Curve(at(-1.0, -K), at(-K, -1.0), at(0.0, -1.0)),
        Piece::Curve(at(K, -1.0), at(1.0, -K), at(1.0, 0.0)),
        Piece::Close,
    ]
}

/// A position along a limb (0 to 1), and the limb's thickness there to the left and to the right of its direction.
pub(super) type Girth = (f64, f64, f64);

/// A limb from `from` to `to` with round ends. `girths` run from 0 to 1.
pub(super) fn limb(from: Point, to: Point, girths: &[Girth]) -> Vec<Piece> {
    let way = to.minus(from);
    let (direction, length) = (way.unit(), way.length());
    let at = |part: f64, left: f64| from.along(direction, part * length, left);
    let first = girths.first().map_or(0.0, |g| (g.1 + g.2) / 2.0);
    let last = girths.last().map_or(0.0, |g| (g.1 + g.2) / 2.0);
    let cap = |end: Point, r: f64, sign: f64| {
        [(0.72, 0.70), (1.0, 0.0), (0.72, -0.70)].map(|(a, l)| end.along(direction, sign * a * r, sign * l * r))
    };
    let mut points: Vec<Point> = girths.iter().map(|&(part, left, _)| at(part, left)).collect();
    points.extend(cap(to, last, 1.0));
    points.extend(girths.iter().rev().map(|&(part, _, right)| at(part, -right)));
    points.extend(cap(from, first, -1.0));
    closed(&points)
}

/// A limb whose thickness changes evenly from `first` to `last`.
pub(super) fn taper(from: Point, to: Point, first: f64, last: f64) -> Vec<Piece> {
    limb(from, to, &[(0.0, first, first), (0.5, (first + last) / 2.0, (first + last) / 2.0), (1.0, last, last)])
}

/// An upright box with round corners; `x` is its left and right edge, `y` its bottom and top.
pub(super) fn rounded(x: (f64, f64), y: (f64, f64), r: f64) -> Vec<Piece> {
    let r = r.min((x.1 - x.0) / 2.0).min((y.1 - y.0) / 2.0);
    let k = r * (1.0 - 0.552_284_75);
    let p = |x: f64, y: f64| Point { x, y };
    vec![
        Piece::Move(p(x.0 + r, y.0)),
        Piece::Line(p(x.1 - r, y.0)),
        Piece::Curve(p(x.1 - k, y.0), p(x.1, y.0 + k), p(x.1, y.0 + r)),
        Piece::Line(p(x.1, y.1 - r)),
        Piece::Curve(p(x.1, y.1 - k), p(x.1 - k, y.1), p(x.1 - r, y.1)),
        Piece::Line(p(x.0 + r, y.1)),
        Piece::Curve(p(x.0 + k, y.1), p(x.0, y.1 - k), p(x.0, y.1 - r)),
        Piece::Line(p(x.0, y.0 + r)),
        Piece::Curve(p(x.0, y.0 + k), p(x.0 + k, y.0), p(x.0 + r, y.0)),
        Piece::Close,
    ]
}
