//! Where a page begins.

use leptos::prelude::*;

/// Shows the page from its top once it is drawn: its element may have been another page's before, scrolled as that one was.
pub fn show() {
    request_animation_frame(|| {
        if let Ok(Some(page)) = document().query_selector("main:not([hidden])") {
            page.set_scroll_top(0);
        }
    });
}
