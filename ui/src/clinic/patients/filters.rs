//! Which patients of the list are shown.

use chrono::NaiveDate;
use leptos::prelude::*;
use wire::clinic::PatientLine;
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::filter::Filter;

/// A button for each choice, with how many patients it has. Choices without a patient are left out.
#[component]
pub fn Filters(lines: Signal<Vec<PatientLine>>, today: NaiveDate) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let counted = Memo::new(move |_| {
        lines.with(|all| Filter::ALL.map(|filter| (filter, all.iter().filter(|line| filter.has(line, today)).count())))
    });
    let button = move |(filter, n): (Filter, usize)| {
        let chosen = Memo::new(move |_| context.filter.get() == filter);
        (n > 0 || filter == Filter::All).then(|| {
            view! {
                <button type="button" aria-pressed=move || chosen.get().to_string() on:click=move |_| context.filter.set(filter)>
                    {words.filter_count(words.text(filter.text()), n)}</button>
            }
        })
    };
    view! {
        <div class="options filters" role="group" aria-label=words.text(Key::FilterPatients)>
            {move || counted.get().map(button).into_iter().collect_view()}
        </div>
    }
}
