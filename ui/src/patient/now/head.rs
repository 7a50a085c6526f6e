//! The top of the Now page.

use exercises::alarm::Trouble;
use exercises::history::Mark;
use exercises::time::Stamp;
use exercises::today::{Head, PauseEnd, Today, TodayItem, TodayKnot};
use leptos::prelude::*;
use words::Key;

use super::message::Message;
use super::offer::Offer;
use crate::patient::context::PatientContext;
use crate::patient::page::{Page, Place, Raised};
use crate::patient::trouble::WellAgain;

/// One thing to do, or why there is nothing to do.
#[component]
pub fn HeadOf(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let at = move |time: Stamp| words.minute_inline(time.minute());
    if let Some((item, knot)) = chosen(context, &today) {
        let line = knot.put_off.map(|until| words.reminder_at(&at(until)));
        return view! { <Offer item at=knot.slot line/> }.into_any();
    }
    match today.head.clone() {
        Head::NoPlan => ().into_any(),
        Head::Due { slot, due, put_off, .. } => {
            let early = (due.utc_ms > today.now.utc_ms).then(|| words.due_soon(&at(due)));
            let line = put_off.map(|until| words.reminder_at(&at(until))).or(early);
            today.item.map(|item| view! { <Offer item at=slot line/> }).into_any()
        }
        Head::Next { due, .. } => {
            let name = today.item.as_ref().map(|item| words.exercise_name(&item.exercise).to_owned()).unwrap_or_default();
            let minutes = (due.utc_ms - today.now.utc_ms + 59_999) / 60_000;
            let next = words.next_at(&name, &words.minute_inline(due.minute()));
            let ahead = words.ahead(minutes);
            let clinic = today.item.and_then(|item| item.clinic);
            let lines = [Some(next), clinic, Some(ahead)].into_iter().flatten().collect();
            view! { <Message title=words.text(Key::NothingNow) lines/> }.into_any()
        }
        Head::DoneForToday { done, of, next } => {
            let count = words.sessions_done_of(done, of);
            let title = if done >= of { Key::AllDone } else { Key::NoMoreToday };
            let lines = [Some(count), next.map(|next| words.next_on(today.now, next))];
            view! { <Message title=words.text(title) lines=lines.into_iter().flatten().collect()/> }.into_any()
        }
        Head::DayOff { chosen, next } => {
            let title = if chosen { Key::DayOffToday } else { Key::NoExercisesToday };
            let lines = next.map(|next| words.next_on(today.now, next));
            view! { <Message title=words.text(title) lines=lines.into_iter().collect()/> }.into_any()
        }
        Head::Over { review } => {
            let lines = vec![words.plan_ended_what(&words.date(review))];
            view! {
                <Message title=words.text(Key::PlanEnded) lines/>
                <button type="button" class="main" on:click=move |_| context.go(Place::Record)>{words.text(Key::ForTheVisit)}</button>
                <button type="button" on:click=move |_| context.open(Page::Card)>{words.text(Key::AddNewCard)}</button>
            }
            .into_any()
        }
        Head::Stopped(trouble) => view! { <Stopped today trouble/> }.into_any(),
    }
}

/// Everything is paused: why, and what ends it.
#[component]
fn Stopped(today: Today, trouble: Trouble) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let lines = vec![words.plan_paused_because(words.trouble(trouble))];
    let gravest = today.alarms.iter().rev().find(|alarm| alarm.trouble == trouble && alarm.suspends.is_some());
    let raised = gravest.map(|alarm| Raised {
        item: alarm.item,
        circumstances: alarm.circumstances.clone(),
        ..Raised::new(Some(alarm.plan), trouble)
    });
    let raised = StoredValue::new(Box::new(raised.unwrap_or_else(|| Raised::new(None, trouble))));
    let ends = match gravest.map(|alarm| alarm.ends) {
        Some(PauseEnd::WhenWell) => Key::PausedUntilWell,
        _ => Key::OnlyNewCardRestarts,
    };
    let ill = today.ill().into_iter().map(|plan| view! { <WellAgain plan/> }).collect_view();
    view! {
        <Message title=words.text(Key::PlanPaused) lines/>
        <p><strong>{words.text(ends)}</strong></p>
        <button type="button" class="main" on:click=move |_| context.open(Page::Advice(raised.get_value()))>{words.text(Key::WhatToDo)}</button>
        {ill}
        <button type="button" on:click=move |_| context.open(Page::Card)>{words.text(Key::AddNewCard)}</button>
    }
}

/// The slot that the person chose to look at, if it is still open.
fn chosen(context: PatientContext, today: &Today) -> Option<(TodayItem, TodayKnot)> {
    let slot = context.chosen.get()?;
    let open = |mark| matches!(mark, Mark::Due | Mark::Partly(_));
    let knot = today.string.iter().find(|knot| knot.slot == slot && open(knot.mark) && !knot.paused)?;
    let item = today.items.iter().find(|item| item.item.id == slot.item && item.plan == knot.plan)?;
    Some((item.clone(), knot.clone()))
}
