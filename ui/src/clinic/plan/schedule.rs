//! When an item is due.

use chrono::Weekday;
use exercises::draft::{TypedField, hourly, times_of, times_text};
use exercises::id::ItemId;
use exercises::plan::{Pattern, Weekdays};
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::{Choice, Tick, Typed};
use crate::shared::screen;

/// Intervals to choose from, in minutes.
const INTERVALS: [u16; 9] = [15, 20, 30, 45, 60, 90, 120, 180, 240];
/// Distance between the times offered for the beginning and end of a window, in minutes.
const GRID: u16 = 30;

/// At regular intervals within a window or at fixed times; and on which days.
#[component]
pub fn When(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let every = Memo::new(move |_| editor.item(id, false, |item| matches!(item.schedule.pattern, Pattern::Every { .. })));
    let put = move |pattern: Pattern| editor.edit_item(id, |item| item.schedule.pattern = pattern);
    let choose = move |chosen: String| {
        // Input of a list that could not be read is dropped together with its field.
        editor.unread.update(|all| all.put(TypedField::Times(id), None));
        put(if chosen == "every" { hourly().pattern } else { Pattern::At { times: vec![8 * 60, 13 * 60, 18 * 60] } });
    };
    let options = vec![
        ("every".to_owned(), words.text(Key::WhenEvery).to_owned()),
        ("at".to_owned(), words.text(Key::WhenAt).to_owned()),
    ];
    let value = Signal::derive(move || if every.get() { "every" } else { "at" }.to_owned());
    view! {
        <div class="when">
            <Choice label=words.text(Key::When) options value choose/>
            {move || if every.get() { screen(move || view! { <Window id/> }) } else { screen(move || view! { <Times id/> }) }}
        </div>
        <ThroughTheNight id/>
        <DayBoxes id/>
    }
}

/// A hint if the window goes over midnight, because its ends may be swapped.
#[component]
fn ThroughTheNight(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let said = Memo::new(move |_| editor.item(id, None, |item| words.through_the_night(&item.schedule.pattern)));
    let line = move || said.get().map(|said| view! { <p class="warning">{said}</p> });
    view! { <div role="status">{line}</div> }
}

/// The interval, the beginning and the end.
#[component]
fn Window(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let now = move || {
        editor.item(id, (60, 540, 1020), |item| match item.schedule.pattern {
            Pattern::Every { minutes, from, to } => (minutes, from, to),
            Pattern::At { .. } => (60, 540, 1020),
        })
    };
    let put = move |minutes: u16, from: u16, to: u16| {
        editor.edit_item(id, |item| item.schedule.pattern = Pattern::Every { minutes, from, to });
    };
    let (minutes, from, to) = untrack(now);
    let with = |offered: Vec<u16>, now: u16, say: &dyn Fn(u16) -> String| {
        let mut all: Vec<u16> = offered.into_iter().chain([now]).collect();
        all.sort_unstable();
        all.dedup();
        all.into_iter().map(|value| (value.to_string(), say(value))).collect::<Vec<_>>()
    };
    let grid = || (0..24 * 60).step_by(usize::from(GRID)).collect::<Vec<u16>>();
    let clock = |minute: u16| words.minute(minute);
    let lasting = |minutes: u16| words.every_option(minutes);
    let number = |chosen: String| chosen.parse::<u16>().unwrap_or(0);
    view! {
        <Choice label=words.text(Key::EveryLabel) options=with(INTERVALS.to_vec(), minutes, &lasting)
            value=Signal::derive(move || now().0.to_string()) choose=move |chosen| put(number(chosen), now().1, now().2)/>
        <Choice label=words.text(Key::FromLabel) options=with(grid(), from, &clock)
            value=Signal::derive(move || now().1.to_string()) choose=move |chosen| put(now().0, number(chosen), now().2)/>
        <Choice label=words.text(Key::ToLabel) options=with(grid(), to, &clock)
            value=Signal::derive(move || now().2.to_string()) choose=move |chosen| put(now().0, now().1, number(chosen))/>
    }
}

/// A list of times. It is shown back as it will be on the card.
#[component]
fn Times(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let field = TypedField::Times(id);
    let value = Signal::derive(move || {
        let typed = editor.unread.with(|all| all.get(field).map(str::to_owned));
        typed.unwrap_or_else(|| {
            editor.item(id, String::new(), |item| match &item.schedule.pattern {
                Pattern::At { times } => times_text(times),
                Pattern::Every { .. } => String::new(),
            })
        })
    });
    let commit = move |text: String| {
        editor.type_in(field, &text, times_of(&text), |draft, times| {
            draft.edit(id, |item| item.schedule.pattern = Pattern::At { times });
        });
    };
    let fault = Signal::derive(move || editor.unread_at(field));
    view! { <Typed label=words.text(Key::TimesLabel) value commit fault hint=words.text(Key::TimesHint).to_owned()/> }
}

/// A box for each day of the week.
#[component]
fn DayBoxes(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let day = move |day: Weekday| {
        let on = Signal::derive(move || editor.item(id, false, |item| item.schedule.days.contains(day)));
        let put = move |_| editor.edit_item(id, |item| item.schedule.days = item.schedule.days.toggled(day));
        view! { <Tick label=words.weekday_short(day) value=on put/> }
    };
    let boxes = Weekdays::ALL.iter().map(day).collect_view();
    view! { <fieldset class="weekdays"><legend>{words.text(Key::DaysLabel)}</legend>{boxes}</fieldset> }
}
