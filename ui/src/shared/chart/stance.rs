//! Seconds on one leg by day.

use exercises::chart::{StanceChart, StancePoint};
use exercises::plan::Leg;
use leptos::prelude::*;

use super::dates;
use crate::shared::House;

/// One chart, both legs in it. `label` names the picture; the words beside it say what it shows.
#[component]
pub fn StanceView(chart: StanceChart, label: String) -> impl IntoView {
    let words = House::here().words();
    let StanceChart { width, height, foot, cap: (cap_y, cap_s), points, trends, ends, starts } = chart;
    let trends = trends.into_iter().map(|trend| {
        let ((x1, y1), (x2, y2)) = (trend.from, trend.to);
        view! { <path class=leg_class(trend.leg, "trend") d=format!("M{x1:.1} {y1:.1}L{x2:.1} {y2:.1}")/> }
    });
    let ends = ends.into_iter().map(|end| {
        view! { <text class="end-label" x=width y=end.y + 5.0 text-anchor="end">{words.leg_short(end.leg)}</text> }
    });
    let named = label.clone();
    view! {
        <div class="chart-scroll" tabindex="0" role="group" aria-label=named>
            <svg class="chart" width=width height=height viewBox=format!("0 0 {width} {height}") role="img" aria-label=label>
                <path class="axis" d=format!("M30 {foot:.1}H{width:.1}")/>
                <path class="cap" d=format!("M30 {cap_y:.1}H{width:.1}")/>
                <text class="tick number" x=0 y=cap_y + 5.0>{cap_s}" s"</text>
                <text class="tick number" x=0 y=foot + 5.0>"0"</text>
                {trends.collect_view()}
                {points.into_iter().map(point).collect_view()}
                {ends.collect_view()}
                {dates(starts, height)}
            </svg>
        </div>
    }
}

/// The left is a filled circle, the right an open square; a tick upward says "at least".
fn point(point: StancePoint) -> AnyView {
    let StancePoint { x, y, leg, day } = point;
    let tick = day.capped.then(|| view! { <path class="ink-line" d=format!("M{x:.1} {:.1}V{:.1}", y - 4.0, y - 9.0)/> });
    match leg {
        Leg::Left => view! { <circle class="leg-left" cx=x cy=y r="4"/>{tick} }.into_any(),
        Leg::Right => view! { <rect class="leg-right" x=x - 3.5 y=y - 3.5 width="7" height="7"/>{tick} }.into_any(),
    }
}

fn leg_class(leg: Leg, what: &str) -> String {
    match leg {
        Leg::Left => format!("{what} of-left"),
        Leg::Right => format!("{what} of-right"),
    }
}
