//! What the marks on the strings mean.

use exercises::chart::Shape;
use leptos::prelude::*;

use super::desk::Desk;
use super::weeks::paint_mark;

/// Where a sample of string stands, and how long it is.
const X: f64 = 8.0;
const MIDDLE: f64 = 10.0;
const FOOT: f64 = 20.0;

/// The marks that occur in this review, each with its words.
#[component]
pub fn Legend() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let occurs = desk
        .read(|review, _| {
            let marks = || review.days.iter().filter(|day| day.seen).flat_map(|day| day.knots.iter().map(|knot| knot.mark));
            let shapes = Shape::ALL.into_iter().map(Some).chain([None]);
            let found: Vec<Option<Shape>> = shapes.filter(|shape| marks().any(|mark| Shape::of(mark) == *shape)).collect();
            (found, review.days.iter().any(|day| !day.seen && !day.knots.is_empty()))
        })
        .unwrap_or_default();
    let entries = occurs.0.into_iter().map(move |shape| view! { <li><Sample shape/>{words.legend(shape)}</li> });
    let unseen = occurs.1.then(|| view! {
        <li><svg width="16" height="20"><line class="string unseen" x1=X x2=X y1="0" y2=FOOT/></svg>{words.legend_no_record()}</li>
    });
    view! { <ul class="legend small soft">{entries.collect_view()}{unseen}</ul> }
}

/// A piece of string with one mark, or with a gap.
#[component]
fn Sample(shape: Option<Shape>) -> impl IntoView {
    let string = if shape.is_some() { vec![(0.0, FOOT)] } else { vec![(0.0, 4.0), (16.0, FOOT)] };
    let pieces = string.into_iter().map(|(from, to)| view! { <line class="string" x1=X x2=X y1=from y2=to/> });
    view! {
        <svg width="16" height="20">{pieces.collect_view()}{shape.map(|shape| paint_mark(shape, X, MIDDLE, 4.6))}</svg>
    }
}
