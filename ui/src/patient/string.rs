//! The day as a string: a row for each slot, with its piece of string drawn beside the words.

use exercises::day_string::{DayRow, KnotShape, day};
use exercises::history::Mark;
use exercises::today::Today;
use leptos::prelude::*;
use words::Key;

use super::context::PatientContext;
use super::string_piece::piece;

/// The day's string with its times and words.
#[component]
pub fn DayString(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let several = today.items.len() > 1;
    let name = |row: &DayRow| {
        let (plan, slot) = row.slot?;
        let item = today.items.iter().find(|item| (item.plan, item.item.id) == (plan, slot.item))?;
        let text = item.exercise.text(words.lang())?;
        several.then(|| text.name.clone())
    };
    let rows: Vec<_> = day(&today).into_iter().map(|row| (name(&row), row)).collect();
    let rows = rows.into_iter().map(|(name, row)| {
        let what = match row.mark {
            None => words.text(Key::RowNow).to_owned(),
            Some(Mark::Due | Mark::ToCome) if row.paused => words.text(Key::MarkPaused).to_owned(),
            Some(mark) => words.mark(mark),
        };
        let knot = row.slot.and_then(|of| today.string.iter().find(|knot| (knot.plan, knot.slot) == of));
        let reminds = knot.and_then(|knot| knot.put_off).map(|until| {
            let again = words.reminds_at(&words.minute(until.minute()));
            view! { ", "<span class="brass">{again}</span> }
        });
        let open = (row.mark == Some(Mark::Due) && !row.paused && row.shape != KnotShape::Bob).then_some(row.slot).flatten();
        let what = match open {
            Some((_, slot)) => {
                view! { <button type="button" class="link" on:click=move |_| context.chosen.set(Some(slot))>{what}</button> }
                    .into_any()
            }
            None => what.into_any(),
        };
        view! {
            <li class="knot-row" class:now=row.shape == KnotShape::Bob>
                <span class="number">{words.minute(row.minute)}</span>
                {piece(row.above, row.shape, row.below)}
                <span class="said">{name.map(|name| view! { <span class="soft">{name}": "</span> })}{what}{reminds}</span>
            </li>
        }
    });
    let label = context.app.text(Key::DayLabel);
    view! { <ol class="day" aria-label=label>{rows.collect_view()}</ol> }
}
