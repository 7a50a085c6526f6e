//! What else did the patient write?

use leptos::prelude::*;
use words::review::ReviewQuestion;

use super::context::ReviewContext;

/// The patient's notes as plain text. Empty if there are none.
#[component]
pub fn Notes() -> impl IntoView {
    let context = ReviewContext::current();
    let notes = context.read(|review, _| review.notes.clone()).unwrap_or_default();
    (!notes.is_empty()).then(|| {
        view! {
            <section class="notes">
                <h2>{context.question(ReviewQuestion::Notes)}</h2>
                {notes.into_iter().map(|note| view! { <blockquote>{note}</blockquote> }).collect_view()}
            </section>
        }
    })
}
