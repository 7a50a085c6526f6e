//! The days' strings of one item, painted.

use exercises::chart::{DayShape, MarkAt, Shape, Weeks, weeks};
use exercises::id::ItemId;
use leptos::prelude::*;
use words::{Key, Words};

use super::desk::Desk;

/// The strings, as wide as the left column; a longer time can be scrolled.
#[component]
pub fn WeeksChart(item: ItemId, broke_off: Option<u16>) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let label = desk.read(|_, names| words.fill(Key::ChartDays, &[("name", &names.item(item))])).unwrap_or_default();
    let chart = move || {
        let axis = desk.days(desk.columns.get().0)?;
        let chart = desk.read(|review, _| weeks(&review.days, item, &axis, broke_off)).flatten()?;
        Some(paint(words, &chart))
    };
    view! { <div class="chart" data-scrolls role="img" aria-label=label tabindex="0">{chart}</div> }
}

fn paint(words: Words, chart: &Weeks) -> impl IntoView + use<> {
    let foot = chart.height - 6.0;
    let hours = chart
        .hours
        .iter()
        .map(|hour| view! { <text class="axis number" x=0 y=hour.y + 5.0>{words.minute(hour.minute)}</text> });
    let dates = chart
        .starts
        .iter()
        .map(|start| view! { <text class="axis" x=start.x - 4.0 y=foot>{words.date_short(start.date)}</text> });
    let broke = chart.broke_off.map(|x| view! { <line class="broke-off" x1=x x2=x y1=2.0 y2=chart.height - 22.0/> });
    let days = chart.days.iter().map(|day| paint_day(words, day, chart.knot));
    view! {
        <svg width=chart.width height=chart.height viewBox=format!("0 0 {} {}", chart.width, chart.height)>
            {hours.collect_view()}{dates.collect_view()}{broke}{days.collect_view()}
        </svg>
    }
}

fn paint_day(words: Words, day: &DayShape, knot: f64) -> impl IntoView + use<> {
    let x = day.x;
    let class = if day.seen { "string" } else { "string unseen" };
    let pieces = day.pieces.iter().map(|(from, to)| view! { <line class=class x1=x x2=x y1=*from y2=*to/> });
    let marks = day
        .marks
        .iter()
        .map(|mark| view! { <g><title>{title(words, mark)}</title>{paint_mark(mark.shape, x, mark.y, knot)}</g> });
    view! { <g>{pieces.collect_view()}{marks.collect_view()}</g> }
}

/// "14:00, left out: not in a suitable place", shown when the pointer rests on it.
fn title(words: Words, mark: &MarkAt) -> String {
    format!("{}, {}", words.minute(mark.minute), words.mark(mark.mark))
}

/// One mark around a point.
pub fn paint_mark(shape: Shape, x: f64, y: f64, r: f64) -> AnyView {
    match shape {
        Shape::Knot => view! { <circle class="knot" cx=x cy=y r=r/> }.into_any(),
        Shape::Half => view! {
            <circle class="half" cx=x cy=y r=r - 0.6/>
            <path class="knot" d=format!("M{} {y}A{r} {r} 0 0 0 {} {y}Z", x - r, x + r)/>
        }
        .into_any(),
        Shape::Loop => view! { <circle class="loop" cx=x cy=y r=r - 0.4/> }.into_any(),
        Shape::Bar => view! { <line class="bar-across" x1=x - r x2=x + r y1=y y2=y/> }.into_any(),
        Shape::Cross => {
            let d = r * 0.9;
            let (left, right, top, foot) = (x - d, x + d, y - d, y + d);
            view! { <path class="cross" d=format!("M{left} {top}L{right} {foot}M{right} {top}L{left} {foot}")/> }.into_any()
        }
    }
}
