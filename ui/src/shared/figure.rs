//! The figure: moving gently through its positions, or held at one.

use exercises::catalogue::Figure as Drawing;
use exercises::figure::{Size, Stage};
use exercises::run::SetUp;
use leptos::prelude::*;
use leptos::svg;
use wasm_bindgen::JsCast;

use super::{clock, paint};

/// The box in which a figure is drawn where nothing else is said.
const SIZE: Size = Size { width: 240.0, height: 240.0 };
/// A narrow box, for beside a string.
pub const NARROW: Size = Size { width: 150.0, height: 240.0 };
/// One way from the first position to the last, in milliseconds.
const WAY_MS: f64 = 1_800.0;
/// How long it stays at the last position before it goes back. All of it is over within five seconds: what moves by itself for
/// longer needs a way to stop it (WCAG 2.2, 2.2.2), and a page that lies open all day should rest.
const STAY_MS: f64 = 900.0;

/// A figure. With `pose` it stands there (0 first, 1 last position); without it goes to its last position and back once, and again
/// when it is touched, unless the person wants no movement. One that `rests` only moves when it is touched. `mirrored` shows the other
/// side, `set_up` where the phone is in a balance trial. It is described by the words beside it, so it is hidden from readers.
#[component]
pub fn Figure(
    drawing: Drawing,
    #[prop(optional)] mirrored: bool,
    #[prop(optional)] rests: bool,
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
        draw(pose.map_or(if moves { 0.0 } else { 1.0 }, |pose| pose.get()));
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
            draw(there_and_back(since));
            let goes_on = since < 2.0 * WAY_MS + STAY_MS;
            moving.set_value(goes_on);
            goes_on
        };
        // It ends with the figure, also when a touch began it.
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

/// Where on its way the figure is, so long after it began: out, a stay, back.
fn there_and_back(since_ms: f64) -> f64 {
    if since_ms < WAY_MS + STAY_MS {
        (since_ms / WAY_MS).min(1.0)
    } else {
        1.0 - ((since_ms - WAY_MS - STAY_MS) / WAY_MS).min(1.0)
    }
}
