//! The day of the next visit.

use chrono::{Days, NaiveDate};
use leptos::prelude::*;
use words::Key;
use words::clinic::PlanSection;

use super::editor::PlanEditor;

/// Weeks to choose from.
const WEEKS: [u64; 4] = [1, 2, 4, 6];

/// A few spans to press, or a date.
#[component]
pub fn NextVisit() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let issued = editor.draft.with_untracked(|draft| draft.plan.issued);
    let review = Memo::new(move |_| editor.plan(|plan| plan.review));
    let put = move |day: NaiveDate| editor.edit(|draft| draft.plan.review = day);
    let span = move |weeks: u64| {
        let day = issued.checked_add_days(Days::new(weeks * 7)).unwrap_or(issued);
        view! {
            <button type="button" aria-pressed=move || (review.get() == day).to_string() on:click=move |_| put(day)>
                {words.in_weeks(weeks)}
            </button>
        }
    };
    let typed = move |text: String| {
        if let Ok(day) = text.parse() {
            put(day);
        }
    };
    let problems = move || {
        editor.problems_at(PlanSection::Visit).into_iter().map(|line| view! { <p class="warning">{line}</p> }).collect_view()
    };
    view! {
        <section class="visit stack" aria-label=words.text(Key::NextVisit)>
            <h2>{words.text(Key::NextVisit)}<span class="soft">" "{move || words.date_in_full(review.get())}</span></h2>
            <div class="spans">
                <div class="options" role="group" aria-label=words.text(Key::NextVisit)>{WEEKS.map(span).into_iter().collect_view()}</div>
                <input type="date" aria-label=words.text(Key::DateLabel) prop:value=move || review.get().to_string()
                    on:change:target=move |event| typed(event.target().value())/>
            </div>
            <div role="status">{problems}</div>
        </section>
    }
}
