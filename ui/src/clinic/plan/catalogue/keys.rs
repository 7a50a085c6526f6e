//! The keyboard's way through what was found.

use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// What every entry of the list is, for the arrow keys.
const ENTRIES: &str = ".catalogue .entry";

/// From the field that is typed into, the arrow down leads to the first entry.
pub fn into_list(event: &KeyboardEvent) {
    if event.key() == "ArrowDown" && give_focus(0) {
        event.prevent_default();
    }
}

/// Arrow keys lead from entry to entry, and from the first one back to `field`.
pub fn along_list(event: &KeyboardEvent, field: Option<HtmlElement>) {
    let forward = match event.key().as_str() {
        "ArrowDown" | "ArrowRight" => true,
        "ArrowUp" | "ArrowLeft" => false,
        _ => return,
    };
    let focused = document().active_element();
    let Some(here) = entries().iter().position(|entry| Some(entry.as_ref()) == focused.as_ref()) else { return };
    event.prevent_default();
    match (forward, here.checked_sub(1)) {
        (true, _) => drop(give_focus(here + 1)),
        (false, Some(before)) => drop(give_focus(before)),
        // If the field cannot take it, the focus stays.
        (false, None) => drop(field.map(|field| field.focus())),
    }
}

/// Whether there is such an entry to take the focus.
fn give_focus(place: usize) -> bool {
    entries().get(place).is_some_and(|entry| entry.focus().is_ok())
}

fn entries() -> Vec<HtmlElement> {
    let Ok(found) = document().query_selector_all(ENTRIES) else { return Vec::new() };
    (0..found.length()).filter_map(|at| found.item(at)?.dyn_into().ok()).collect()
}
