//! Running seconds, legible from across a room.

use leptos::prelude::*;

/// The seconds in large digits. They are not read out by a screen reader.
#[component]
pub fn Seconds(seconds: Memo<Option<u32>>) -> impl IntoView {
    let shown =
        move || seconds.get().map(|seconds| view! { <span class="seconds">{seconds}</span><span class="soft">" s"</span> });
    view! { <div role="timer">{shown}</div> }
}
