//! The whole patient's side: the main pages, and the pages that cover them.

use std::time::Duration;

use exercises::slots::SlotRef;
use exercises::today::Head;
use leptos::prelude::*;
use leptos::{ev, html};
use wire::app::{Role, ScreenLock};

use super::after::After;
use super::bar::Bar;
use super::card::TakeACard;
use super::cautions::Cautions;
use super::closing::Closing;
use super::context::PatientContext;
use super::how_to::HowTo;
use super::now::{Choose, Now, SkipSlot, TakeDaysOff};
use super::own_data::OwnData;
use super::page::{Page, Place};
use super::places::Places;
use super::plan::{Plan, Refit};
use super::record::{Correct, Record, ThenAndNow, Visit};
use super::reminders::Reminders;
use super::run::Run;
use super::sample::SampleLine;
use super::screen_lock::{Locked, lock_when_idle};
use super::trouble::{Advice, AskTrouble};
use crate::events;
use crate::pages::ShowInfoPage;
use crate::shared::{AppContext, clock, screen, top};

/// Longest time between two requests for the Now page, in milliseconds. It is also requested when it changes because time passes,
/// and when the shell reports a change; this is for the case that both fail.
const LOOK_MS: u64 = 5 * 60_000;

/// The patient's side of the window: its pages, or what it shows while it is locked.
#[component]
pub fn Patient() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words_shown();
    let locked =
        Memo::new(move |_| app.state.with(|state| state.as_ref().is_some_and(|state| state.screen == ScreenLock::Locked)));
    move || {
        if locked.get() {
            // Read and not only tracked, because a memo that nobody has read does not react.
            words.get();
            screen(|| view! { <Locked/> })
        } else {
            screen(|| view! { <Pages/> })
        }
    }
}

/// All pages of the patient's side.
#[component]
fn Pages() -> impl IntoView {
    let context = PatientContext::new(AppContext::current());
    provide_context(context);
    keep_current(context);
    leave_with_escape();
    lock_when_idle(context);
    let words = context.app.words_shown();
    let over = move || open_page(context);
    let place = move || match context.place.get() {
        Place::Now => screen(|| view! { <Now/> }),
        Place::Plan => screen(|| view! { <Plan/> }),
        Place::Record => screen(|| view! { <Record/> }),
    };
    let page = NodeRef::<html::Main>::new();
    begin_at_top(context, page);
    let covered = Memo::new(move |_| context.page.with(Option::is_some));
    let closing = context.closing;
    let screens = move || {
        // Read and not only tracked, because a memo that nobody has read does not react.
        words.get();
        view! {
            <SampleLine/>
            {over}
            <Show when=move || !covered.get()>
                <Bar/>
                <main class="screen" node_ref=page>{place}</main>
                <Places/>
            </Show>
        }
    };
    view! {
        <div class="window">
            <Show when=move || closing.get()><Closing/></Show>
            // The screens stay behind the question, so that an exercise in progress continues.
            <div class="behind" hidden=move || closing.get()>{screens}</div>
        </div>
    }
}

/// The page that lies over the place.
fn open_page(context: PatientContext) -> Option<AnyView> {
    let page = match context.page.get()? {
        Page::SkipSlot(plan, slot) => screen(move || view! { <SkipSlot plan at=slot/> }),
        Page::DaysOff(plan) => screen(move || view! { <TakeDaysOff plan/> }),
        Page::Refit(plan, item) => screen(move || view! { <Refit plan item/> }),
        Page::Choose => screen(move || view! { <Choose/> }),
        Page::HowTo(plan, item) => screen(move || view! { <HowTo plan item/> }),
        Page::Cautions(script) => screen(move || view! { <Cautions script/> }),
        Page::Run(script) => screen(move || view! { <Run script/> }),
        Page::After(questions) => screen(move || view! { <After questions/> }),
        Page::Trouble(during) => screen(move || view! { <AskTrouble during nothing=move || context.back() stop=|| ()/> }),
        Page::Advice(raised) => screen(move || view! { <Advice raised/> }),
        Page::Card => screen(move || view! { <TakeACard/> }),
        Page::Reminders => screen(move || view! { <Reminders/> }),
        Page::OwnData => screen(move || view! { <OwnData/> }),
        Page::Info(page) => screen(move || view! { <ShowInfoPage page role=Role::Patient back=move || context.back()/> }),
        Page::ThenAndNow(plan) => screen(move || view! { <ThenAndNow plan/> }),
        Page::Visit(plan) => screen(move || view! { <Visit plan/> }),
        Page::Correct(plan) => screen(move || view! { <Correct plan/> }),
    };
    Some(page)
}

/// Another place or page begins at its top, and so does the first day once its card is taken. A page to which the person returns is
/// shown where they left it.
fn begin_at_top(context: PatientContext, page: NodeRef<html::Main>) {
    let without_plan =
        Memo::new(move |_| context.today.with(|today| today.as_ref().is_none_or(|today| today.head == Head::NoPlan)));
    Effect::new(move || {
        context.place.track();
        without_plan.track();
        if let Some(page) = page.get() {
            page.set_scroll_top(0);
        }
    });
    Effect::new(move || {
        context.page.track();
        match context.returning() {
            Some(left) => top::return_to(left),
            None => top::show(),
        }
    });
}

/// The Escape key presses the button that leads back from the page, if it has one.
fn leave_with_escape() {
    let pressed = window_event_listener(ev::keydown, |event| {
        if event.key() == "Escape" && !event.repeat() && !event.is_composing() && !event.default_prevented() {
            top::press_back();
        }
    });
    on_cleanup(move || pressed.remove());
}

/// Updates the Now page as time passes, when the shell reports a change, and for notifications.
fn keep_current(context: PatientContext) {
    context.refresh();
    context.open_requested_slot();
    let refresh = move || {
        if !context.running() {
            context.refresh();
        }
    };
    let seen = || !document().hidden();
    let look = move || {
        if seen() {
            refresh();
        }
    };
    clock::every(LOOK_MS, look);
    // There is one timer at a time: every answer sets it again.
    let timer = StoredValue::new(None::<TimeoutHandle>);
    Effect::new(move || {
        let next = context.changes_in_ms.get().and_then(|ms| set_timeout_with_handle(look, Duration::from_millis(ms)).ok());
        if let Some(before) = timer.try_update_value(|timer| std::mem::replace(timer, next)).flatten() {
            before.clear();
        }
    });
    events::listen("today_changed", move |_: serde_json::Value| refresh());
    events::listen("closing", move |_: serde_json::Value| context.closing.set(true));
    events::listen("open_slot", move |slot: SlotRef| context.open_slot(slot));
    let looked = window_event_listener(ev::focus, move |_| {
        if !context.running() {
            context.open_requested_slot();
            context.refresh();
        }
    });
    let shown = window_event_listener(ev::visibilitychange, move |_| look());
    on_cleanup(move || {
        looked.remove();
        shown.remove();
    });
}
