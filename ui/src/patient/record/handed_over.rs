//! The exact contents of a summary, as a plain list.

use exercises::summary::Summary;
use leptos::prelude::*;
use wire::patient::RecordPage;
use words::Key;

use crate::patient::context::PatientContext;

/// What the summary contains, and what it does not.
#[component]
pub fn HandedOver(page: RecordPage, summary: Summary) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let names = words::review::Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let lines = words.handed_over(&summary, names, page.plan.header.start);
    let lines = lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    view! {
        <section class="sheet stack-2">
            <h2>{words.text(Key::SharedTitle)}</h2>
            <ul class="lines">{lines}</ul>
            <p class="small soft">{words.text(Key::NotShared)}</p>
        </section>
    }
}
