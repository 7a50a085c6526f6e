//! Colours, sizes and distances. Lengths are in points, 72 to an inch.

use crate::font::Face;
use exercises::figure::Paint;

/// A colour: red, green, blue.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Colour(pub u8, pub u8, pub u8);

/// Text.
pub const INK: Colour = Colour(0x20, 0x29, 0x2E);
/// Less important text.
pub const SOFT: Colour = Colour(0x5A, 0x66, 0x6C);
/// Lines that only separate.
pub const RULE: Colour = Colour(0xD9, 0xD2, 0xC4);
/// A knot of the string.
pub const KNOT: Colour = Colour(0x1E, 0x6B, 0x58);
/// The bob at the end of the string.
pub const BOB: Colour = Colour(0xB0, 0x7C, 0x22);
/// Stop, something is wrong.
pub const ALARM: Colour = Colour(0xA3, 0x3A, 0x22);
/// A cell of a table in which nothing is asked for.
pub const SHADE: Colour = Colour(0xEF, 0xEC, 0xE5);
/// Numbers on a knot.
pub const WHITE: Colour = Colour(0xFF, 0xFF, 0xFF);
/// Codes, which are read by machines.
pub const BLACK: Colour = Colour(0, 0, 0);

/// Millimetres in points.
pub const fn mm(length: f32) -> f32 {
    length * 72.0 / 25.4
}

/// The colour of a part of a figure: as in the window by day, on white.
pub fn of_paint(paint: Paint) -> Colour {
    match paint {
        Paint::Near => Colour(0x76, 0x8D, 0x84),
        Paint::NearArm | Paint::Eyes => INK,
        Paint::Far => Colour(0xC9, 0xD2, 0xCC),
        Paint::Ground => WHITE,
        Paint::Furniture => RULE,
        Paint::Held | Paint::Plumb => BOB,
        Paint::Phone | Paint::Arrow => Colour(0x85, 0x59, 0x0A),
    }
}

/// How a text is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Style {
    /// Its weight.
    pub face: Face,
    /// Height of an em.
    pub size: f32,
    /// From one baseline to the next.
    pub line: f32,
    /// Its colour.
    pub ink: Colour,
}

const fn style(face: Face, size: f32, line: f32, ink: Colour) -> Style {
    Style { face, size, line, ink }
}

/// The paper's title.
pub const TITLE: Style = style(Face::SemiBold, 24.0, 28.0, INK);
/// The title of a report or a letter.
pub const REPORT_TITLE: Style = style(Face::SemiBold, 17.0, 21.0, INK);
/// The clinic's name.
pub const CLINIC: Style = style(Face::SemiBold, 12.0, 15.5, INK);
/// An exercise, or a chapter.
pub const HEADING: Style = style(Face::SemiBold, 15.0, 18.5, INK);
/// A heading within an exercise.
pub const MINOR: Style = style(Face::SemiBold, 10.5, 14.0, INK);
/// The same above signs to stop.
pub const MINOR_ALARM: Style = style(Face::SemiBold, 10.5, 14.0, ALARM);
/// Running text.
pub const TEXT: Style = style(Face::Regular, 10.5, 14.4, INK);
/// What must not be overlooked in it.
pub const STRONG: Style = style(Face::SemiBold, 10.5, 14.4, INK);
/// Text beside the main thing.
pub const ASIDE: Style = style(Face::Regular, 10.5, 14.4, SOFT);
/// Smaller text, in lists of two columns.
pub const SMALL: Style = style(Face::Regular, 9.6, 12.9, INK);
/// What must not be overlooked in it.
pub const SMALL_STRONG: Style = style(Face::SemiBold, 9.6, 12.9, INK);
/// A chapter of a report.
pub const CHAPTER: Style = style(Face::SemiBold, 11.5, 14.5, INK);
/// The same above alarms.
pub const CHAPTER_ALARM: Style = style(Face::SemiBold, 11.5, 14.5, ALARM);
/// Text of a report.
pub const REPORT: Style = style(Face::Regular, 9.2, 11.8, INK);
/// An exercise in its table.
pub const REPORT_STRONG: Style = style(Face::SemiBold, 9.2, 11.8, INK);
/// Text in the table of a report.
pub const FINE: Style = style(Face::Regular, 8.7, 11.0, INK);
/// What no longer holds there.
pub const FINE_SOFT: Style = style(Face::Regular, 8.7, 11.0, SOFT);
/// Below a chart.
pub const TINY: Style = style(Face::Regular, 7.8, 9.8, SOFT);
/// Captions and the foot of a page.
pub const CAPTION: Style = style(Face::Regular, 9.0, 12.0, SOFT);
/// Headings of a table.
pub const COLUMN: Style = style(Face::SemiBold, 8.5, 10.5, INK);
/// A day of it.
pub const DAY: Style = style(Face::Regular, 8.5, 10.0, INK);
/// The number on a knot.
pub const NUMBER: Style = style(Face::SemiBold, 10.5, 14.0, WHITE);
