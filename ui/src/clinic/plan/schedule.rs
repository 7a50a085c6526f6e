//! When an item is due.

use chrono::Weekday;
use exercises::draft::{DaysKind, TypedField, hourly, times_of, times_text};
use exercises::id::ItemId;
use exercises::plan::days::{EVERY_NTH, TIMES_A_WEEK};
use exercises::plan::{Days, Item, Pattern, Schedule, Weekdays};
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
    // Where the patient chooses the days, it is due once on each.
    let once = Memo::new(move |_| editor.item(id, false, |item| item.schedule.days.are_chosen()));
    let pattern = Memo::new(move |_| editor.item(id, "at", |item| pattern_code(&item.schedule.pattern)));
    let choose = move |chosen: String| {
        // Input of a list that could not be read is dropped together with its field.
        editor.unread.update(|all| all.put(TypedField::Times(id), None));
        editor.edit_item(id, |item| match chosen.as_str() {
            "every" => item.schedule.pattern = hourly().pattern,
            "needed" => item.schedule = Schedule::AS_NEEDED,
            _ => item.schedule.pattern = Pattern::At { times: vec![8 * 60, 13 * 60, 18 * 60] },
        });
    };
    let options = vec![
        ("every".to_owned(), words.text(Key::WhenEvery).to_owned()),
        ("at".to_owned(), words.text(Key::WhenAt).to_owned()),
        ("needed".to_owned(), words.text(Key::WhenNeeded).to_owned()),
    ];
    let value = Signal::derive(move || pattern.get().to_owned());
    let times = move || match pattern.get() {
        "every" => screen(move || view! { <Window id/> }),
        "at" => screen(move || view! { <Times id/> }),
        _ => screen(|| ()),
    };
    view! {
        <div class="when">
            <Show when=move || !once.get()>
                <Choice label=words.text(Key::When) options=options.clone() value choose/>
            </Show>
            {times}
        </div>
        <ThroughTheNight id/>
        <Show when=move || pattern.get() != "needed"><OnDays id/></Show>
    }
}

/// How the times are stated, as the list of choices names it.
fn pattern_code(pattern: &Pattern) -> &'static str {
    match pattern {
        Pattern::Every { .. } => "every",
        Pattern::At { .. } => "at",
        Pattern::AsNeeded => "needed",
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
            Pattern::At { .. } | Pattern::AsNeeded => (60, 540, 1020),
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
                Pattern::Every { .. } | Pattern::AsNeeded => String::new(),
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

/// How the days are stated, and the days.
#[component]
fn OnDays(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let kind = Memo::new(move |_| editor.item(id, DaysKind::OnWeekdays, |item| DaysKind::of(item.schedule.days)));
    let options = DaysKind::ALL.map(|kind| (code(kind).to_owned(), words.days_kind(kind).to_owned())).into();
    let choose = move |chosen: String| {
        if let Some(kind) = DaysKind::ALL.into_iter().find(|kind| code(*kind) == chosen) {
            editor.edit(|draft| draft.put_on(id, kind));
        }
    };
    let value = Signal::derive(move || code(kind.get()).to_owned());
    let days = move || match kind.get() {
        DaysKind::OnWeekdays => screen(move || view! { <DayBoxes id/> }),
        counted => screen(move || view! { <Many id counted/> }),
    };
    view! { <div class="when"><Choice label=words.text(Key::DaysHow) options value choose/>{days}</div> }
}

/// A way to state days, as the list of choices names it.
fn code(kind: DaysKind) -> &'static str {
    match kind {
        DaysKind::OnWeekdays => "weekdays",
        DaysKind::EveryNth => "every",
        DaysKind::TimesAWeek => "times",
    }
}

/// Every how many days, or how many times a week.
#[component]
fn Many(id: ItemId, counted: DaysKind) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let number = move |days: Days| match days {
        Days::On(_) => 0,
        Days::EveryNth { n, .. } | Days::TimesAWeek { n, .. } => n,
    };
    let now = move || editor.item(id, 0, |item| number(item.schedule.days));
    let options = match counted {
        DaysKind::TimesAWeek => TIMES_A_WEEK.map(|n| (n.to_string(), words.times_in_a_week(n))).collect(),
        _ => EVERY_NTH.map(|n| (n.to_string(), words.every_days(n))).collect(),
    };
    let choose = move |chosen: String| {
        let Ok(n) = chosen.parse::<u8>() else { return };
        editor.edit_item(id, |item| {
            item.schedule.days = match item.schedule.days {
                Days::EveryNth { from, .. } => Days::EveryNth { n, from },
                Days::TimesAWeek { from, .. } => Days::TimesAWeek { n, from },
                weekdays @ Days::On(_) => weekdays,
            };
        });
    };
    view! { <Choice label=words.text(Key::HowOften) options value=Signal::derive(move || now().to_string()) choose/> }
}

/// A box for each day of the week.
#[component]
fn DayBoxes(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let day = move |day: Weekday| {
        let chosen = move |item: &Item| if let Days::On(days) = item.schedule.days { days } else { Weekdays::NONE };
        let on = Signal::derive(move || editor.item(id, false, |item| chosen(item).contains(day)));
        let put = move |_| editor.edit_item(id, |item| item.schedule.days = chosen(item).toggled(day).into());
        view! { <Tick label=words.weekday_short(day) value=on put/> }
    };
    let boxes = Weekdays::ALL.iter().map(day).collect_view();
    view! { <fieldset class="weekdays"><legend>{words.text(Key::DaysLabel)}</legend>{boxes}</fieldset> }
}
