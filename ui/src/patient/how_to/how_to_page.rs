//! How to do an exercise, as a page of its own.

use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use words::Key;

use super::in_full::InFull;
use crate::patient::context::PatientContext;

/// One exercise of the plan: its purpose, its steps, and what to pay attention to.
#[component]
pub fn HowTo(plan: PlanId, item: ItemId) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let found = context
        .today
        .with_untracked(|today| today.as_ref()?.items.iter().find(|one| one.plan == plan && one.item.id == item).cloned());
    let told = found.map(|found| {
        let (item, exercise) = (Signal::stored(found.item), Signal::stored(found.exercise));
        view! { <InFull item exercise words=Signal::stored(words)/> }
    });
    let back = move |_| context.back();
    view! {
        <main class="screen">
            <div class="column stack-5">
                {told}
                <button type="button" data-back="" on:click=back>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
