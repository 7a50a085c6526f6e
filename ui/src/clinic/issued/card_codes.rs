//! A card that is shown as several codes.

use exercises::frames::FrameRotation;
use leptos::prelude::*;
use words::Key;

use crate::shared::{AppContext, clock};

/// The codes, one at a time, with buttons for the next and the previous one.
#[component]
pub fn CardCodes(codes: Vec<String>) -> impl IntoView {
    let words = AppContext::current().words();
    let of = codes.len();
    let rotation = RwSignal::new(FrameRotation::begin(of, true, 0));
    let at = Memo::new(move |_| rotation.get().position());
    let title = move || words.frame_of(at.get() + 1, of);
    // The drawings come from the shell, which makes them from black and white squares only.
    let drawn = move || codes.get(at.get()).cloned().unwrap_or_default();
    let turn =
        move |how: fn(FrameRotation, u64) -> FrameRotation| rotation.update(|now| *now = how(*now, clock::now().steady_ms));
    view! {
        <div class="stack-2">
            <div class="qr" role="img" aria-label=title inner_html=drawn></div>
            <p class="number" role="status">{title}</p>
            <div class="row">
                <button type="button" on:click=move |_| turn(FrameRotation::previous)>{words.text(Key::FramePrevious)}</button>
                <button type="button" on:click=move |_| turn(FrameRotation::next)>{words.text(Key::FrameNext)}</button>
            </div>
            <p class="small">{words.issued_codes(of)}</p>
        </div>
    }
}
