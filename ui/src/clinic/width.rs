//! How wide the window is, for drawings that are not scaled.

use leptos::ev;
use leptos::prelude::*;

/// From this width on a page has two columns, in CSS pixels; the style sheet says the same.
pub const TWO_COLUMNS: f64 = 1000.0;
/// A page is at most this wide.
const MOST: f64 = 1240.0;
/// Between two columns.
const BETWEEN: f64 = 40.0;
/// At both sides of a page together.
const MARGINS: f64 = 44.0;

/// The window's inner width in CSS pixels, as it changes.
pub fn window_width() -> Signal<f64> {
    let width = || window().inner_width().ok().and_then(|width| width.as_f64()).unwrap_or(TWO_COLUMNS);
    let now = RwSignal::new(width());
    let handle = window_event_listener(ev::resize, move |_| now.set(width()));
    on_cleanup(move || handle.remove());
    now.into()
}

/// The width of the left and of the right column of the review, in units of drawings that are `scale` pixels large; the same
/// where there is only one.
pub fn columns(window: f64, scale: f64) -> (f64, f64) {
    let page = (window - MARGINS).min(MOST);
    if window < TWO_COLUMNS {
        return (page / scale, page / scale);
    }
    (((page - BETWEEN) * 0.6 / scale).floor(), ((page - BETWEEN) * 0.4 / scale).floor())
}
