//! Which of the codes it is, as a string with a peg for each and the bob at the one that is shown.

use exercises::frames::FrameRotation;
use leptos::prelude::*;

/// It repeats for the eye what the heading says.
#[component]
pub fn Place(rotation: RwSignal<FrameRotation>) -> impl IntoView {
    let at = Memo::new(move |_| rotation.get().position());
    let pegs = (0..rotation.get_untracked().count()).map(|place| view! { <i class:here=move || at.get() == place></i> });
    view! { <div class="frames-place" aria-hidden="true">{pegs.collect_view()}</div> }
}
