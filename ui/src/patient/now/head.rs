//! What stands at the top of Now.

use exercises::history::Mark;
use exercises::today::{Head, Today, TodayItem};
use leptos::prelude::*;
use words::{Key, Words};

use super::message::Message;
use super::offer::Offer;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::patient::places::Place;

/// One thing to do, or why there is none.
#[component]
pub fn HeadOf(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    if let Some((item, slot)) = chosen(context, &today) {
        return view! { <Offer item at=slot line=None/> }.into_any();
    }
    match today.head.clone() {
        Head::NoPlan => ().into_any(),
        Head::Due { slot, due, put_off, .. } => {
            let at = |key, minute: u16| words.fill(key, &[("time", &words.minute(minute))]);
            let early = (due.utc_ms > today.now.utc_ms).then(|| at(Key::DueSoon, due.minute()));
            let line = put_off.map(|until| at(Key::PutOffUntil, until.minute())).or(early);
            today.item.map(|item| view! { <Offer item at=slot line/> }).into_any()
        }
        Head::Next { due, .. } => {
            let name = today.item.as_ref().map(|item| name(item, words)).unwrap_or_default();
            let minutes = (due.utc_ms - today.now.utc_ms + 59_999) / 60_000;
            let next = words.fill(Key::NextAt, &[("name", &name), ("time", &words.minute(due.minute()))]);
            let ahead = words.ahead(minutes);
            view! { <Message title=words.text(Key::NothingNow) lines=vec![next, ahead]/> }.into_any()
        }
        Head::DoneForToday { done, of, next } => {
            let count = words.fill(Key::DoneOf, &[("done", &done), ("of", &of)]);
            let title = if done >= of { Key::AllDone } else { Key::DayOver };
            let lines = [Some(count), next.map(|next| words.next_on(today.now, next))];
            view! { <Message title=words.text(title) lines=lines.into_iter().flatten().collect()/> }.into_any()
        }
        Head::DayOff { chosen, next } => {
            let title = if chosen { Key::DayExcused } else { Key::DayOff };
            let lines = next.map(|next| words.next_on(today.now, next));
            view! { <Message title=words.text(title) lines=lines.into_iter().collect()/> }.into_any()
        }
        Head::Over { review } => {
            let lines = vec![words.fill(Key::OverWhat, &[("date", &words.date(review))])];
            view! {
                <Message title=words.text(Key::Over) lines/>
                <button type="button" class="main" on:click=move |_| context.go(Place::Record)>{words.text(Key::ForTheVisit)}</button>
                <button type="button" on:click=move |_| context.open(Page::Card)>{words.text(Key::TakeNewCard)}</button>
            }
            .into_any()
        }
        Head::Stopped(trouble) => {
            let lines = vec![words.fill(Key::StoppedSince, &[("what", &words.trouble(trouble))])];
            view! {
                <Message title=words.text(Key::Stopped) lines/>
                <p><strong>{words.text(Key::OnlyNewCard)}</strong></p>
                <button type="button" class="main" on:click=move |_| context.open(Page::Advice(trouble))>{words.text(Key::WhatToDo)}</button>
                <button type="button" on:click=move |_| context.open(Page::Card)>{words.text(Key::TakeNewCard)}</button>
            }
            .into_any()
        }
    }
}

/// The slot that the person chose to look at, while it is still open.
fn chosen(context: PatientContext, today: &Today) -> Option<(TodayItem, exercises::slots::SlotRef)> {
    let slot = context.chosen.get()?;
    let open = |mark| matches!(mark, Mark::Due | Mark::Partly(_));
    let knot = today.string.iter().find(|knot| knot.slot == slot && open(knot.mark) && !knot.paused)?;
    let item = today.items.iter().find(|item| item.item.id == slot.item && item.plan == knot.plan)?;
    Some((item.clone(), slot))
}

/// An item's name.
pub fn name(item: &TodayItem, words: Words) -> String {
    item.exercise.text(words.lang).map(|texts| texts.name.clone()).unwrap_or_default()
}
