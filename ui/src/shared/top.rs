//! Shows a page from its top, or from where the person left it; and the way back from a page.

use leptos::prelude::*;
use std::cell::Cell;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use super::focus;

/// The page that is shown.
const PAGE: &str = "main:not([hidden])";
/// The buttons that lead back from a page, or close a question on it.
const BACK: &str = "main:not([hidden]) [data-back]";
/// Number of frames in which the contents of a page must have come, so that it can be scrolled to where it was: about a second.
const FRAMES: u16 = 60;

/// Where a page was left.
#[derive(Debug, Clone, Default)]
pub struct ScrolledTo {
    /// Distance from the top, in pixels; `None` once it is scrolled there.
    top: Option<i32>,
    /// The name of what was pressed.
    pressed: String,
}

/// Shows the page from its top: its element may have belonged to another page that was scrolled. This happens at once and never later,
/// when a frame comes: a page that moves under a finger is pressed in the wrong place.
pub fn show() {
    count_page();
    if let Some(page) = page() {
        page.set_scroll_top(0);
    }
}

/// Where the page that is shown is scrolled to, and what was pressed on it.
pub fn scrolled_to() -> ScrolledTo {
    ScrolledTo { top: page().map(|page| page.scroll_top()), pressed: focus::name_of_focused() }
}

/// Shows the page where it was left, and gives the focus to what was pressed there. Its contents may still be on their way from the
/// shell.
pub fn return_to(left: ScrolledTo) {
    look_again(left, FRAMES, count_page());
}

thread_local! {
    /// Number of pages shown so far: a page must not be scrolled to where the one before it was left.
    static PAGES: Cell<u32> = const { Cell::new(0) };
}

/// Counts a page that is shown, and returns its number.
fn count_page() -> u32 {
    PAGES.set(PAGES.get().wrapping_add(1));
    PAGES.get()
}

fn look_again(mut left: ScrolledTo, frames: u16, number: u32) {
    request_animation_frame(move || {
        let Some(page) = page().filter(|_| PAGES.get() == number) else { return };
        if let Some(top) = left.top {
            page.set_scroll_top(top);
            // Once it is there, the person scrolls.
            left.top = Some(top).filter(|top| page.scroll_top() < top - 1);
        }
        let there = left.top.is_none() && (has_gone_on(&page) || focus::give_to_named(&page, &left.pressed));
        if !there && frames > 0 {
            look_again(left, frames - 1, number);
        }
    });
}

/// Presses the first button that leads back and that can be pressed.
pub fn press_back() {
    let Ok(all) = document().query_selector_all(BACK) else { return };
    let mut all = (0..all.length()).filter_map(|place| all.item(place)?.dyn_into::<HtmlElement>().ok());
    if let Some(button) = all.find(|button| button.get_client_rects().length() > 0 && !button.has_attribute("disabled")) {
        button.click();
    }
}

fn page() -> Option<HtmlElement> {
    document().query_selector(PAGE).ok().flatten()?.dyn_into().ok()
}

/// Whether the focus is on something within the page other than its heading.
fn has_gone_on(page: &HtmlElement) -> bool {
    let active = document().active_element().filter(|active| active != page.as_ref() && page.contains(Some(active)));
    active.is_some_and(|active| active.tag_name() != "H1")
}
