//! The figure: moving gently through its positions, or held in one.

use exercises::catalogue::Figure as Drawing;
use exercises::figure::{Size, Stage};
use exercises::run::SetUp;
use leptos::prelude::*;
use leptos::svg;
use wasm_bindgen::JsCast;

use super::{clock, paint};

/// The default size of a figure's box.
const SIZE: Size = Size { width: 240.0, height: 240.0 };
/// A narrow box, for a figure beside a string.
pub const NARROW: Size = Size { width: 150.0, height: 240.0 };
/// Duration of the movement from the first position to the last, in milliseconds.
const WAY_MS: f64 = 1_800.0;
/// How long it stays in the last position before it goes back, in milliseconds. The whole movement takes less than five seconds:
/// longer movement that starts by itself needs a way to stop it (WCAG 2.2, 2.2.2), and a page that is open all day should rest.
const STAY_MS: f64 = 900.0;

/// A figure. With `pose` it is held there (0 first, 1 last position). Without, it moves to its last position once, and again when it
/// is touched, unless the person prefers no movement; with `rests` it moves only when touched. What is repeated is shown there and
/// back. With `held` it stays in the last position, because what stands still is what a person copies. `mirrored` shows the other
/// side, `set_up` where the phone is in a balance trial. The words beside it describe it, so it is hidden from screen readers.
#[component]
pub fn Figure(
    drawing: Drawing,
    #[prop(optional)] mirrored: bool,
    #[prop(optional)] rests: bool,
    #[prop(optional)] held: bool,
    #[prop(optional, into)] pose: Option<Signal<f64>>,
    #[prop(optional, into)] set_up: Option<Signal<SetUp>>,
    #[prop(default = SIZE)] size: Size,
) -> impl IntoView {
    let group = NodeRef::<svg::G>::new();
    let drawing = StoredValue::new(drawing);
    let stage = move |drawing: &Drawing| match set_up {
        Some(set_up) => Stage::of_trial(drawing, set_up.get(), size),
        None => Stage::new(drawing, size),
    };
    let draw = move |phase: f64| {
        if let Some(group) = group.get_untracked() {
            drawing.with_value(|drawing| paint::paint(group.unchecked_ref(), &stage(drawing).draw(phase)));
        }
    };
    let moves = pose.is_none() && drawing.with_value(|drawing| drawing.poses.len() > 1) && !clock::is_still();
    Effect::new(move || {
        group.track();
        draw(pose.map_or(if moves && !(held && rests) { 0.0 } else { 1.0 }, |pose| pose.get()));
    });
    let owner = Owner::current();
    let moving = StoredValue::new(false);
    let go = move || {
        if !moves || moving.get_value() {
            return;
        }
        moving.set_value(true);
        let begun = clock::steady_ms();
        let frame = move |at: f64| {
            let since = (at - begun).max(0.0);
            draw(if held { there(since) } else { there_and_back(since) });
            let goes_on = since < if held { WAY_MS } else { 2.0 * WAY_MS + STAY_MS };
            moving.set_value(goes_on);
            goes_on
        };
        // The movement ends with the figure, even if a touch started it.
        if let Some(owner) = &owner {
            owner.with(|| clock::frames_while(frame));
        }
    };
    if !rests {
        go();
    }
    let turn = if mirrored { format!("translate({} 0) scale(-1 1)", size.width) } else { String::new() };
    let frame = format!("0 0 {} {}", size.width, size.height);
    view! {
        <svg class="figure" viewBox=frame aria-hidden="true" on:pointerdown=move |_| go()><g transform=turn node_ref=group></g></svg>
    }
}

/// The position of the figure at this time after the start, on the way there.
fn there(since_ms: f64) -> f64 {
    (since_ms / WAY_MS).min(1.0)
}

/// The position of the figure at this time after the start: there, a stay, and back.
fn there_and_back(since_ms: f64) -> f64 {
    if since_ms < WAY_MS + STAY_MS { there(since_ms) } else { 1.0 - ((since_ms - WAY_MS - STAY_MS) / WAY_MS).min(1.0) }
}
