//! What goes to the visit: the period, exactly what is handed over, a note, and the sealed file.

use exercises::id::PlanId;
use leptos::prelude::*;
use wire::patient::{RecordPage, Saved, ShowRecord};
use words::Key;

use super::period::Period;
use crate::patient::desk::Desk;
use crate::patient::places::Place;
use crate::shared::Fault;

/// From which day to which, what is in it, and "Save sealed summary".
#[component]
pub fn Visit(plan: PlanId) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let page = ArcRwSignal::new(None::<RecordPage>);
    let saved = ArcRwSignal::new(None::<Saved>);
    let answer = page.clone();
    desk.house.tell::<ShowRecord>((), move |pages| answer.set(pages.into_iter().find(|page| page.plan.id == plan)));
    let done = saved.clone();
    let form = move || page.get().map(|page| view! { <Period page saved=saved.clone()/> });
    let told = move || {
        done.get().map(|saved| {
            view! {
                <section class="sheet stack-2" role="status">
                    <h2>{words.text(Key::Sealed)}</h2>
                    <p class="path">{saved.path}</p>
                    <p>{words.text(Key::SealedWhat)}</p>
                </section>
            }
        })
    };
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><h1>{words.text(Key::ForTheVisit)}</h1><p>{words.text(Key::VisitWhat)}</p></div>
                <Fault/>
                {form}
                {told}
                <button type="button" class="quiet" on:click=move |_| desk.go(Place::Record)>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
