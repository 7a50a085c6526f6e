//! The Now page: its head, one question, the day.

use exercises::today::TodayItem;
use leptos::prelude::*;
use words::Key;

use super::aftercare::Lines;
use super::as_needed::AsNeeded;
use super::head::HeadOf;
use super::meeting::{MeetingNow, can_be_in_meeting};
use super::new_today::NewToday;
use super::question::OneQuestion;
use super::silence::Silence;
use super::tray_hint::TrayHint;
use super::try_first::TryFirst;
use super::visit_soon::VisitSoon;
use super::weeks::Weeks;
use crate::patient::answered::Answered;
use crate::patient::card::CardForm;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::patient::sample::OfferSample;
use crate::patient::string::DayString;
use crate::shared::Fault;
use crate::shared::copied::DataCopied;

/// What to do now, and the day below it. Before a card was taken, the form for taking one.
#[component]
pub fn Now() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    let no_plan = Memo::new(move |_| context.has_no_plan());
    let meeting = can_be_in_meeting(context);
    let day = move || {
        context.today.get().map(|today| {
            let can = today.items.iter().any(TodayItem::can_be_done);
            view! {
                <div class="now-head">
                    <HeadOf today=today.clone()/>
                    <NewToday today=today.clone()/>
                    <TryFirst today=today.clone()/>
                    <VisitSoon today=today.clone()/>
                    <Answered/>
                    <OneQuestion questions=today.questions.clone()/>
                    <MeetingNow wanted=meeting/>
                </div>
                <div class="now-day">
                    <DayString today=today.clone()/>
                    <Weeks today=today.clone()/>
                    <AsNeeded today=today.clone()/>
                    <Lines lines=today.aftercare.clone()/>
                    <Show when=move || can>
                        <button type="button" on:click=move |_| context.open(Page::Choose)>{text(Key::DoOneNow)}</button>
                    </Show>
                </div>
            }
        })
    };
    let page = move || {
        if no_plan.get() {
            view! { <CardForm title=Key::AddCardTitle><OfferSample/></CardForm> }.into_any()
        } else {
            day.into_any()
        }
    };
    view! { <div class="column stack-5 now"><Fault/><DataCopied/><Silence/>{page}<Show when=move || !no_plan.get() && !context.is_sample()><TrayHint/></Show></div> }
}
