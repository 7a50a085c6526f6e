//! The position of the current code, as a string with a peg for each code and the bob at the current one.

use exercises::frames::FrameRotation;
use leptos::prelude::*;

/// It shows the same as the heading does in words.
#[component]
pub fn Place(rotation: RwSignal<FrameRotation>) -> impl IntoView {
    let at = Memo::new(move |_| rotation.get().position());
    let pegs = (0..rotation.get_untracked().count()).map(|place| view! { <i class:here=move || at.get() == place></i> });
    view! { <div class="frames-place" aria-hidden="true">{pegs.collect_view()}</div> }
}
