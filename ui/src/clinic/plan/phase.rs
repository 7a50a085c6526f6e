//! From which day to which an item is to be done.

use chrono::{Days, NaiveDate};
use exercises::id::ItemId;
use exercises::plan::Phase;
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::Choice;

/// The value of the choice of a day that begins or ends no week.
const OTHER: &str = "other";

/// Two choices among the weeks of the plan, each with a field for another day.
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

/// One end: the plan's own, the first or last day of one of its weeks, or another day, of which there is a field only then: an empty field
/// shows a date in grey, which would be taken for the plan's.
#[component]
fn End(
    last: bool,
    day: Signal<Option<NaiveDate>>,
    put: impl Fn(Option<NaiveDate>) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let (label, whole) = match last {
        false => (Key::PhaseFirst, Key::PhaseFromStart),
        true => (Key::PhaseLast, Key::PhaseUntilVisit),
    };
    let weeks = Memo::new(move |_| {
        let review = editor.plan(|plan| plan.review);
        weeks(editor.draft.with_untracked(|draft| draft.today), review, last)
    });
    // Chosen by the clinician, also while the day is one of a week.
    let chosen = RwSignal::new(false);
    let is_in = move |weeks: &[(u8, NaiveDate)], day: NaiveDate| weeks.iter().any(|(_, one)| *one == day);
    let other = Memo::new(move |_| chosen.get() || day.get().is_some_and(|day| weeks.with(|weeks| !is_in(weeks, day))));
    let value = Signal::derive(move || match day.get() {
        _ if other.get() => OTHER.to_owned(),
        day => day.map(|day| day.to_string()).unwrap_or_default(),
    });
    let choose = move |code: String| {
        chosen.set(code == OTHER);
        if code != OTHER {
            put(code.parse().ok());
        }
    };
    let choice = move || {
        let said = |(n, day): (u8, NaiveDate)| {
            let date = words.date(day);
            (day.to_string(), if last { words.phase_week_until(n, &date) } else { words.phase_week_from(n, &date) })
        };
        let own = (String::new(), words.text(whole).to_owned());
        let another = (OTHER.to_owned(), words.text(Key::PhaseOtherDay).to_owned());
        let options = std::iter::once(own).chain(weeks.get().into_iter().map(said)).chain([another]).collect();
        view! { <Choice label=words.text(label) options value choose/> }
    };
    let take = move |typed: Option<NaiveDate>| {
        // While a date is typed, the field is empty from time to time: it stays until it is left so.
        chosen.set(true);
        put(typed);
    };
    let leave = move || chosen.update(|chosen| *chosen &= day.with_untracked(Option::is_some));
    view! {
        {choice}
        <Show when=move || other.get()><OtherDay last day take leave/></Show>
    }
}

/// A field for a day, with the day in words below it; `leave` is called when the focus leaves it.
#[component]
fn OtherDay(
    last: bool,
    day: Signal<Option<NaiveDate>>,
    take: impl Fn(Option<NaiveDate>) + 'static,
    leave: impl Fn() + 'static,
) -> impl IntoView {
    let words = PlanEditor::current().words();
    let label = words.text(if last { Key::PhaseLastDate } else { Key::PhaseFirstDate });
    let value = move || day.get().map(|day| day.to_string()).unwrap_or_default();
    let said = move || day.get().map_or_else(|| words.text(Key::NoDay).to_owned(), |day| words.date_in_full(day));
    view! {
        <label class="text">
            <span>{label}</span>
            <input type="date" prop:value=value on:change:target=move |event| take(event.target().value().parse().ok())
                on:blur=move |_| leave()/>
            <small>{said}</small>
        </label>
    }
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
