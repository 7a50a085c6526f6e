//! The available width for drawings whose letters follow the reader's own text size.

use leptos::prelude::{document, window};

/// Largest width of a column, in CSS pixels; the style sheet has the same value.
const COLUMN: f64 = 720.0;
/// Both margins of a page together, in CSS pixels.
const MARGINS: f64 = 44.0;

/// The text size for which drawings are laid out, in CSS pixels.
const USUAL_TEXT: f64 = 16.0;

/// The width of the one column of the patient's pages, in units of a drawing.
pub fn column_width() -> f64 {
    let width = window().inner_width().ok().and_then(|width| width.as_f64()).unwrap_or(COLUMN);
    (width - MARGINS).clamp(240.0, COLUMN) / text_scale()
}

/// The reader's text size as a multiple of the usual one. A drawing's unit is this many CSS pixels.
pub fn text_scale() -> f64 {
    let size = document().document_element().and_then(|root| window().get_computed_style(&root).ok().flatten());
    let size = size.and_then(|style| style.get_property_value("font-size").ok());
    let pixels = size.and_then(|size| size.trim_end_matches("px").parse::<f64>().ok());
    pixels.filter(|pixels| *pixels > 0.0).map_or(1.0, |pixels| pixels / USUAL_TEXT)
}

/// A length of a drawing in `rem`, so that it grows with the text.
pub fn rem(units: f64) -> String {
    format!("{}rem", units / USUAL_TEXT)
}
