//! Charts, drawn as the domain lays them out.

mod legend;
mod lines;
mod stance;
mod weeks;

pub use legend::Legend;
pub use lines::LinesView;
pub use stance::StanceView;
pub use weeks::WeeksChart;

use exercises::chart::WeekStart;
use leptos::prelude::*;

use super::AppContext;

/// Lines at the places where the plan changed, down to `foot`.
fn plan_changes(changes: Vec<f64>, foot: f64) -> impl IntoView {
    let line = |x: f64| view! { <path class="plan-change" d=format!("M{x:.1} 0V{foot:.1}")/> };
    changes.into_iter().map(line).collect_view()
}

/// Dates below a chart.
fn dates(starts: Vec<WeekStart>, height: f64) -> impl IntoView {
    let words = AppContext::current().words();
    let marks = starts.into_iter().map(|start| {
        view! { <text class="tick" x=start.x - 4.0 y=height - 5.0>{words.date_short(start.date)}</text> }
    });
    marks.collect_view()
}
