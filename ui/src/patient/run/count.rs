//! The number of repetitions, legible from across a room.

use exercises::guide::Phase;
use leptos::prelude::*;

use super::driver::Driver;
use crate::shared::AppContext;

/// The repetition in large digits; in a rest or a count-in the seconds.
#[component]
pub fn Count() -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let shown = Memo::new(move |_| {
        let view = driver.view.get();
        match (view.phase, view.repetition, view.seconds) {
            (Phase::Beat(_) | Phase::OwnPace | Phase::Paused { .. } | Phase::Ended(_), Some((n, of)), _) => {
                (u32::from(n), words.of_count(of))
            }
            (_, _, seconds) => (seconds.unwrap_or(0), "s".to_owned()),
        }
    });
    view! {
        <div class="count" role="timer">
            <span class="seconds">{move || shown.get().0}</span>
            <span class="soft">" "{move || shown.get().1}</span>
        </div>
    }
}
