//! Close views of the feet: both from above, and the near one from its inner side.

use super::arrow::arrow;
use super::motion::Angles;
use super::outline::{closed, ellipse, rounded};
use super::shape::{Paint, Piece, Point, Shape};
use crate::catalogue::{Figure, Joint, Tie};

/// The sole from above: distance outward and distance from the ankle toward the toes.
const SOLE: [(f64, f64); 12] = [
    (0.0, -6.0),
    (2.7, -4.4),
    (3.1, 0.0),
    (4.2, 6.0),
    (4.9, 11.0),
    (4.4, 14.6),
    (2.4, 17.4),
    (-0.6, 19.2),
    (-3.2, 19.4),
    (-4.4, 16.4),
    (-3.7, 9.0),
    (-2.9, 0.0),
];

/// Where the toes are parted: from the edge of the foot back toward the ankle.
const PARTS: [[(f64, f64); 2]; 4] =
    [[(-1.6, 19.2), (-1.3, 15.6)], [(0.4, 18.6), (0.3, 15.6)], [(1.9, 17.6), (1.6, 14.8)], [(3.3, 16.2), (2.8, 13.8)]];

/// How far the ankles are from the middle, and how far the feet point outward at rest.
const APART: (f64, f64) = (8.0, 4.0);

/// A foot from above; `sign` is 1 for the near one, which is on the right, as somebody sitting sees it.
struct FootFromAbove {
    sign: f64,
    out: f64,
}

impl FootFromAbove {
    fn at(&self, (outward, along): (f64, f64)) -> Point {
        let (sin, cos) = self.out.to_radians().sin_cos();
        Point { x: self.sign * (APART.0 + outward * cos + along * sin), y: along * cos - outward * sin }
    }

    fn shapes(&self, paint: Paint) -> Vec<Shape> {
        let sole: Vec<_> = SOLE.iter().map(|&place| self.at(place)).collect();
        let mut shapes = vec![Shape::filled(paint, closed(&sole))];
        let part = |ends: &[(f64, f64); 2]| vec![Piece::Move(self.at(ends[0])), Piece::Line(self.at(ends[1]))];
        shapes.extend(PARTS.iter().map(|ends| Shape::line(Paint::Ground, part(ends), 0.5)));
        let leg = ellipse(self.at((0.0, -2.0)), Point { x: 1.0, y: 0.0 }, 5.0, 5.4);
        shapes.push(Shape::filled(Paint::NearArm, leg));
        shapes
    }
}

/// All shapes of the feet from above, in painting order.
pub(super) fn both_from_above(figure: &Figure, angles: &Angles) -> Vec<Shape> {
    let near = FootFromAbove { sign: 1.0, out: APART.1 + angles.of(Joint::FootOut) };
    let far = FootFromAbove { sign: -1.0, out: APART.1 };
    let mut shapes = far.shapes(Paint::Far);
    shapes.extend(near.shapes(Paint::Near));
    if figure.links.iter().any(|link| link.tie == Tie::Band) {
        let strand = |along: f64| vec![Piece::Move(far.at((4.9, along))), Piece::Line(near.at((4.9, along)))];
        shapes.extend([10.0, 12.6].map(|along| Shape::line(Paint::Held, strand(along), 1.3)));
    }
    let toes = near.at((0.0, 19.0));
    shapes.extend(figure.arrows.iter().flat_map(|one| arrow(toes, one, 0.5)));
    shapes
}

/// All shapes of the near foot from its inner side, in painting order.
pub(super) fn inner_side(figure: &Figure, angles: &Angles) -> Vec<Shape> {
    let raised = angles.of(Joint::Arch);
    let (arch, instep, shorter) = (1.5 + raised * 0.14, raised * 0.09, raised * 0.05);
    // Distance toward the toes, which are on the left for a right foot, and height above the floor.
    let at = |along: f64, above: f64| Point { x: -along, y: above };
    let outline = closed(&[
        at(3.4, 33.0),
        at(3.6, 20.0),
        at(4.0, 13.6 + instep),
        at(7.0 - shorter, 10.2 + instep),
        at(11.0 - shorter, 7.0 + instep * 0.7),
        at(14.6 - shorter, 4.4),
        at(17.6 - shorter, 3.4),
        at(20.2 - shorter, 2.4),
        at(20.4 - shorter, 0.6),
        at(17.0 - shorter, 0.0),
        at(13.6 - shorter, 0.0),
        at(11.4 - shorter, arch * 0.45),
        at(7.0, arch),
        at(2.4, arch * 0.6),
        at(-0.6, 0.0),
        at(-4.4, 0.3),
        at(-6.2, 2.6),
        at(-5.6, 6.0),
        at(-3.8, 11.0),
        at(-3.4, 18.0),
        at(-4.4, 33.0),
    ]);
    let sleeve = [at(4.6, 35.0), at(4.6, 25.0), at(-5.4, 25.0), at(-5.4, 35.0)];
    let floor = Shape::filled(Paint::Furniture, rounded((-30.0, 14.0), (-1.4, 0.0), 0.6));
    let mut shapes = vec![floor, Shape::filled(Paint::Near, outline), Shape::corners(Paint::NearArm, &sleeve)];
    shapes.extend(figure.arrows.iter().flat_map(|one| arrow(at(8.0, 8.0), one, 0.45)));
    shapes
}
