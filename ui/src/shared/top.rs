//! Scrolls a page to its top.

use leptos::prelude::*;

/// Shows the page from its top once it is drawn: its element may have belonged to another page that was scrolled.
pub fn show() {
    request_animation_frame(|| {
        if let Ok(Some(page)) = document().query_selector("main:not([hidden])") {
            page.set_scroll_top(0);
        }
    });
}
