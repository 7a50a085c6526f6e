//! Scores from 0 to 10 by day.

use exercises::chart::Lines;
use leptos::prelude::*;

use super::dates;
use crate::shared::paint;

/// A line of scores; the visits' own ratings are open diamonds beside it.
#[component]
pub fn LinesView(chart: Lines, label: String) -> impl IntoView {
    let Lines { width, height, points, pieces, at_visits, ticks, starts } = chart;
    let across = ticks.map(|(y, score)| {
        view! {
            <path class="axis" d=format!("M30 {y:.1}H{width:.1}")/>
            <text class="tick number" x=0 y=y + 5.0>{score}</text>
        }
    });
    let pieces = pieces.into_iter().map(|piece| view! { <polyline class="score-line" points=paint::points(&piece)/> });
    let points = points.into_iter().map(|point| view! { <circle class="score" cx=point.x cy=point.y r="3.5"/> });
    let visits = at_visits.into_iter().map(|point| {
        let (x, y) = (point.x, point.y);
        view! { <path class="score-visit" d=format!("M{x:.1} {:.1}L{:.1} {y:.1}L{x:.1} {:.1}L{:.1} {y:.1}Z", y - 6.0, x + 5.0, y + 6.0, x - 5.0)/> }
    });
    let named = label.clone();
    view! {
        <div class="chart-scroll" tabindex="0" role="group" aria-label=named>
            <svg class="chart" width=width height=height viewBox=format!("0 0 {width} {height}") role="img" aria-label=label>
                {across}
                {pieces.collect_view()}
                {points.collect_view()}
                {visits.collect_view()}
                {dates(starts, height)}
            </svg>
        </div>
    }
}
