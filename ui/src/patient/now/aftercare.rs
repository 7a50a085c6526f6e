//! The clinician's instructions for the days after the visit.

use exercises::plan::Aftercare;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// The instructions, while they apply.
#[component]
pub fn Lines(lines: Vec<Aftercare>) -> impl IntoView {
    let words = PatientContext::current().app.words();
    (!lines.is_empty()).then(|| {
        let lines = lines.iter().map(|line| view! { <li>{words.aftercare(line)}</li> }).collect_view();
        view! {
            <section class="sheet stack-2">
                <h2>{words.text(Key::AfterTheVisit)}</h2>
                <ul class="lines">{lines}</ul>
            </section>
        }
    })
}
