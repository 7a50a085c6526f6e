//! Chart of scores from 0 to 10 by day.

use exercises::chart::{Lines, Point};
use leptos::prelude::*;
use words::Key;

use super::{dates, plan_changes};
use crate::shared::width::rem;
use crate::shared::{AppContext, paint};

/// A line of scores, with lines at `changes` of the plan; the ratings at the visits are open diamonds beside it. `label` names the picture.
#[component]
pub fn LinesView(chart: Lines, label: String, #[prop(optional)] changes: Vec<f64>) -> impl IntoView {
    let words = AppContext::current().words();
    let Lines { width, height, points, pieces, at_visits, ticks, starts } = chart;
    let across = ticks.map(|(y, score)| {
        view! {
            <path class="axis" d=format!("M38 {y:.1}H{width:.1}")/>
            <text class="tick number" x="30" y=y + 5.0 text-anchor="end">{score.points()}</text>
        }
    });
    let pieces = pieces.into_iter().map(|piece| view! { <polyline class="score-line" points=paint::points(&piece)/> });
    let points = points.into_iter().map(|point| {
        view! {
            <circle class="score" cx=point.x cy=point.y r="3.4"><title>{point.score.points()}</title></circle>
        }
    });
    let visits = at_visits.into_iter().map(|point| {
        let Point { x, y, score, .. } = point;
        let d = format!("M{x:.1} {:.1}L{:.1} {y:.1}L{x:.1} {:.1}L{:.1} {y:.1}Z", y - 6.0, x + 5.0, y + 6.0, x - 5.0);
        view! { <path class="score-visit" d=d><title>{words.named_text(words.text(Key::ChartAtVisit), &score.to_string())}</title></path> }
    });
    view! {
        <div class="chart-scroll" data-scrolls tabindex="0" role="img" aria-label=label>
            <svg class="chart" width=rem(width) height=rem(height) viewBox=format!("0 0 {width} {height}")>
                {across}{plan_changes(changes, height - 24.0)}{pieces.collect_view()}{points.collect_view()}{visits.collect_view()}{dates(starts, height)}
            </svg>
        </div>
    }
}
