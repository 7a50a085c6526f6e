//! The day of the next visit.

use chrono::{Days, NaiveDate};
use exercises::draft::TypedField;
use leptos::{html, prelude::*};
use words::Key;
use words::clinic::PlanSection;

use super::editor::PlanEditor;

/// Numbers of weeks to choose from.
const WEEKS: [u64; 4] = [1, 2, 4, 6];

/// Buttons for some numbers of weeks, or a date.
#[component]
pub fn NextVisit() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let issued = editor.draft.with_untracked(|draft| draft.today);
    let review = Memo::new(move |_| editor.plan(|plan| plan.review));
    // The field is set directly: a half-typed date has no value, and must not be overwritten.
    let field = NodeRef::<html::Input>::new();
    let put = move |day: NaiveDate| {
        editor.type_in(TypedField::Visit, "", Some(day), |draft, day| draft.prescription.review = day);
        if let Some(field) = field.get_untracked() {
            field.set_value(&day.to_string());
        }
    };
    let span = move |weeks: u64| {
        let day = issued.checked_add_days(Days::new(weeks * 7)).unwrap_or(issued);
        view! {
            <button type="button" aria-pressed=move || (review.get() == day).to_string() on:click=move |_| put(day)>
                {words.in_weeks(weeks)}
            </button>
        }
    };
    // A cleared date counts as unreadable, so that the previous date does not stay in the plan unseen.
    let typed = move |text: String| {
        editor.type_in(TypedField::Visit, &text, text.parse().ok(), |draft, day| draft.prescription.review = day);
    };
    let unread = Memo::new(move |_| editor.unread_at(TypedField::Visit));
    let problems = move || {
        let problems = unread.get().map_or_else(|| editor.problems_at(PlanSection::Visit), |unread| vec![unread]);
        problems.into_iter().map(|line| view! { <p class="warning">{line}</p> }).collect_view()
    };
    let in_full = move || unread.with(Option::is_none).then(|| words.date_in_full(review.get()));
    let starts_with = untrack(|| if unread.with(Option::is_none) { review.get().to_string() } else { String::new() });
    view! {
        <section class="visit stack" aria-label=words.text(Key::NextVisit)>
            <h2>{words.text(Key::NextVisit)}<span class="soft">" "{in_full}</span></h2>
            <div class="spans">
                <div class="options" role="group" aria-label=words.text(Key::NextVisit)>{WEEKS.map(span).into_iter().collect_view()}</div>
                <input type="date" aria-label=words.text(Key::DateLabel) node_ref=field value=starts_with
                    on:change:target=move |event| typed(event.target().value())/>
            </div>
            <div role="status">{problems}</div>
        </section>
    }
}
