//! The day before the visit, and on its day: the summary for it.

use exercises::today::Today;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::page::Page;

/// An offer to prepare the summary for each plan whose visit is near; empty if none is. A sample has no visit.
#[component]
pub fn VisitSoon(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let date = today.now.date();
    let several = today.clinics.len() > 1;
    let near = today.clinics.into_iter().filter(|_| !context.is_sample()).filter_map(|clinic| {
        let key = match clinic.visit.signed_duration_since(date).num_days() {
            0 => Key::VisitIsToday,
            1 => Key::VisitIsTomorrow,
            _ => return None,
        };
        let plan = clinic.plan;
        Some(view! {
            <section class="sheet stack">
                <h2>{words.text(key)}{several.then(|| view! { <span class="soft">" "{clinic.name}</span> })}</h2>
                <button type="button" on:click=move |_| context.open(Page::Visit(plan))>{words.text(Key::PrepareSummary)}</button>
            </section>
        })
    });
    near.collect_view()
}
