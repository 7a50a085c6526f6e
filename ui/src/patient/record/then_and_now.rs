//! "Then and now": the first week beside the last seven days.

use exercises::id::PlanId;
use exercises::review::then_and_now;
use leptos::prelude::*;
use wire::patient::{RecordPage, ShowRecord};
use words::Key;
use words::review::Names;

use crate::patient::context::PatientContext;

/// Seconds, activities and mornings of both weeks in a table, without a score or a verdict.
#[component]
pub fn ThenAndNow(plan: PlanId) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let pages = RwSignal::new(None::<Vec<RecordPage>>);
    context.app.query::<ShowRecord>((), move |all| pages.set(Some(all)));
    let table = move || {
        let page = pages.get()?.into_iter().find(|page| page.plan.header.id == plan)?;
        let review = page.review?;
        let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
        let rows = then_and_now(&review).into_iter().map(|row| {
            let (name, then, now) = words.then_and_now_row(&row, names);
            view! { <tr><th scope="row">{name}</th><td class="number">{then}</td><td class="number">{now}</td></tr> }
        });
        let heads = [Key::FirstWeek, Key::ThisWeek].map(|key| view! { <th scope="col">{words.text(key)}</th> });
        Some(view! {
            <table class="then-and-now">
                <thead><tr><td></td>{heads.into_iter().collect_view()}</tr></thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        })
    };
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-2"><h1>{words.text(Key::ThenAndNow)}</h1><p class="soft">{words.text(Key::ThenAndNowWhat)}</p></div>
                {table}
                <button type="button" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
