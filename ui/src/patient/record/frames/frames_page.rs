//! The codes, one at a time, each as large as the screen allows.

use std::sync::Arc;

use exercises::frames::Turning;
use leptos::ev;
use leptos::prelude::*;
use words::Key;

use super::place::Place;
use crate::patient::desk::Desk;
use crate::patient::run::wake;
use crate::shared::clock;

/// So often it is looked whether the next one is to be shown, in milliseconds.
const LOOK_MS: u64 = 250;

/// The codes of one sealing. The screen stays awake while they are shown.
#[component]
pub fn Frames(list: Arc<[String]>, close: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let words = Desk::here().house.words();
    let of = list.len();
    let turning = RwSignal::new(Turning::begin(of, clock::is_still(), now()));
    keep_turning(turning);
    wake::keep();
    on_cleanup(wake::let_go);
    let at = Memo::new(move |_| turning.get().at());
    let title = move || match of {
        1 => words.text(Key::FramesTitle).to_owned(),
        _ => words.fill(Key::FrameOf, &[("n", &(at.get() + 1)), ("of", &of)]),
    };
    let drawn = move || list.get(at.get()).cloned().unwrap_or_default();
    let pace = (of > 1).then(|| view! { <Pace turning/> });
    view! {
        <main class="screen frames">
            <div class="frame" role="img" aria-label=title inner_html=drawn></div>
            <div class="frames-beside stack">
                <h1 class="number">{title}</h1>
                <p class="soft">{words.fill(Key::FramesWhat, &[("n", &of)])}</p>
                <div class="frames-foot stack">
                    {pace}
                    <button type="button" class="quiet" on:click=move |_| close()>{words.text(Key::Back)}</button>
                </div>
            </div>
        </main>
    }
}

/// Which one it is, on to the next and back, and whether they turn by themselves.
#[component]
fn Pace(turning: RwSignal<Turning>) -> impl IntoView {
    let words = Desk::here().house.words();
    let by_itself = Memo::new(move |_| turning.get().by_itself());
    let switch = move || words.text(if by_itself.get() { Key::FramesStay } else { Key::FramesTurn });
    view! {
        <Place turning/>
        <div class="row">
            <button type="button" on:click=move |_| turn(turning, Turning::before)>{words.text(Key::FrameBefore)}</button>
            <button type="button" on:click=move |_| turn(turning, Turning::next)>{words.text(Key::FrameNext)}</button>
        </div>
        <button type="button" on:click=move |_| turn(turning, Turning::switch)>{switch}</button>
    }
}

/// By themselves as time passes, by the arrow keys wherever the focus is.
fn keep_turning(turning: RwSignal<Turning>) {
    clock::every(LOOK_MS, move || turn(turning, Turning::pass));
    let pressed = window_event_listener(ev::keydown, move |event| match event.key().as_str() {
        "ArrowRight" => turn(turning, Turning::next),
        "ArrowLeft" => turn(turning, Turning::before),
        _ => {}
    });
    on_cleanup(move || pressed.remove());
}

fn turn(turning: RwSignal<Turning>, how: impl Fn(Turning, u64) -> Turning) {
    let old = turning.get_untracked();
    let new = how(old, now());
    if new != old {
        turning.set(new);
    }
}

fn now() -> u64 {
    clock::now().steady_ms
}
