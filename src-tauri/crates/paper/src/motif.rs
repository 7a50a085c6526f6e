//! The string that runs down the margin: a knot for each exercise, and the bob at its end.

use crate::font::Fonts;
use crate::mark::{Mark, circle, filled, line, polygon};
use crate::style::{self, BOB, INK, KNOT};

/// Width of the string.
const STRING: f32 = 1.2;
/// Radius of a knot.
pub const KNOT_RADIUS: f32 = 9.5;
/// Half the width of the bob, and how far it reaches from its widest place upwards and downwards.
const BOB_SIZE: (f32, f32, f32) = (6.0, 7.0, 17.0);
/// Height of the bob.
pub const BOB_HEIGHT: f32 = BOB_SIZE.1 + BOB_SIZE.2;

/// The string from one height to another.
pub fn string(x: f32, from: f32, to: f32) -> Mark {
    line((x, from), (x, to), INK, STRING)
}

/// A knot on the string.
pub fn knot(x: f32, y: f32) -> Mark {
    filled(circle(x, y, KNOT_RADIUS), KNOT)
}

/// The number on a knot.
pub fn number(fonts: &Fonts, number: &str, x: f32, y: f32) -> Mark {
    let run = fonts.run(style::NUMBER.face, style::NUMBER.size, number);
    // Figures are about seven tenths of an em high.
    let from = (x - run.width / 2.0, y + style::NUMBER.size * 0.35);
    crate::mark::text(style::NUMBER, run, from)
}

/// The bob that hangs at the end of the string, from `top` on.
pub fn bob(x: f32, top: f32) -> Mark {
    let (half, above, below) = BOB_SIZE;
    let widest = top + above;
    filled(polygon(&[(x, top), (x + half, widest), (x, widest + below), (x - half, widest)]), BOB)
}
