//! A full day of the plan until now and of the next one, below each other.

use exercises::chart::HoursAxis;
use exercises::plan::{DueSession, full_day};
use leptos::prelude::*;
use words::{Key, Words};

use crate::clinic::plan::PlanEditor;
use crate::clinic::width::{columns, window_width};
use crate::shared::width::{rem, text_scale};

/// The string of the picture, from the top.
const STRING: f64 = 14.0;
/// Distance of sessions at the same time.
const ROW: f64 = 15.0;
/// How far a peg reaches above and below its middle.
const PEG: f64 = 6.0;
/// Space below the sessions for the hours.
const HOURS: f64 = 20.0;
/// Space at both sides of the picture within its sheet.
const PADDING: f64 = 36.0;

/// Both days, redrawn with each change, with a peg for each session as for one to come. The day until now is pale.
#[component]
pub fn FullDays() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let width = window_width();
    let before = StoredValue::new(
        editor.carried.with_value(|items| editor.exercises.with_value(|exercises| full_day(items, exercises))),
    );
    let after =
        Memo::new(move |_| editor.plan(|plan| editor.exercises.with_value(|exercises| full_day(&plan.items, exercises))));
    let said =
        move |day: &[DueSession]| words.full_day_of(day).unwrap_or_else(|| words.text(Key::TogetherDayEmpty).to_owned());
    let drawn = move || {
        let after = after.get();
        before.with_value(|before| {
            let axis = HoursAxis::around([before.as_slice(), &after], columns(width.get(), text_scale()).0 - PADDING)?;
            let (old, line) = match *before == after {
                true => (None, words.together_day_unchanged(&said(&after))),
                false => {
                    let line = words.together_day_now(&said(before));
                    let old = view! { <p class="small soft">{line}</p>{picture(axis, before, false)} };
                    (Some(old), words.together_day_next(&said(&after)))
                }
            };
            Some(view! { {old}<p><b>{line}</b></p>{picture(axis, &after, true)}{hours(words, axis)} })
        })
    };
    view! { <div class="sheet full-days" role="status">{drawn}</div> }
}

/// The hours below the days.
fn hours(words: Words, axis: HoursAxis) -> impl IntoView {
    let label = |minute: u16| view! { <text class="tick number" x=axis.x(minute) text-anchor="middle" y="14">{words.minute(minute)}</text> };
    let size = format!("0 0 {} {HOURS}", axis.width());
    let labels = axis.labels().into_iter().map(label).collect_view();
    view! { <svg class="chart" width=rem(axis.width()) height=rem(HOURS) viewBox=size aria-hidden="true">{labels}</svg> }
}

/// The string of a day with a peg for each session. The words above it say the same.
fn picture(axis: HoursAxis, day: &[DueSession], is_next: bool) -> impl IntoView + use<> {
    let places = axis.places(day);
    let rows = places.iter().map(|place| place.row).max().unwrap_or(0);
    let height = STRING * 2.0 + rows as f64 * ROW;
    let (from, to) = (6.0, axis.width() - 6.0);
    let pegs = places.into_iter().map(|place| {
        let y = STRING + place.row as f64 * ROW;
        format!("M{:.1} {:.1}V{:.1}", place.x, y - PEG, y + PEG)
    });
    let pegs: String = pegs.collect();
    let (string, peg) = if is_next { ("string", "ink-line") } else { ("string-to-come", "peg") };
    let size = format!("0 0 {} {height}", axis.width());
    view! {
        <svg class="chart" width=rem(axis.width()) height=rem(height) viewBox=size aria-hidden="true">
            <path class=string d=format!("M{from:.1} {STRING}H{to:.1}")/>
            <path class=peg d=pegs/>
        </svg>
    }
}
