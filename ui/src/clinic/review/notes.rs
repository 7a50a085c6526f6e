//! What else the patient says.

use leptos::prelude::*;
use words::review::Question;

use super::desk::Desk;

/// The patient's notes, as text alone. Nothing where there is none.
#[component]
pub fn Notes() -> impl IntoView {
    let desk = Desk::here();
    let notes = desk.read(|review, _| review.notes.clone()).unwrap_or_default();
    (!notes.is_empty()).then(|| {
        view! {
            <section class="notes">
                <h2>{desk.question(Question::Notes)}</h2>
                {notes.into_iter().map(|note| view! { <blockquote>{note}</blockquote> }).collect_view()}
            </section>
        }
    })
}
