//! Minutes and seconds that are left, legible from across a room.

use leptos::prelude::*;

use super::driver::Driver;

/// The time left as "12:05". It is not read out by a screen reader.
#[component]
pub fn ClockLeft() -> impl IntoView {
    let driver = Driver::current();
    let seconds = Memo::new(move |_| driver.view.get().seconds);
    let shown =
        move || seconds.get().map(|s| view! { <span class="seconds clock">{format!("{}:{:02}", s / 60, s % 60)}</span> });
    view! { <div role="timer">{shown}</div> }
}
