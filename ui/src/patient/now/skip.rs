//! Skipping a slot, with a reason.

use exercises::id::{ItemId, PlanId};
use exercises::log::Barrier;
use exercises::slots::SlotRef;
use leptos::prelude::*;
use wire::patient::{SkipRequest, SkipSlot as Command};
use words::Key;
use words::review::upper;

use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::shared::{Fault, screen};

/// Number of reasons that are shown at first.
const FIRST_REASONS: usize = 5;

/// A list of reasons; choosing one skips the slot and goes back, or offers what helps with that reason.
#[component]
pub fn SkipSlot(plan: PlanId, at: SlotRef) -> impl IntoView {
    let skipped = RwSignal::new(None::<Barrier>);
    move || match skipped.get() {
        None => screen(move || view! { <Reasons plan at skipped/> }),
        Some(reason) => screen(move || view! { <OfferHelp plan item=at.item reason/> }),
    }
}

#[component]
fn Reasons(plan: PlanId, at: SlotRef, skipped: RwSignal<Option<Barrier>>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (slot, busy) = (at, context.app.busy);
    let what = context.item_of(slot).map(|item| words.exercise_name(&item.exercise).to_owned());
    let skip = move |reason| {
        context.app.request::<Command>(SkipRequest { plan, slot, reason }, move |today| {
            context.show(today);
            if helps(reason).is_some() { skipped.set(Some(reason)) } else { context.close() }
        });
    };
    let button = move |reason| {
        view! { <button type="button" disabled=busy on:click=move |_| skip(reason)>{upper(words.barrier(reason))}</button> }
    };
    let all: &'static [Barrier] = &Barrier::ALL;
    let (first, rest) = all.split_at(FIRST_REASONS);
    let first: Vec<_> = first.iter().map(|reason| button(*reason)).collect();
    let more = RwSignal::new(false);
    let rest = move || {
        if more.get() {
            return rest.iter().map(|reason| button(*reason)).collect_view().into_any();
        }
        view! { <button type="button" class="quiet" on:click=move |_| more.set(true)>{words.text(Key::SkipMoreReasons)}</button> }
            .into_any()
    };
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><p class="soft">{what}</p><h1>{words.text(Key::SkipWhy)}</h1></div>
                <Fault/>
                <div class="choices">{first}{rest}</div>
                <button type="button" class="quiet" on:click=move |_| context.open(Page::DaysOff(plan))>{words.text(Key::TakeDaysOff)}</button>
                <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}

/// What may help with a reason: a sentence, and the words on the button that opens the page.
fn helps(reason: Barrier) -> Option<(Key, Key)> {
    match reason {
        Barrier::NotSureHow => Some((Key::SkippedNotSure, Key::HowToDoIt)),
        Barrier::Pain => Some((Key::SkippedPain, Key::SomethingWrong)),
        _ => None,
    }
}

/// After the slot was skipped: the page that may help, or back without it.
#[component]
fn OfferHelp(plan: PlanId, item: ItemId, reason: Barrier) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let page = if reason == Barrier::Pain { Page::Trouble(Some((plan, item))) } else { Page::HowTo(plan, item) };
    let offered = helps(reason).map(|(what, button)| {
        view! {
            <p>{words.text(what)}</p>
            <button type="button" class="main" on:click=move |_| context.replace(page.clone())>{words.text(button)}</button>
        }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <h1>{words.text(Key::SkippedTitle)}</h1>
                {offered}
                <button type="button" class="quiet" data-back="" on:click=move |_| context.close()>{words.text(Key::NotNow)}</button>
            </div>
        </main>
    }
}
