//! How wide a drawing may be, whose letters follow the reader's own text size.

use leptos::prelude::{document, window};

/// A column is at most this wide, in CSS pixels; the style sheet says the same.
const COLUMN: f64 = 720.0;
/// At both sides of a page together.
const MARGINS: f64 = 44.0;

/// The text size for which drawings are laid out, in CSS pixels.
const USUAL_TEXT: f64 = 16.0;

/// The width of the one column of the patient's pages, in units of a drawing.
pub fn column_width() -> f64 {
    let width = window().inner_width().ok().and_then(|width| width.as_f64()).unwrap_or(COLUMN);
    (width - MARGINS).clamp(240.0, COLUMN) / text_scale()
}

/// How many times larger the reader's text is than usual: one unit of a drawing is this many CSS pixels.
pub fn text_scale() -> f64 {
    let size = document().document_element().and_then(|root| window().get_computed_style(&root).ok().flatten());
    let size = size.and_then(|style| style.get_property_value("font-size").ok());
    let pixels = size.and_then(|size| size.trim_end_matches("px").parse::<f64>().ok());
    pixels.filter(|pixels| *pixels > 0.0).map_or(1.0, |pixels| pixels / USUAL_TEXT)
}

/// A length of a drawing as the page measures it: it grows with the text.
pub fn rem(units: f64) -> String {
    format!("{}rem", units / USUAL_TEXT)
}
