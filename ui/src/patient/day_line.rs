//! The day as a string without words, shown beside a figure.

use exercises::day_string::{KnotShape, day};
use leptos::prelude::*;

use super::context::PatientContext;
use super::string_piece::piece;

/// With more rows than this they would overlap.
const MOST_ROWS: usize = 18;

/// The day's string without words, as high as the element beside it; its content is also given as text below. Only the bob has its
/// time.
#[component]
pub fn DayLine() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let shown = move || {
        let rows = context.today.with(|today| today.as_ref().map(day)).filter(|rows| rows.len() <= MOST_ROWS)?;
        let rows = rows.into_iter().map(|row| {
            let now = (row.shape == KnotShape::Bob)
                .then(|| view! { <span class="number small">{words.minute(row.minute)}</span> });
            view! { <span class="line-row">{now}{piece(row.above, row.shape, row.below)}</span> }
        });
        Some(view! { <div class="day-line" aria-hidden="true">{rows.collect_view()}</div> })
    };
    view! { {shown} }
}
