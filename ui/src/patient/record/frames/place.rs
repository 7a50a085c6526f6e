//! Which of the codes it is, as a string with a peg for each and the bob at the one that is shown.

use exercises::frames::Turning;
use leptos::prelude::*;

/// It repeats for the eye what the heading says.
#[component]
pub fn Place(turning: RwSignal<Turning>) -> impl IntoView {
    let at = Memo::new(move |_| turning.get().at());
    let pegs = (0..turning.get_untracked().of()).map(|place| view! { <i class:here=move || at.get() == place></i> });
    view! { <div class="frames-place" aria-hidden="true">{pegs.collect_view()}</div> }
}
