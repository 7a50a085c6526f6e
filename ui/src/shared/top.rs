//! Scrolls a page to its top.

use leptos::prelude::*;
use web_sys::Element;

/// Shows the page from its top once it is drawn: its element may have belonged to another page that was scrolled. Someone who has
/// already gone on with the keyboard is left there.
pub fn show() {
    request_animation_frame(|| {
        if let Ok(Some(page)) = document().query_selector("main:not([hidden])")
            && !has_gone_on(&page)
        {
            page.set_scroll_top(0);
        }
    });
}

/// Whether the focus is on something within the page other than its heading.
fn has_gone_on(page: &Element) -> bool {
    let active = document().active_element().filter(|active| active != page && page.contains(Some(active)));
    active.is_some_and(|active| active.tag_name() != "H1")
}
