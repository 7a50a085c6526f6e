//! The figure: moving gently between its positions, or held at one.

use exercises::catalogue::Figure as Drawing;
use exercises::figure::{Size, Stage};
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
/// How long it stays at each end.
const STAY_MS: f64 = 900.0;

/// A figure. With `pose` it stands there (0 first, 1 last position); without it goes to and fro, unless the person wants no
/// movement. `mirrored` shows the other side. It is described by the words beside it, so it is hidden from readers.
#[component]
pub fn Figure(
    drawing: Drawing,
    #[prop(optional)] mirrored: bool,
    #[prop(optional, into)] pose: Option<Signal<f64>>,
    #[prop(default = SIZE)] size: Size,
) -> impl IntoView {
    let group = NodeRef::<svg::G>::new();
    let drawing = StoredValue::new(drawing);
    let draw = move |phase: f64| {
        if let Some(group) = group.get_untracked() {
            drawing.with_value(|drawing| paint::paint(group.unchecked_ref(), &Stage::new(drawing, size).draw(phase)));
        }
    };
    let moves = pose.is_none() && drawing.with_value(|drawing| drawing.poses.len() > 1) && !clock::is_still();
    Effect::new(move || {
        group.track();
        draw(pose.map_or(if moves { 0.0 } else { 1.0 }, |pose| pose.get()));
    });
    if moves {
        clock::each_frame(move |at| draw(to_and_fro(at)));
    }
    let turn = if mirrored { format!("translate({} 0) scale(-1 1)", size.width) } else { String::new() };
    let frame = format!("0 0 {} {}", size.width, size.height);
    view! {
        <svg class="figure" viewBox=frame aria-hidden="true"><g transform=turn node_ref=group></g></svg>
    }
}

/// Where on its way the figure is at a moment: out, a stay, back, a stay.
fn to_and_fro(at_ms: f64) -> f64 {
    let round = at_ms.rem_euclid(2.0 * (WAY_MS + STAY_MS));
    if round < WAY_MS {
        round / WAY_MS
    } else if round < WAY_MS + STAY_MS {
        1.0
    } else {
        1.0 - ((round - WAY_MS - STAY_MS) / WAY_MS).min(1.0)
    }
}
