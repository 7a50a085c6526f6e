//! Skipping a slot, with a reason.

use exercises::id::PlanId;
use exercises::log::Barrier;
use exercises::slots::SlotRef;
use leptos::prelude::*;
use wire::patient::{SkipRequest, SkipSlot as Command};
use words::Key;
use words::review::upper;

use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::Fault;

/// A list of reasons; choosing one skips the slot and goes back.
#[component]
pub fn SkipSlot(plan: PlanId, at: SlotRef) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (slot, busy) = (at, context.app.busy);
    let what = context.item_of(slot).map(|item| words.exercise_name(&item.exercise).to_owned());
    let leave = move |reason| {
        context.app.request::<Command>(SkipRequest { plan, slot, reason }, move |today| {
            context.show(today);
            context.close();
        });
    };
    let reasons = Barrier::ALL.map(|reason| {
        view! { <button type="button" disabled=busy on:click=move |_| leave(reason)>{upper(words.barrier(reason))}</button> }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><p class="soft">{what}</p><h1>{words.text(Key::SkipWhy)}</h1></div>
                <Fault/>
                <div class="choices">{reasons}</div>
                <button type="button" class="quiet" on:click=move |_| context.open(Page::DaysOff(plan))>{words.text(Key::TakeDaysOff)}</button>
                <button type="button" class="quiet" on:click=move |_| context.close()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
