//! Restarting the page after everything was erased or replaced.

use leptos::prelude::*;

/// The fragment of the page's address after that.
const ERASED: &str = "#erased";

/// Clears the page's own storage and reloads the page, so that nothing remains in its memory either.
pub fn begin() {
    let window = window();
    for kept in [window.local_storage(), window.session_storage()].into_iter().flatten().flatten() {
        // A web view that stores nothing has nothing to clear.
        let _ = kept.clear();
    }
    let place = window.location();
    // The page's own address is never refused.
    let _ = place.set_hash(ERASED);
    let _ = place.reload();
}

/// Reloads the page, after other data took the place of those that it shows.
pub fn reload() {
    // The page's own address is never refused.
    let _ = window().location().reload();
}

/// Whether the page was just restarted after erasing.
pub fn is_new() -> bool {
    window().location().hash().is_ok_and(|hash| hash == ERASED)
}
