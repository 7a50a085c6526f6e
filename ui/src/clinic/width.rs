//! The width of the window, for drawings that are not scaled.

use leptos::ev;
use leptos::prelude::*;

/// Width from which on a page has two columns, in CSS pixels; the style sheet has the same value.
pub const TWO_COLUMNS: f64 = 1000.0;
/// Width from which on a visit has three columns, in CSS pixels; the style sheet has the same value.
pub const THREE_COLUMNS: f64 = 1200.0;
/// Largest width of a page, in CSS pixels.
const MOST: f64 = 1240.0;
/// Distance between two columns, in CSS pixels.
const BETWEEN: f64 = 40.0;
/// Both margins of a page together, in CSS pixels.
const MARGINS: f64 = 44.0;

/// The window's inner width in CSS pixels, as it changes.
pub fn window_width() -> Signal<f64> {
    let width = || window().inner_width().ok().and_then(|width| width.as_f64()).unwrap_or(TWO_COLUMNS);
    let now = RwSignal::new(width());
    let handle = window_event_listener(ev::resize, move |_| now.set(width()));
    on_cleanup(move || handle.remove());
    now.into()
}

/// The widths of the left and the right column of the review, in units of drawings whose unit is `scale` CSS pixels; both are the
/// same if there is only one column.
pub fn columns(window: f64, scale: f64) -> (f64, f64) {
    let page = (window - MARGINS).min(MOST);
    if window < TWO_COLUMNS {
        return (page / scale, page / scale);
    }
    (((page - BETWEEN) * 0.6 / scale).floor(), ((page - BETWEEN) * 0.4 / scale).floor())
}
