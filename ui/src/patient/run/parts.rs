//! The parts of a run as a string with knots.

use exercises::day_string::parts;
use exercises::plan::Side;
use exercises::run::Run;
use leptos::prelude::*;
use words::Key;

use crate::patient::string_piece::piece;
use crate::shared::AppContext;

/// The parts of a run with what was done in each.
#[component]
pub fn Parts(run: Run, side: Side) -> impl IntoView {
    let words = AppContext::current().words();
    let rows = parts(&run, side).into_iter().map(|row| {
        view! {
            <li class="knot-row">
                <span class="number">{row.number}</span>
                {piece(row.above, row.shape, row.below)}
                <span class="said number">{words.with_side(words.part_done(row.done), row.side)}</span>
            </li>
        }
    });
    view! { <ol class="day parts" aria-label=words.text(Key::PartsLabel)>{rows.collect_view()}</ol> }
}
