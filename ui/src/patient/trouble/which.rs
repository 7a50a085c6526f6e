//! The question during which exercise it happened.

use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// Every exercise, and "not during an exercise".
#[component]
pub fn Which(
    chose: impl Fn(Option<(PlanId, ItemId)>) + Copy + Send + 'static,
    back: impl Fn() + Copy + Send + 'static,
) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let busy = context.app.busy;
    let items = context.today.with_untracked(|today| today.as_ref().map(|today| today.items.clone()).unwrap_or_default());
    let items = items.into_iter().map(|item| {
        let this = (item.plan, item.item.id);
        view! { <button type="button" disabled=busy on:click=move |_| chose(Some(this))>{words.exercise_name(&item.exercise).to_owned()}</button> }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <h1>{words.text(Key::DuringWhich)}</h1>
                <Fault/>
                <div class="choices">
                    {items.collect_view()}
                    <button type="button" disabled=busy on:click=move |_| chose(None)>{words.text(Key::NotDuringOne)}</button>
                </div>
                <button type="button" class="quiet" data-back="" on:click=move |_| back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
