//! Screens that open in each other's place.

use leptos::prelude::*;

/// What is shown where one of several screens is. Another screen in its place is drawn anew: nothing of the one before stays in
/// its elements, such as the focus, a text that was typed, or a list that was opened. Without it, development builds, where the
/// views of all components have the same type, would change the elements of one screen into those of the next.
pub fn screen<V: IntoView + 'static>(view: impl FnOnce() -> V + 'static) -> AnyView {
    // Elements are kept for a view of the same type only. This closure shows nothing, and its type is another one for each caller.
    let place = || ();
    (view().into_view(), place).into_any()
}
