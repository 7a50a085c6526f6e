//! The Record page.

use leptos::prelude::*;
use wire::patient::{RecordPage, ShowRecord};
use words::Key;

use super::one_record::OneRecord;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::Fault;

/// The record of every plan that is followed.
#[component]
pub fn Record() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    let records = ArcRwSignal::new(None::<Vec<RecordPage>>);
    let answer = records.clone();
    context.app.query::<ShowRecord>((), move |pages| answer.set(Some(pages)));
    let shown = move || {
        records.get().map(|pages| {
            let pages = if pages.is_empty() {
                view! { <p>{text(Key::AddCardWhat)}</p> }.into_any()
            } else {
                pages.into_iter().map(|page| view! { <OneRecord page/> }).collect_view().into_any()
            };
            // Shown together with the record and not before it, because a button that moves is easily missed.
            let mine = (!context.is_sample()).then(|| view! {
                <button type="button" class="quiet" on:click=move |_| context.open(Page::OwnData)>{text(Key::MineTitle)}</button>
            });
            (pages, mine)
        })
    };
    view! {
        <div class="column wide stack-5">
            <h1>{text(Key::PlaceRecord)}</h1>
            <Fault/>
            {shown}
        </div>
    }
}
