//! A piece of string with its knot or other sign, as high as the row beside it.

use exercises::day_string::{KnotShape, Segment};
use leptos::prelude::*;

use crate::shared::half_knot::half_knot;

/// Radius of a knot in its box of 20.
const KNOT: f64 = 6.5;

/// The string above, the knot, the string below.
pub fn piece(above: Segment, shape: KnotShape, below: Segment) -> impl IntoView {
    view! {
        <span class="thread" aria-hidden="true">
            <span class=segment(above)></span>
            {knot(shape)}
            <span class=segment(below)></span>
        </span>
    }
}

fn segment(segment: Segment) -> &'static str {
    match segment {
        Segment::Past => "strand past",
        Segment::ToCome => "strand to-come",
        Segment::Gap => "strand gap",
        Segment::End => "strand end",
    }
}

/// The knot or other sign in the string.
fn knot(shape: KnotShape) -> AnyView {
    match shape {
        KnotShape::Gap => view! { <span class="strand gap tie"></span> }.into_any(),
        KnotShape::Bob => view! { <svg class="tie bob-tie" viewBox="0 0 20 28"><path class="bob" d="M10 0L17 12L10 28L3 12Z"/></svg> }.into_any(),
        KnotShape::Knot => view! { <svg class="tie" viewBox="0 0 20 20"><circle class="done" cx="10" cy="10" r=KNOT/></svg> }.into_any(),
        KnotShape::Half(part) => {
            let (string, knot) = ("M10 0V20", half_knot(part, 10.0, 10.0, KNOT));
            view! { <svg class="tie" viewBox="0 0 20 20"><path class="string" d=string/>{knot}</svg> }.into_any()
        }
        KnotShape::Loop => view! { <svg class="tie" viewBox="0 0 20 20"><circle class="loop" cx="10" cy="10" r="5.5"/></svg> }.into_any(),
        KnotShape::Bar => view! { <svg class="tie" viewBox="0 0 20 20"><path class="ink-line" d="M10 0V20M3 10H17"/></svg> }.into_any(),
        KnotShape::Cross => view! { <svg class="tie" viewBox="0 0 20 20"><path class="alarm-line" d="M4 4L16 16M16 4L4 16"/></svg> }.into_any(),
        KnotShape::Peg => view! { <svg class="tie" viewBox="0 0 20 20"><path class="string-to-come" d="M10 0V20"/><path class="peg" d="M10 10H18"/></svg> }.into_any(),
    }
}
