//! Did anything alarming happen?

use exercises::review::ReviewAlarm;
use leptos::prelude::*;
use words::Key;
use words::review::ReviewQuestion;

use super::context::ReviewContext;

/// A banner for each alarm that no card has cleared, with a button that clears it with the next plan; one line for each other alarm.
/// Flares of pain follow. Empty if there was nothing: the line at the top says so.
#[component]
pub fn Alarms() -> impl IntoView {
    let context = ReviewContext::current();
    let all = context.read(|review, _| review.alarms.clone()).unwrap_or_default();
    let flares = context.read(|review, names| context.words.flares(review, names)).unwrap_or_default();
    (!all.is_empty() || !flares.is_empty()).then(|| {
        let flares = flares.into_iter().map(|line| view! { <li class="alarm-banner cleared"><p>{line}</p></li> });
        let banners = all.into_iter().map(|alarm| view! { <Banner alarm/> }).collect_view();
        view! { <ul class="stack-2 alarms" aria-label=context.question(ReviewQuestion::Alarms)>{banners}{flares.collect_view()}</ul> }
    })
}

#[component]
fn Banner(alarm: ReviewAlarm) -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let said = context.read(|_, names| words.review_alarm(&alarm, names));
    let (cleared, clearing) = (alarm.cleared, alarm.clearing());
    let next = context.next;
    let pressed = move || next.clears(clearing);
    let label = move || words.text(if pressed() { Key::ReviewClearedInNextPlan } else { Key::ReviewTalkedAboutIt });
    let clear = (!cleared).then(|| {
        view! {
            <button type="button" aria-pressed=move || pressed().to_string() disabled=move || next.draft.with(Option::is_none)
                on:click=move |_| next.toggle_cleared(clearing)>{label}</button>
        }
    });
    said.map(|said| {
        view! {
            <li class="alarm-banner" class:cleared=cleared>
                <p><strong>{said.word}</strong>" "<span>{said.figures}</span></p>
                {clear}
            </li>
        }
    })
}
