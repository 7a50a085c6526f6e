//! What the page keeps by itself: small things that are the window's alone.

use leptos::prelude::*;

/// Whether something of this name was noted.
pub fn is_noted(name: &str) -> bool {
    kept().and_then(|kept| kept.get_item(name).ok().flatten()).is_some()
}

/// Notes it.
pub fn note(name: &str) {
    if let Some(kept) = kept() {
        // A web view that keeps nothing says it again next time.
        let _ = kept.set_item(name, "1");
    }
}

fn kept() -> Option<web_sys::Storage> {
    window().local_storage().ok().flatten()
}
