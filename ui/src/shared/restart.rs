//! The window begun anew, after everything was erased.

use leptos::prelude::*;

/// What stands behind the page's address then.
const ERASED: &str = "#erased";

/// Forgets what the page keeps by itself and loads it anew: nothing of before is left in its memory either.
pub fn begin() {
    let window = window();
    for kept in [window.local_storage(), window.session_storage()].into_iter().flatten().flatten() {
        // A web view that keeps nothing has nothing to forget.
        let _ = kept.clear();
    }
    let place = window.location();
    // The page's own address is never refused.
    let _ = place.set_hash(ERASED);
    let _ = place.reload();
}

/// Whether the window was just begun anew.
pub fn is_new() -> bool {
    window().location().hash().is_ok_and(|hash| hash == ERASED)
}
