//! The days' strings side by side.

use exercises::chart::{DayShape, MarkAt, Shape, Weeks};
use leptos::prelude::*;

use super::dates;
use crate::shared::House;

/// The strings of one item. `label` names the picture; the words beside it say what it shows.
#[component]
pub fn WeeksChart(chart: Weeks, label: String) -> impl IntoView {
    let words = House::here().words();
    let Weeks { width, height, knot, days, hours, starts, broke_off } = chart;
    let hours = hours.into_iter().map(|hour| {
        view! { <text class="tick number" x=0 y=hour.y + 5.0>{words.minute(hour.minute)}</text> }
    });
    let parted = broke_off.map(|x| view! { <path class="parting" d=format!("M{x:.1} 0V{:.1}", height - 24.0)/> });
    let days = days.into_iter().map(|day| string(day, knot)).collect_view();
    let named = label.clone();
    view! {
        <div class="chart-scroll" tabindex="0" role="group" aria-label=named>
            <svg class="chart" width=width height=height viewBox=format!("0 0 {width} {height}") role="img" aria-label=label>
                {hours.collect_view()}
                {parted}
                {days}
                {dates(starts, height)}
            </svg>
        </div>
    }
}

fn string(day: DayShape, knot: f64) -> AnyView {
    let x = day.x;
    let class = if day.seen { "string" } else { "string unseen" };
    let pieces = day.pieces.into_iter().map(|(from, to)| view! { <path class=class d=format!("M{x:.1} {from:.1}V{to:.1}")/> });
    let marks = day.marks.into_iter().map(|mark| tied(mark, x, knot)).collect_view();
    view! { <g>{pieces.collect_view()}{marks}</g> }.into_any()
}

fn tied(mark: MarkAt, x: f64, knot: f64) -> AnyView {
    let y = mark.y;
    match mark.shape {
        Shape::Knot => view! { <circle class="done" cx=x cy=y r=knot/> }.into_any(),
        Shape::Half => {
            let below = format!("M{:.1} {y:.1}A{knot:.1} {knot:.1} 0 0 0 {:.1} {y:.1}Z", x - knot, x + knot);
            view! { <circle class="done-edge" cx=x cy=y r=knot/><path class="done" d=below/> }.into_any()
        }
        Shape::Loop => view! { <circle class="loop" cx=x cy=y r=knot/> }.into_any(),
        Shape::Bar => view! { <path class="ink-line" d=format!("M{:.1} {y:.1}H{:.1}", x - knot, x + knot)/> }.into_any(),
        Shape::Cross => {
            let (left, right, up, down) = (x - knot, x + knot, y - knot, y + knot);
            view! { <path class="alarm-line" d=format!("M{left:.1} {up:.1}L{right:.1} {down:.1}M{left:.1} {down:.1}L{right:.1} {up:.1}")/> }.into_any()
        }
    }
}
