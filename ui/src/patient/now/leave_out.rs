//! Why a slot is left out: one tap.

use exercises::id::PlanId;
use exercises::log::Barrier;
use exercises::slots::SlotRef;
use leptos::prelude::*;
use wire::patient::{LeaveOut as Command, LeavingOut};
use words::Key;
use words::review::upper;

use super::head::name;
use crate::patient::desk::Desk;
use crate::patient::page::Page;
use crate::shared::Fault;

/// A list of reasons; one tap leaves the slot out and goes back.
#[component]
pub fn LeaveOut(plan: PlanId, at: SlotRef) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let (slot, busy) = (at, desk.house.busy);
    let what = desk.item_of(slot).map(|item| name(&item, words));
    let leave = move |reason| {
        desk.house.ask::<Command>(LeavingOut { plan, slot, reason }, move |today| {
            desk.show(today);
            desk.close();
        });
    };
    let reasons = Barrier::ALL.map(|reason| {
        view! { <button type="button" disabled=busy on:click=move |_| leave(reason)>{upper(words.barrier(reason))}</button> }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><p class="soft">{what}</p><h1>{words.text(Key::LeaveOutWhy)}</h1></div>
                <Fault/>
                <div class="choices">{reasons}</div>
                <button type="button" class="quiet" on:click=move |_| desk.open(Page::Excuse(plan))>{words.text(Key::LeaveOutDays)}</button>
                <button type="button" class="quiet" on:click=move |_| desk.close()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
