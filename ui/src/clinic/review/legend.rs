//! What the marks on the strings mean.

use exercises::chart::{Sign, signs};
use leptos::prelude::*;

use super::desk::Desk;
use super::weeks::paint_mark;

/// Where a sample of string stands, and how long it is.
const X: f64 = 8.0;
const MIDDLE: f64 = 10.0;
const FOOT: f64 = 20.0;

/// The signs that occur in this review, each with its words.
#[component]
pub fn Legend() -> impl IntoView {
    let desk = Desk::here();
    let occur = desk.read(|review, _| signs(&review.days)).unwrap_or_default();
    let entries = occur.into_iter().map(|sign| view! { <li><Sample sign/>{desk.words.sign(sign)}</li> });
    view! { <ul class="legend small soft">{entries.collect_view()}</ul> }
}

/// A piece of string with one sign.
#[component]
fn Sample(sign: Sign) -> impl IntoView {
    let string = if sign == Sign::Gap { vec![(0.0, 4.0), (16.0, FOOT)] } else { vec![(0.0, FOOT)] };
    let class = if sign == Sign::Unseen { "string unseen" } else { "string" };
    let pieces = string.into_iter().map(|(from, to)| view! { <line class=class x1=X x2=X y1=from y2=to/> });
    let mark = match sign {
        Sign::Mark(shape) => Some(paint_mark(shape, X, MIDDLE, 4.6)),
        Sign::Gap | Sign::Unseen => None,
    };
    view! { <svg width="16" height="20" aria-hidden="true">{pieces.collect_view()}{mark}</svg> }
}
