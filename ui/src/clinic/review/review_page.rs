//! One patient's review.

use leptos::prelude::*;
use wire::clinic::{PatientCode, ReviewPage, ShowCard};
use words::Key;

use super::activities::Activities;
use super::alarms::Alarms;
use super::balance::Balance;
use super::barriers::Barriers;
use super::context::ReviewContext;
use super::counts::Counts;
use super::devices::Devices;
use super::done::Done;
use super::next::Next;
use super::next_plan::NextPlan;
use super::notes::Notes;
use super::pain::Pain;
use super::records::Records;
use super::strip::Strip;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::head::Head;
use crate::clinic::patients::Receive;
use crate::clinic::width::{TWO_COLUMNS, columns, window_width};
use crate::shared::width::text_scale;

/// The head, the line of all answers, the alarms, the proposals, and the answers in full below them. Without a plan there is nothing to answer:
/// what was found at visits can be saved.
#[component]
pub fn Review(page: ReviewPage) -> impl IntoView {
    let clinic = ClinicContext::current();
    let words = clinic.app.words();
    let width = window_width();
    let (title, line) = (page.code.clone(), words.review_head(&page));
    let title = page.name.as_ref().map_or(title.clone(), |name| format!("{title} {name}"));
    let covers = page.plan.is_some().then(|| words.review_covers(&page).join(" "));
    let notices = words.review_notices(&page);
    let notices = notices.into_iter().map(|line| view! { <p class="small warning">{line}</p> }).collect_view();
    let devices = page.devices_to_name().to_vec();
    let (has_plan, has_review, code) = (page.plan.is_some(), page.review.is_some(), page.code.clone());
    let next_plan = NextPlan::load(clinic, code.clone());
    let whose = StoredValue::new(code.clone());
    let show_card = move |_| {
        let code = whose.get_value();
        clinic.app.request::<ShowCard>(PatientCode { code: code.clone() }, move |card| {
            clinic.show(Page::Issued(code, Box::new(card)));
        });
    };
    let remove = move |_| clinic.show(Page::Remove(whose.get_value()));
    let case = move |_| clinic.case(whose.get_value());
    let columns = Signal::derive(move || columns(width.get(), text_scale()));
    provide_context(ReviewContext::new(page, words, columns, next_plan));
    let next = words.text(if has_plan { Key::PlanNext } else { Key::PlanFirst });
    let answers = if has_review {
        view! { <Strip/><Alarms/><Next/><Notes/><Changes/><Answers width/> }.into_any()
    } else if !has_plan {
        ().into_any()
    } else {
        let again = StoredValue::new(code.clone());
        let received = move || clinic.review(again.get_value());
        view! { <div class="waiting stack"><p class="empty">{words.text(Key::ReviewEmpty)}</p><Receive received/></div> }
            .into_any()
    };
    view! {
        <main class="screen review">
            <Head title line>
                <button type="button" class="quiet" on:click=move |_| clinic.visit(whose.get_value())>{words.text(Key::VisitOpen)}</button>
                {(has_plan && has_review).then(|| view! {
                    <button type="button" class="quiet" on:click=move |_| next_plan.when_kept(move || clinic.together(whose.get_value()))>
                        {words.text(Key::TogetherOpen)}
                    </button>
                })}
                {has_plan.then(|| view! {
                    <button type="button" class="quiet" disabled=clinic.app.busy on:click=show_card>
                        {words.text(Key::ShowCardAgain)}
                    </button>
                })}
                <button type="button" class="filled" on:click=move |_| next_plan.open()>{next}</button>
            </Head>
            {covers.map(|covers| view! { <p class="small soft covers">{covers}</p> })}
            {notices}
            {answers}
            <Devices code=whose.get_value() devices/>
            <Records code=whose.get_value() open=!has_plan/>
            <p class="foot-line">
                {has_plan.then(|| view! {
                    <button type="button" class="quiet" on:click=move |_| clinic.diary(whose.get_value())>{words.text(Key::PaperDiaryOpen)}</button>
                })}
                <button type="button" class="quiet" on:click=case>{words.case_of(&whose.get_value())}</button>
                <button type="button" class="quiet" on:click=remove>{words.text(Key::PatientRemove)}</button>
            </p>
        </main>
    }
}

/// When the plan changed. Empty if it did not.
#[component]
fn Changes() -> impl IntoView {
    let context = ReviewContext::current();
    let days: Vec<String> = context.changes().into_iter().map(|day| context.words.date(day)).collect();
    let line = (!days.is_empty()).then(|| context.words.review_plan_changes(&context.words.commas(&days)));
    line.map(|line| view! { <p class="small soft">{line}</p> })
}

/// One column in the order of the questions. With enough space there are two: what was done and the barriers at the left, and the
/// results at the right.
#[component]
fn Answers(width: Signal<f64>) -> impl IntoView {
    let is_wide = Memo::new(move |_| width.get() >= TWO_COLUMNS);
    move || match is_wide.get() {
        false => view! { <div class="answers"><Done/><Pain/><Balance/><Counts/><Activities/><Barriers/></div> }.into_any(),
        true => view! {
            <div class="answers two">
                <div><Done/><Barriers/></div>
                <div><Pain/><Balance/><Counts/><Activities/></div>
            </div>
        }
        .into_any(),
    }
}
