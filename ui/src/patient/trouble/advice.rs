//! What to do when something is wrong.

use exercises::alarm::Trouble;
use exercises::today::{PauseEnd, TodayAlarm};
use leptos::prelude::*;
use words::Key;

use super::well_again::WellAgain;
use crate::patient::context::PatientContext;
use crate::patient::page::{Page, Raised};
use crate::shared::Fault;

/// What to do, in large type. On an urgent page nothing else has a frame; on any other the clinic's number follows, what is paused,
/// and what ends the pause.
#[component]
pub fn Advice(raised: Box<Raised>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let trouble = raised.trouble;
    let alarm = alarm_of(context, &raised);
    let steps = alarm.as_ref().filter(|alarm| alarm.trouble == Trouble::NearlyFell && alarm.suspends.is_none());
    let steps = steps.map(|alarm| words.after_near_fall(alarm.item));
    let steps = steps.unwrap_or_else(|| words.what_to_do(trouble, &raised.circumstances)).into_iter();
    let steps = steps.map(|step| view! { <li>{step}</li> }).collect_view();
    let above = raised
        .above
        .as_ref()
        .map(|(given, limit)| view! { <p class="large">{words.above_the_limit(given.score, *limit)}</p> });
    let head = view! {
        <div class="stack-1"><p class="soft">{words.trouble(trouble)}</p><h1>{words.text(Key::WhatToDo)}</h1></div>
        {above}
        <ol class="advice">{steps}</ol>
    };
    let rest = match trouble.is_urgent() {
        true => view! { <Urgent alarm/> }.into_any(),
        false => view! { <NotUrgent raised=*raised alarm/> }.into_any(),
    };
    view! {
        <main class="screen">
            <div class="column stack-5" role="alert">
                {head}
                {rest}
            </div>
        </main>
    }
}

/// The alarm of this page; `None` before there is a plan.
fn alarm_of(context: PatientContext, raised: &Raised) -> Option<TodayAlarm> {
    context.today.with_untracked(|today| {
        let mut all = today.iter().flat_map(|today| &today.alarms);
        all.rfind(|alarm| (Some(alarm.plan), alarm.trouble) == (raised.plan, raised.trouble)).cloned()
    })
}

/// Nothing that competes with calling for help.
#[component]
fn Urgent(alarm: Option<TodayAlarm>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    view! {
        <div class="small soft stack-2">
            {alarm.map(|alarm| view! { <p>{words.paused(&alarm)}" "{words.text(Key::OnlyNewCardRestarts)}</p> })}
            <p>{words.text(Key::NoDiagnosis)}</p>
        </div>
        <button type="button" class="quiet" on:click=move |_| context.close()>{words.text(Key::Close)}</button>
    }
}

#[component]
fn NotUrgent(raised: Raised, alarm: Option<TodayAlarm>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let plan = raised.plan;
    let ill = alarm.as_ref().is_some_and(|alarm| alarm.ends == PauseEnd::WhenWell && alarm.suspends.is_some());
    let until_card = alarm.as_ref().is_some_and(|alarm| alarm.ends == PauseEnd::Card && alarm.suspends.is_some());
    let paused = alarm.map(|alarm| {
        view! {
            <section class="sheet stack-2">
                <h2>{words.text(Key::PausedTitle)}</h2>
                <p>{words.paused(&alarm)}</p>
                {until_card.then(|| view! { <p>{words.text(Key::OnlyNewCardRestarts)}</p> })}
                <p>{words.text(Key::NotedForVisit)}</p>
                <p>{words.text(Key::OtherDeviceUnaware)}</p>
            </section>
        }
    });
    let change = raised.above.map(|(given, _)| {
        let change = move |_| context.take_back(given.clone());
        view! { <button type="button" class="quiet" on:click=change>{words.text(Key::ChangeAnswer)}</button> }
    });
    view! {
        <Phone plan/>
        {paused}
        <Fault/>
        <button type="button" class="main" on:click=move |_| context.close()>{words.text(Key::Close)}</button>
        {plan.filter(|_| ill).map(|plan| view! { <WellAgain plan/> })}
        {change}
        {until_card.then(|| view! { <button type="button" on:click=move |_| context.open(Page::Card)>{words.text(Key::AddNewCard)}</button> })}
        <p class="small soft">{words.text(Key::NoDiagnosis)}</p>
    }
}

/// The clinic's telephone number in large type. Empty if the card has none.
#[component]
fn Phone(plan: Option<exercises::id::PlanId>) -> impl IntoView {
    let context = PatientContext::current();
    let label = context.app.text(Key::CallYourClinic);
    context.phone(plan).map(|(clinic, number)| {
        view! { <p class="clinic-phone"><span class="soft">{label}</span><strong>{number}</strong><span>{clinic}</span></p> }
    })
}
