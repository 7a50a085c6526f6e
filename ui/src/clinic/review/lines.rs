//! Scores from 0 to 10, painted.

use exercises::chart::{Lines, lines};
use leptos::prelude::*;
use words::{Key, Words};

use super::desk::Desk;

/// A line of scores as wide as the right column. The visits' own ratings are open diamonds beside it.
#[component]
pub fn ScoreLine(name: String, points: Vec<(u16, u8)>, at_visits: Vec<(u16, u8)>) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let label = words.fill(Key::ChartLine, &[("name", &name)]);
    let chart = move || {
        let axis = desk.days(desk.columns.get().1)?;
        Some(paint(words, &lines(&points, &at_visits, &axis)))
    };
    view! { <div class="chart" data-scrolls role="img" aria-label=label tabindex="0">{chart}</div> }
}

fn paint(words: Words, chart: &Lines) -> impl IntoView + use<> {
    let (width, height) = (chart.width, chart.height);
    let ticks = chart.ticks.iter().map(move |(y, score)| view! {
        <text class="axis number" x="30" y=y + 5.0 text-anchor="end">{*score}</text><line class="grid" x1="38" x2=width y1=*y y2=*y/>
    });
    let dates = chart
        .starts
        .iter()
        .map(move |start| view! { <text class="axis" x=start.x - 4.0 y=height - 6.0>{words.date_short(start.date)}</text> });
    let pieces = chart.pieces.iter().map(|piece| {
        let points: Vec<String> = piece.iter().map(|(x, y)| format!("{x:.1},{y:.1}")).collect();
        view! { <polyline class="score-line" points=points.join(" ")/> }
    });
    let start = chart.points.iter().map(move |point| {
        view! {
            <circle class="score" cx=point.x cy=point.y r="3.4"><title>{point.score}</title></circle>
        }
    });
    let visits = chart.at_visits.iter().map(move |visit| {
        let (x, y) = (visit.x, visit.y);
        let d = format!("M{x} {}L{} {y}L{x} {}L{} {y}Z", y - 6.0, x + 5.0, y + 6.0, x - 5.0);
        view! { <path class="visit-score" d=d><title>{words.text(Key::ChartAtVisit)}": "{visit.score}</title></path> }
    });
    view! {
        <svg width=width height=height viewBox=format!("0 0 {width} {height}")>
            {ticks.collect_view()}{dates.collect_view()}{pieces.collect_view()}{start.collect_view()}{visits.collect_view()}
        </svg>
    }
}
