//! From which day to which an item is to be done.

use chrono::{Days, NaiveDate};
use exercises::id::ItemId;
use exercises::plan::Phase;
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::Choice;

/// Two choices among the weeks of the plan, and a date beside each.
#[component]
pub fn PhaseOf(id: ItemId) -> impl IntoView {
    let editor = PlanEditor::current();
    let phase = Memo::new(move |_| editor.item(id, Phase::WHOLE, |item| item.phase));
    let put = move |phase: Phase| editor.edit(|draft| draft.put_in_phase(id, phase));
    view! {
        <div class="when">
            <End last=false day=Signal::derive(move || phase.get().first) put=move |first| put(Phase { first, ..phase.get_untracked() })/>
        </div>
        <div class="when">
            <End last=true day=Signal::derive(move || phase.get().last) put=move |last| put(Phase { last, ..phase.get_untracked() })/>
        </div>
    }
}

/// One end: the plan's own, the first or last day of one of its weeks, or a date.
#[component]
fn End(
    last: bool,
    day: Signal<Option<NaiveDate>>,
    put: impl Fn(Option<NaiveDate>) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let (label, date, whole) = match last {
        false => (Key::PhaseFirst, Key::PhaseFirstDate, Key::PhaseFromStart),
        true => (Key::PhaseLast, Key::PhaseLastDate, Key::PhaseUntilVisit),
    };
    let review = Memo::new(move |_| editor.plan(|plan| plan.review));
    let fields = move || {
        let today = editor.draft.with_untracked(|draft| draft.today);
        let mut options = vec![(String::new(), words.text(whole).to_owned())];
        let weeks = weeks(today, review.get(), last).into_iter();
        options.extend(weeks.map(|(n, day)| {
            let said =
                if last { words.phase_week_until(n, &words.date(day)) } else { words.phase_week_from(n, &words.date(day)) };
            (day.to_string(), said)
        }));
        // A day that begins or ends no week is a choice of its own.
        if let Some(other) = day.get().filter(|day| options.iter().all(|(code, _)| *code != day.to_string())) {
            options.push((other.to_string(), words.date(other)));
        }
        let value = Signal::derive(move || day.get().map(|day| day.to_string()).unwrap_or_default());
        let label = words.text(label);
        view! {
            <Choice label options value choose=move |chosen: String| put(chosen.parse().ok())/>
            <label class="text">
                <span>{words.text(date)}</span>
                <input type="date" prop:value=move || value.get()
                    on:change:target=move |event| put(event.target().value().parse().ok())/>
            </label>
        }
    };
    view! { {fields} }
}

/// The weeks of a plan from its day of issue until the visit, each with its first or its last day.
fn weeks(today: NaiveDate, review: NaiveDate, last: bool) -> Vec<(u8, NaiveDate)> {
    let day = |week: u8| {
        let days = if last { u64::from(week) * 7 - 1 } else { u64::from(week - 1) * 7 };
        today.checked_add_days(Days::new(days)).map(|day| (week, day))
    };
    let all = (if last { 1 } else { 2 }..=53).map_while(day);
    all.take_while(|(_, day)| *day < review).collect()
}
