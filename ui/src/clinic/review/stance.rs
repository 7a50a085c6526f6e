//! Seconds on one leg by day, painted.

use exercises::chart::{StanceChart, StanceGroup, StancePoint, stance};
use exercises::plan::Leg;
use leptos::prelude::*;
use words::{Key, Words};

use super::desk::Desk;

/// Half of a mark's width.
const R: f64 = 4.0;
/// Room for the legs' names at the right end.
const NAMES: f64 = 64.0;

/// The left leg's days as filled circles, the right's as open squares, the cap as a dashed line.
#[component]
pub fn StancePainted(group: StanceGroup) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let chart = move || {
        let axis = desk.days(desk.columns.get().1 - NAMES)?;
        Some(paint(words, &stance(&group, &axis)))
    };
    view! { <div class="chart" data-scrolls role="img" aria-label=words.text(Key::ChartStance) tabindex="0">{chart}</div> }
}

fn paint(words: Words, chart: &StanceChart) -> impl IntoView + use<> {
    let (width, height, (cap, seconds)) = (chart.width + NAMES, chart.height, chart.cap);
    let end = chart.width - 6.0;
    let dates = chart
        .starts
        .iter()
        .map(move |start| view! { <text class="axis" x=start.x - 4.0 y=height - 6.0>{words.date_short(start.date)}</text> });
    let names = chart.ends.iter().map(
        move |one| view! { <text class=leg_class(one.leg) x=end + 6.0 y=one.y + 5.0>{words.leg_short(one.leg)}</text> },
    );
    let trends = chart.trends.iter().map(|line| {
        view! { <line class=format!("trend {}", leg_class(line.leg)) x1=line.from.0 y1=line.from.1 x2=line.to.0 y2=line.to.1/> }
    });
    let points = chart.points.iter().map(|point| paint_point(words, point));
    view! {
        <svg width=width height=height viewBox=format!("0 0 {width} {height}")>
            <text class="axis number" x="30" y=cap + 5.0 text-anchor="end">{seconds}</text>
            <line class="cap" x1="38" x2=end y1=cap y2=cap/>
            <text class="axis number" x="30" y=chart.foot + 5.0 text-anchor="end">"0"</text>
            <line class="grid" x1="38" x2=end y1=chart.foot y2=chart.foot/>
            {dates.collect_view()}{trends.collect_view()}{points.collect_view()}{names.collect_view()}
        </svg>
    }
}

fn leg_class(leg: Leg) -> &'static str {
    match leg {
        Leg::Left => "left",
        Leg::Right => "right",
    }
}

/// A day of one leg, with a tick upward where a trial reached the cap.
fn paint_point(words: Words, point: &StancePoint) -> impl IntoView + use<> {
    let (x, y) = (point.x, point.y);
    let mark = match point.leg {
        Leg::Left => view! { <circle class="left" cx=x cy=y r=R/> }.into_any(),
        Leg::Right => {
            view! { <rect class="right" x=x - R + 0.5 y=y - R + 0.5 width=2.0 * R - 1.0 height=2.0 * R - 1.0/> }.into_any()
        }
    };
    let capped = point.day.capped.then(|| view! { <line class="capped" x1=x x2=x y1=y - R y2=y - R - 5.0/> });
    view! { <g><title>{words.leg_short(point.leg)}" "{words.number(point.day.median_s)}" s"</title>{capped}{mark}</g> }
}
