//! Running seconds, read from across a room.

use leptos::prelude::*;

/// The seconds in large digits. A timer that is looked at, not read out.
#[component]
pub fn Seconds(seconds: Memo<Option<u32>>) -> impl IntoView {
    let shown =
        move || seconds.get().map(|seconds| view! { <span class="seconds">{seconds}</span><span class="soft">" s"</span> });
    view! { <div role="timer">{shown}</div> }
}
