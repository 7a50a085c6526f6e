//! Which patients of the list are shown.

use chrono::NaiveDate;
use leptos::prelude::*;
use wire::clinic::PatientLine;
use words::Key;

use crate::clinic::context::ClinicContext;

/// A choice among the patients.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Filter {
    /// Everybody.
    All,
    /// Whoever has an alarm that no card has cleared.
    Alarm,
    /// Whose visit is today.
    VisitToday,
    /// Whose summary tells of days since the last card.
    NewSummary,
    /// Of whom nothing was received for two weeks.
    Silent,
}

impl Filter {
    const ALL: [Filter; 5] = [Filter::All, Filter::Alarm, Filter::VisitToday, Filter::NewSummary, Filter::Silent];

    /// Whether the patient is shown.
    pub fn has(self, line: &PatientLine, today: NaiveDate) -> bool {
        match self {
            Filter::All => true,
            Filter::Alarm => line.alarms > 0,
            Filter::VisitToday => line.visits_on(today),
            Filter::NewSummary => line.has_new_summary(),
            Filter::Silent => line.is_silent(today),
        }
    }

    fn text(self) -> Key {
        match self {
            Filter::All => Key::FilterAll,
            Filter::Alarm => Key::FilterAlarm,
            Filter::VisitToday => Key::FilterVisitToday,
            Filter::NewSummary => Key::FilterNewSummary,
            Filter::Silent => Key::FilterSilent,
        }
    }
}

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
