//! Draws shapes on the page: converts outlines to paths, and keeps as many path elements as there are shapes.

use std::fmt::Write;

use exercises::figure::{Piece, Shape};
use leptos::prelude::document;
use wasm_bindgen::JsCast;
use web_sys::Element;

const SVG: &str = "http://www.w3.org/2000/svg";

/// Makes `group` show exactly these shapes.
pub fn paint(group: &Element, shapes: &[Shape]) {
    for (place, shape) in shapes.iter().enumerate() {
        let Some(path) = child(group, place) else { return };
        set(&path, "d", &outline(&shape.outline));
        match shape.stroke {
            None => set(&path, "class", shape.paint.name()),
            Some(stroke) => {
                set(&path, "class", &format!("{} line", shape.paint.name()));
                set(&path, "stroke-width", &format!("{:.2}", stroke.width));
                let dash = stroke.dash.map_or_else(|| "none".to_owned(), |(on, off)| format!("{on:.2} {off:.2}"));
                set(&path, "stroke-dasharray", &dash);
            }
        }
    }
    while group.child_element_count() as usize > shapes.len() {
        if let Some(last) = group.last_element_child() {
            last.remove();
        }
    }
}

/// The path element with the index `place`, created if it does not exist.
fn child(group: &Element, place: usize) -> Option<Element> {
    if let Some(there) = group.children().item(u32::try_from(place).ok()?) {
        return Some(there);
    }
    let path = document().create_element_ns(Some(SVG), "path").ok()?;
    group.append_child(path.unchecked_ref()).ok()?;
    Some(path)
}

fn set(element: &Element, name: &str, value: &str) {
    if element.get_attribute(name).as_deref() != Some(value) {
        // Only an invalid attribute name would be refused.
        let _ = element.set_attribute(name, value);
    }
}

/// An outline as the `d` attribute of a path.
pub fn outline(pieces: &[Piece]) -> String {
    let mut d = String::with_capacity(pieces.len() * 24);
    for piece in pieces {
        let written = match piece {
            Piece::Move(a) => write!(d, "M{:.1} {:.1}", a.x, a.y),
            Piece::Line(a) => write!(d, "L{:.1} {:.1}", a.x, a.y),
            Piece::Curve(a, b, c) => write!(d, "C{:.1} {:.1} {:.1} {:.1} {:.1} {:.1}", a.x, a.y, b.x, b.y, c.x, c.y),
            Piece::Close => d.write_char('Z'),
        };
        written.expect("a String takes any text");
    }
    d
}

/// Points as the `points` attribute of a polyline.
pub fn points(points: &[(f64, f64)]) -> String {
    points.iter().map(|(x, y)| format!("{x:.1},{y:.1}")).collect::<Vec<_>>().join(" ")
}
