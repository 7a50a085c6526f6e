//! Chart of seconds on one leg by day.

use exercises::chart::{StanceChart, StancePoint};
use exercises::plan::BodySide;
use leptos::prelude::*;
use words::Words;

use super::{dates, plan_changes};
use crate::shared::AppContext;
use crate::shared::width::rem;

/// One chart with both legs, each named at its end, with lines at `changes` of the plan. `label` names the picture; the words beside it describe it.
#[component]
pub fn StanceView(chart: StanceChart, label: String, #[prop(optional)] changes: Vec<f64>) -> impl IntoView {
    let words = AppContext::current().words();
    let StanceChart { width, end, height, foot, cap: (cap_y, cap_s), points, trends, ends, starts } = chart;
    let trends = trends.into_iter().map(|trend| {
        let ((x1, y1), (x2, y2)) = (trend.from, trend.to);
        view! { <path class=leg_class(trend.leg, "trend") d=format!("M{x1:.1} {y1:.1}L{x2:.1} {y2:.1}")/> }
    });
    let names = ends.into_iter().map(
        |one| view! { <text class=leg_class(one.leg, "end-label") x=one.x y=one.y + 5.0>{one.leg.map(|leg| words.leg_short(leg))}</text> },
    );
    let points = points.into_iter().map(|one| point(words, one)).collect_view();
    let to = end - 8.0;
    view! {
        <div class="chart-scroll" data-scrolls tabindex="0" role="img" aria-label=label>
            <svg class="chart" width=rem(width) height=rem(height) viewBox=format!("0 0 {width} {height}")>
                <path class="axis" d=format!("M38 {foot:.1}H{to:.1}")/>
                <path class="cap" d=format!("M38 {cap_y:.1}H{to:.1}")/>
                <text class="tick number" x="30" y=cap_y + 5.0 text-anchor="end">{cap_s}</text>
                <text class="tick number" x="30" y=foot + 5.0 text-anchor="end">"0"</text>
                {plan_changes(changes, foot)}{trends.collect_view()}{points}{names.collect_view()}{dates(starts, height)}
            </svg>
        </div>
    }
}

/// The left leg, and both feet, are a filled circle, the right leg an open square; a tick upward means "at least".
fn point(words: Words, point: StancePoint) -> AnyView {
    let StancePoint { x, y, leg, day } = point;
    let tick = day.capped.then(|| view! { <path class="ink-line" d=format!("M{x:.1} {:.1}V{:.1}", y - 4.0, y - 9.0)/> });
    let mark = match leg {
        Some(BodySide::Left) | None => view! { <circle class="leg-left" cx=x cy=y r="4"/> }.into_any(),
        Some(BodySide::Right) => view! { <rect class="leg-right" x=x - 3.5 y=y - 3.5 width="7" height="7"/> }.into_any(),
    };
    let said = words.review_visit_stance(&words.leg_or_both(leg), words.number(day.median_s));
    view! { <g><title>{said}</title>{tick}{mark}</g> }.into_any()
}

fn leg_class(leg: Option<BodySide>, what: &str) -> String {
    match leg {
        Some(BodySide::Left) | None => format!("{what} of-left"),
        Some(BodySide::Right) => format!("{what} of-right"),
    }
}
