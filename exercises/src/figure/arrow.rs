//! The arrow that shows where to move or to pull.

use super::outline::open;
use super::shape::{Paint, Point, Shape};
use crate::catalogue::Arrow;

/// The arrow at a landmark whose position is `landmark`. `size` is 1 for a picture of the whole body, less for a close view.
pub(super) fn arrow(landmark: Point, arrow: &Arrow, size: f64) -> Vec<Shape> {
    const STEPS: usize = 12;
    let (length, bend) = (f64::from(arrow.length_cm), f64::from(arrow.bend_deg));
    let heading = |part: f64| {
        let (y, x) = (f64::from(arrow.toward_deg) + bend * part).to_radians().sin_cos();
        Point { x, y }
    };
    let mut way = vec![landmark.plus(f64::from(arrow.right_cm), f64::from(arrow.up_cm))];
    for i in 0..STEPS {
        way.push(way[i].along(heading((i as f64 + 0.5) / STEPS as f64), length / STEPS as f64, 0.0));
    }
    let (tip, direction) = (way[STEPS], heading(1.0));
    let head = [(3.8, 0.0), (-2.4, 3.3), (-2.4, -3.3)].map(|(along, left)| tip.along(direction, along * size, left * size));
    vec![Shape::line(Paint::Arrow, open(&way), 1.8 * size), Shape::corners(Paint::Arrow, &head)]
}
