//! How wide a drawing may be that is not scaled.

use leptos::prelude::window;

/// A column is at most this wide, in CSS pixels; the style sheet says the same.
const COLUMN: f64 = 720.0;
/// At both sides of a page together.
const MARGINS: f64 = 44.0;

/// The width of the one column of the patient's pages.
pub fn column_width() -> f64 {
    let width = window().inner_width().ok().and_then(|width| width.as_f64()).unwrap_or(COLUMN);
    (width - MARGINS).clamp(240.0, COLUMN)
}
