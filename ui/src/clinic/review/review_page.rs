//! One patient's review.

use leptos::prelude::*;
use wire::clinic::ReviewPage;
use words::Key;

use super::activities::Activities;
use super::alarms::Alarms;
use super::balance::Balance;
use super::barriers::Barriers;
use super::context::ReviewContext;
use super::done::Done;
use super::next::Next;
use super::notes::Notes;
use super::pain::Pain;
use crate::clinic::context::ClinicContext;
use crate::clinic::head::Head;
use crate::clinic::patients::Receive;
use crate::clinic::width::{TWO_COLUMNS, columns, window_width};
use crate::shared::width::text_scale;

/// The head, the alarms, and the answers below them.
#[component]
pub fn Review(page: ReviewPage) -> impl IntoView {
    let clinic = ClinicContext::current();
    let words = clinic.app.words();
    let width = window_width();
    let (title, line) = (page.code.clone(), words.review_head(&page));
    let title = page.name.as_ref().map_or(title.clone(), |name| format!("{title} {name}"));
    let covers = words.review_covers(&page).join(" ");
    let (has_plan, has_review, code) = (page.plan.is_some(), page.review.is_some(), page.code.clone());
    provide_context(ReviewContext::new(page, words, Signal::derive(move || columns(width.get(), text_scale()))));
    let next = words.text(if has_plan { Key::PlanNext } else { Key::PlanFirst });
    let answers = if has_review {
        view! { <Alarms/><Answers width/> }.into_any()
    } else {
        let again = StoredValue::new(code.clone());
        let received = move || clinic.review(again.get_value());
        view! { <div class="waiting stack"><p class="empty">{words.text(Key::ReviewEmpty)}</p><Receive received/></div> }
            .into_any()
    };
    view! {
        <main class="screen review">
            <Head title line>
                <button type="button" class="filled" on:click=move |_| clinic.plan(code.clone())>{next}</button>
            </Head>
            <p class="small soft covers">{covers}</p>
            {answers}
        </main>
    }
}

/// One column in the order of the questions. With enough space there are two: what was done and the barriers at the left, and the
/// results at the right. What comes next is put into the shorter column.
#[component]
fn Answers(width: Signal<f64>) -> impl IntoView {
    let is_wide = Memo::new(move |_| width.get() >= TWO_COLUMNS);
    let balances = ReviewContext::current().read(|review, _| !review.balance.is_empty()).unwrap_or(false);
    move || match (is_wide.get(), balances) {
        (false, _) => view! {
            <div class="answers"><Done/><Pain/><Balance/><Activities/><Barriers/><Next/><Notes/></div>
        }
        .into_any(),
        (true, true) => view! {
            <div class="answers two">
                <div><Done/><Barriers/><Next/><Notes/></div>
                <div><Pain/><Balance/><Activities/></div>
            </div>
        }
        .into_any(),
        (true, false) => view! {
            <div class="answers two">
                <div><Done/><Barriers/><Notes/></div>
                <div><Pain/><Balance/><Activities/><Next/></div>
            </div>
        }
        .into_any(),
    }
}
