//! The codes of a summary, one at a time, each as large as the screen allows.

use std::sync::Arc;

use exercises::frames::FrameRotation;
use leptos::ev;
use leptos::prelude::*;
use words::Key;

use super::place::Place;
use crate::patient::context::PatientContext;
use crate::patient::wake;
use crate::shared::clock;

/// Time between two checks whether the next code is to be shown, in milliseconds.
const LOOK_MS: u64 = 250;

/// The codes of one summary. The screen stays awake while they are shown.
#[component]
pub fn Frames(list: Arc<[String]>, close: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let of = list.len();
    let rotation = RwSignal::new(FrameRotation::begin(of, clock::is_still(), now()));
    keep_turning(rotation);
    wake::keep();
    on_cleanup(wake::let_go);
    let at = Memo::new(move |_| rotation.get().position());
    let title = move || match of {
        1 => words.text(Key::FramesTitle).to_owned(),
        _ => words.frame_of(at.get() + 1, of),
    };
    let drawn = move || list.get(at.get()).cloned().unwrap_or_default();
    let pace = (of > 1).then(|| view! { <Pace rotation/> });
    view! {
        <main class="screen frames">
            <div class="frame" role="img" aria-label=title inner_html=drawn></div>
            <div class="frames-beside stack">
                <h1 class="number">{title}</h1>
                <p class="soft">{words.frames_what(of)}</p>
                <div class="frames-foot stack">
                    {pace}
                    <button type="button" class="quiet" data-back="" on:click=move |_| close()>{words.text(Key::Back)}</button>
                </div>
            </div>
        </main>
    }
}

/// The number of the current code, buttons for the next and the previous one, and whether they change by themselves.
#[component]
fn Pace(rotation: RwSignal<FrameRotation>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let is_automatic = Memo::new(move |_| rotation.get().is_automatic());
    let switch = move || words.text(if is_automatic.get() { Key::FramesStay } else { Key::FramesInTurn });
    view! {
        <Place rotation/>
        <div class="row">
            <button type="button" on:click=move |_| turn(rotation, FrameRotation::previous)>{words.text(Key::FramePrevious)}</button>
            <button type="button" on:click=move |_| turn(rotation, FrameRotation::next)>{words.text(Key::FrameNext)}</button>
        </div>
        <button type="button" on:click=move |_| turn(rotation, FrameRotation::toggle_automatic)>{switch}</button>
    }
}

/// Changes the code as time passes, and with the arrow keys wherever the focus is.
fn keep_turning(rotation: RwSignal<FrameRotation>) {
    clock::every(LOOK_MS, move || turn(rotation, FrameRotation::advance));
    let pressed = window_event_listener(ev::keydown, move |event| match event.key().as_str() {
        "ArrowRight" => turn(rotation, FrameRotation::next),
        "ArrowLeft" => turn(rotation, FrameRotation::previous),
        _ => {}
    });
    on_cleanup(move || pressed.remove());
}

fn turn(rotation: RwSignal<FrameRotation>, how: impl Fn(FrameRotation, u64) -> FrameRotation) {
    let old = rotation.get_untracked();
    let new = how(old, now());
    if new != old {
        rotation.set(new);
    }
}

fn now() -> u64 {
    clock::now().steady_ms
}
