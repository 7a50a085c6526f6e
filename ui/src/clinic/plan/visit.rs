//! The day of the next visit.

use chrono::{Days, NaiveDate};
use leptos::prelude::*;
use words::Key;
use words::clinic::Spot;

use super::sheet::Sheet;

/// Weeks to choose from.
const WEEKS: [u64; 4] = [1, 2, 4, 6];

/// A few spans to press, or a date.
#[component]
pub fn NextVisit() -> impl IntoView {
    let sheet = Sheet::here();
    let words = sheet.words();
    let issued = sheet.draft.with_untracked(|draft| draft.today);
    let review = Memo::new(move |_| sheet.plan(|plan| plan.review));
    let put = move |day: NaiveDate| sheet.edit(|draft| draft.prescription.review = day);
    let span = move |weeks: u64| {
        let day = issued.checked_add_days(Days::new(weeks * 7)).unwrap_or(issued);
        view! {
            <button type="button" aria-pressed=move || (review.get() == day).to_string() on:click=move |_| put(day)>
                {words.fill(Key::InWeeks, &[("n", &weeks)])}
            </button>
        }
    };
    let typed = move |text: String| {
        if let Ok(day) = text.parse() {
            put(day);
        }
    };
    let problems = move || {
        sheet.problems_at(Spot::Visit).into_iter().map(|line| view! { <p class="warning">{line}</p> }).collect_view()
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
