//! Chart of the days' strings side by side.

use exercises::chart::{DayShape, LEFT, MarkAt, Shape, Weeks};
use leptos::html::Div;
use leptos::prelude::*;
use words::Words;

use super::{dates, plan_changes};
use crate::shared::AppContext;
use crate::shared::half_knot::half_knot;
use crate::shared::width::rem;

/// The strings of one item, with lines at `changes` of the plan; a period too long for the page is scrolled, and begins at its
/// latest days. `label` names the picture; the words beside it describe it.
#[component]
pub fn WeeksChart(chart: Weeks, label: String, #[prop(optional)] changes: Vec<f64>) -> impl IntoView {
    let words = AppContext::current().words();
    let Weeks { width, height, knot, days, bands, hours, starts, broke_off } = chart;
    let hours = hours
        .into_iter()
        .map(|hour| view! { <text class="tick number" x=0 y=hour.y + 5.0>{words.minute(hour.minute)}</text> });
    let parted = broke_off.map(|x| view! { <path class="parting" d=format!("M{x:.1} 0V{:.1}", height - 24.0)/> });
    let foot = height - 24.0;
    let bands = bands
        .into_iter()
        .map(|(from, to)| view! { <rect class="paused-band" x=from y="2" width=to - from height=foot - 2.0/> });
    let days = days.into_iter().map(|day| string(words, day, knot)).collect_view();
    let strings = width - LEFT;
    let scrolled = NodeRef::<Div>::new();
    Effect::new(move || {
        if let Some(scrolled) = scrolled.get() {
            request_animation_frame(move || scrolled.set_scroll_left(scrolled.scroll_width()));
        }
    });
    // Days to the left of the visible ones fade out, because a date that is cut in the middle looks like a fault.
    let goes_on = RwSignal::new(false);
    let look = move |_| goes_on.set(scrolled.get_untracked().is_some_and(|scrolled| scrolled.scroll_left() > 2));
    view! {
        <div class="weeks">
            <svg class="chart" width=rem(LEFT) height=rem(height) viewBox=format!("0 0 {LEFT} {height}") aria-hidden="true">{hours.collect_view()}</svg>
            <div class="chart-scroll" class:goes-on=goes_on data-scrolls tabindex="0" role="img" aria-label=label node_ref=scrolled on:scroll=look>
                <svg class="chart" width=rem(strings) height=rem(height) viewBox=format!("{LEFT} 0 {strings} {height}")>
                    {bands.collect_view()}{plan_changes(changes, foot)}{parted}{days}{dates(starts, height)}
                </svg>
            </div>
        </div>
    }
}

fn string(words: Words, day: DayShape, knot: f64) -> AnyView {
    let x = day.x;
    let class = if day.seen { "string" } else { "string unseen" };
    let pieces =
        day.pieces.into_iter().map(|(from, to)| view! { <path class=class d=format!("M{x:.1} {from:.1}V{to:.1}")/> });
    let marks = day.marks.into_iter().map(|mark| {
        let MarkAt { y, shape, minute, mark } = mark;
        let said = words.list_comma(&words.minute(minute), &words.mark(mark));
        view! { <g><title>{said}</title>{tied(shape, x, y, knot)}</g> }
    });
    view! { <g>{pieces.collect_view()}{marks.collect_view()}</g> }.into_any()
}

/// One mark around a point.
pub fn tied(shape: Shape, x: f64, y: f64, r: f64) -> AnyView {
    match shape {
        Shape::Knot => view! { <circle class="done" cx=x cy=y r=r/> }.into_any(),
        // The share done is given as text beside the chart, and when the knot is pointed at.
        Shape::Half => half_knot(0.5, x, y, r),
        Shape::Loop => view! { <circle class="loop" cx=x cy=y r=r - 0.3/> }.into_any(),
        Shape::Bar => view! { <path class="ink-line" d=format!("M{:.1} {y:.1}H{:.1}", x - r, x + r)/> }.into_any(),
        Shape::Cross => {
            view! { <rect class="paused-band" x=x - r - 2.0 y=y - r - 5.0 width=2.0 * r + 4.0 height=2.0 * r + 10.0/> }
                .into_any()
        }
    }
}
