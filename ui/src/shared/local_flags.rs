//! Flags that the page stores by itself, for small things that concern only the window.

use leptos::prelude::*;

/// Whether the flag of this name is set.
pub fn is_noted(name: &str) -> bool {
    kept().and_then(|kept| kept.get_item(name).ok().flatten()).is_some()
}

/// Sets the flag.
pub fn note(name: &str) {
    if let Some(kept) = kept() {
        // A web view that stores nothing shows the hint again next time.
        let _ = kept.set_item(name, "1");
    }
}

fn kept() -> Option<web_sys::Storage> {
    window().local_storage().ok().flatten()
}
