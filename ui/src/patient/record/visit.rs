//! The summary for the visit: the period, its exact contents, a note, and the encrypted file or codes.

use std::sync::Arc;

use exercises::id::PlanId;
use leptos::prelude::*;
use wire::patient::{RecordPage, ShowRecord};
use wire::saved::SavedFile;
use words::Key;

use super::frames::Frames;
use super::period::Period;
use crate::patient::context::PatientContext;
use crate::shared::Fault;
use crate::shared::saved::SavedFiles;

/// The period, the contents, the button that saves an encrypted summary, and the same as codes.
#[component]
pub fn Visit(plan: PlanId) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let page = ArcRwSignal::new(None::<RecordPage>);
    let saved = ArcRwSignal::new(None::<SavedFile>);
    let frames = RwSignal::new(None::<Arc<[String]>>);
    let answer = page.clone();
    context.app.query::<ShowRecord>((), move |pages| answer.set(pages.into_iter().find(|page| page.plan.header.id == plan)));
    let done = saved.clone();
    let form = move || page.get().map(|page| view! { <Period page saved=saved.clone() frames/> });
    let told = move || {
        done.get().map(|file| {
            view! {
                <section class="sheet stack-2">
                    <h2>{words.text(Key::SavedTitle)}</h2>
                    <SavedFiles files=vec![file]/>
                    <p>{words.text(Key::SavedWhat)}</p>
                </section>
            }
        })
    };
    let shown = move || frames.get().map(|list| view! { <Frames list close=move || frames.set(None)/> });
    view! {
        {shown}
        // The form stays behind the codes as it was filled in.
        <main class="screen" hidden=move || frames.with(Option::is_some)>
            <div class="column stack-5">
                <div class="stack-1"><h1>{words.text(Key::ForTheVisit)}</h1><p>{words.text(Key::VisitWhat)}</p></div>
                <Fault/>
                {form}
                {told}
                <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
