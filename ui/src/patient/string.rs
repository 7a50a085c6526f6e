//! The day as a string: a row for each slot, its piece of string drawn beside the words.

use exercises::history::Mark;
use exercises::thread::{DayRow, Filled, Strand, Tie, day, filled};
use exercises::today::Today;
use leptos::prelude::*;
use words::Key;

use super::desk::Desk;

/// A knot's radius in its box of 20.
const KNOT: f64 = 6.5;

/// The day's string with its times and words.
#[component]
pub fn DayString(today: Today) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let several = today.items.len() > 1;
    let name = |row: &DayRow| {
        let item = today.items.iter().find(|item| Some(item.item.id) == row.item)?;
        let text = item.exercise.text(words.lang)?;
        several.then(|| text.name.clone())
    };
    let rows: Vec<_> = day(&today).into_iter().map(|row| (name(&row), row)).collect();
    let rows = rows.into_iter().map(|(name, row)| {
        let what = match row.mark {
            None => words.text(Key::RowNow).to_owned(),
            Some(Mark::Due | Mark::ToCome) if row.held_back => words.text(Key::MarkHeldBack).to_owned(),
            Some(mark) => words.mark(mark),
        };
        let open = (row.mark == Some(Mark::Due) && !row.held_back && row.tie != Tie::Bob).then_some(row.slot).flatten();
        let what = match open {
            Some((_, slot)) => {
                view! { <button type="button" class="link" on:click=move |_| desk.chosen.set(Some(slot))>{what}</button> }.into_any()
            }
            None => what.into_any(),
        };
        view! {
            <li class="knot-row" class:now=row.tie == Tie::Bob>
                <span class="number">{words.minute(row.minute)}</span>
                <span class="thread" aria-hidden="true">
                    <span class=strand(row.above)></span>
                    {knot(row.tie)}
                    <span class=strand(row.below)></span>
                </span>
                <span class="said">{name.map(|name| view! { <span class="soft">{name}" "</span> })}{what}</span>
            </li>
        }
    });
    let label = desk.house.text(Key::DayLabel);
    view! { <ol class="day" aria-label=label>{rows.collect_view()}</ol> }
}

fn strand(strand: Strand) -> &'static str {
    match strand {
        Strand::Past => "strand past",
        Strand::ToCome => "strand to-come",
        Strand::Gap => "strand gap",
        Strand::End => "strand end",
    }
}

/// What is tied into the string, drawn by its shape.
fn knot(tie: Tie) -> AnyView {
    match tie {
        Tie::Gap => view! { <span class="strand gap tie"></span> }.into_any(),
        Tie::Bob => view! { <svg class="tie bob-tie" viewBox="0 0 20 28"><path class="bob" d="M10 0L17 12L10 28L3 12Z"/></svg> }.into_any(),
        Tie::Knot => view! { <svg class="tie" viewBox="0 0 20 20"><circle class="done" cx="10" cy="10" r=KNOT/></svg> }.into_any(),
        Tie::Half(part) => {
            let Filled { half, y, large } = filled(part);
            let (left, right, y) = (10.0 - half * KNOT, 10.0 + half * KNOT, 10.0 + y * KNOT);
            let filled = format!("M{left:.2} {y:.2}A{KNOT} {KNOT} 0 {} 0 {right:.2} {y:.2}Z", u8::from(large));
            view! { <svg class="tie" viewBox="0 0 20 20"><circle class="done-edge" cx="10" cy="10" r=KNOT/><path class="done" d=filled/></svg> }
                .into_any()
        }
        Tie::Loop => view! { <svg class="tie" viewBox="0 0 20 20"><circle class="loop" cx="10" cy="10" r="5.5"/></svg> }.into_any(),
        Tie::Bar => view! { <svg class="tie" viewBox="0 0 20 20"><path class="ink-line" d="M10 0V20M3 10H17"/></svg> }.into_any(),
        Tie::Cross => view! { <svg class="tie" viewBox="0 0 20 20"><path class="alarm-line" d="M4 4L16 16M16 4L4 16"/></svg> }.into_any(),
        Tie::Peg => view! { <svg class="tie" viewBox="0 0 20 20"><path class="string-to-come" d="M10 0V20"/><path class="peg" d="M10 10H18"/></svg> }.into_any(),
    }
}
