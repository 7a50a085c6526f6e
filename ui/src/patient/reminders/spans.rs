//! The list of quiet times.

use exercises::remind::{QuietTimesDraft, Span};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// Each quiet time with a button that removes it.
#[component]
pub fn Spans(draft: RwSignal<QuietTimesDraft>, out: impl Fn(Span) + Copy + Send + Sync + 'static) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let rows = move || {
        let spans = draft.with(|draft| draft.quiet().to_vec());
        if spans.is_empty() {
            return view! { <p>{words.text(Key::NoReminderHoursNone)}</p> }.into_any();
        }
        let rows = spans.into_iter().map(|span| {
            let said = words.quiet_span(span);
            let label = format!("{}: {said}", words.text(Key::NoReminderHoursRemove));
            view! {
                <li>
                    <span class="number">{said}</span>
                    <button type="button" aria-label=label on:click=move |_| out(span)>{words.text(Key::NoReminderHoursRemove)}</button>
                </li>
            }
        });
        view! { <ul class="spans">{rows.collect_view()}</ul> }.into_any()
    };
    view! { {rows} }
}
