//! The Now page: its head, one question, the day.

use leptos::prelude::*;
use words::Key;

use super::aftercare::Lines;
use super::head::HeadOf;
use super::question::OneQuestion;
use super::silence::Silence;
use super::told_once::ToldOnce;
use crate::patient::card::CardForm;
use crate::patient::desk::Desk;
use crate::patient::page::Page;
use crate::patient::sample::OfferSample;
use crate::patient::string::DayString;
use crate::shared::Fault;

/// What to do now; the day below it. Before any card was taken, the way to take one.
#[component]
pub fn Now() -> impl IntoView {
    let desk = Desk::here();
    let text = move |key| desk.house.text(key);
    let no_plan = Memo::new(move |_| desk.has_no_plan());
    let day = move || {
        desk.today.get().map(|today| {
            let can = today.items.iter().any(|item| item.held_back.is_none());
            view! {
                <div class="now-head">
                    <HeadOf today=today.clone()/>
                    <OneQuestion questions=today.questions.clone()/>
                </div>
                <div class="now-day">
                    <DayString today=today.clone()/>
                    <Lines lines=today.aftercare.clone()/>
                    <Show when=move || can>
                        <button type="button" on:click=move |_| desk.open(Page::Choose)>{text(Key::DoOneNow)}</button>
                    </Show>
                </div>
            }
        })
    };
    let page = move || {
        if no_plan.get() { view! { <CardForm title=Key::NoPlanTitle/><OfferSample/> }.into_any() } else { day.into_any() }
    };
    view! { <div class="column stack-5 now"><Fault/><Silence/>{page}<Show when=move || !no_plan.get() && !desk.is_sample()><ToldOnce/></Show></div> }
}
