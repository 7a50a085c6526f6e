//! The question after a trial with the phone on the body: whether the foot touched, and when. The sensor proposes, the person
//! decides.

use exercises::sway::{TouchAnswer, TrialQuestion};
use leptos::prelude::*;
use words::Key;

use super::super::driver::Driver;
use crate::shared::{AppContext, Fault, screen};

/// One question in large type, with three answers.
#[component]
pub fn AskTouched(asked: TrialQuestion, something_wrong: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    // The outer one: whether the moment is asked for; the inner one: the moment, once one was chosen.
    let when = RwSignal::new(None::<Option<u32>>);
    let most = match asked {
        TrialQuestion::At(_) => 0,
        TrialQuestion::AtAll { within_s, .. } => within_s as u32,
    };
    let yes = move |_| match asked {
        TrialQuestion::At(at_s) => driver.answer(asked, at_s, TouchAnswer::Yes),
        TrialQuestion::AtAll { .. } => when.set(Some(None)),
    };
    let other = move |answer| {
        let at_s = if let TrialQuestion::At(at_s) = asked { at_s } else { f64::from(most) };
        driver.answer(asked, at_s, answer);
    };
    let title = words.asked_after_trial(asked);
    let heading = move || if when.get().is_some() { words.text(Key::AskTouchedWhen).to_owned() } else { title.clone() };
    let answers = move || {
        view! {
            <div class="choices">
                <button type="button" on:click=yes>{words.text(Key::Yes)}</button>
                <button type="button" on:click=move |_| other(TouchAnswer::No)>{words.text(Key::No)}</button>
                <button type="button" on:click=move |_| other(TouchAnswer::Unsure)>{words.text(Key::NotSure)}</button>
            </div>
        }
    };
    view! {
        <main class="screen run">
            <div class="run-head"><p class="soft">{words.text(Key::AttemptOver)}</p><h1>{heading}</h1></div>
            <Fault/>
            {move || match when.get() {
                None => answers().into_any(),
                Some(_) => screen(move || view! { <When when most asked/> }),
            }}
            <button type="button" class="alarm" on:click=move |_| something_wrong()>{words.text(Key::SomethingWrong)}</button>
        </main>
    }
}

/// The moment of the touch, in whole seconds; none until one is chosen, so that nobody confirms a moment of the program's.
#[component]
fn When(when: RwSignal<Option<Option<u32>>>, most: u32, asked: TrialQuestion) -> impl IntoView {
    let words = AppContext::current().words();
    let driver = Driver::current();
    let at = move || when.get().flatten();
    let slide = move |chosen: String| when.set(Some(chosen.parse().ok()));
    let done = move |_| {
        if let Some(at) = when.get_untracked().flatten() {
            driver.answer(asked, f64::from(at), TouchAnswer::Yes);
        }
    };
    view! {
        <div class="stack stack-5">
            <p class="number moment">{move || at().map_or_else(|| "–".to_owned(), |at| words.seconds_short(at))}</p>
            <div>
            <input
                type="range"
                aria-label=words.text(Key::AskTouchedWhen)
                min="0"
                max=most
                step="1"
                class:empty=move || at().is_none()
                aria-valuetext=move || at().map(|at| words.seconds_short(at))
                prop:value=move || at().unwrap_or(most / 2).to_string()
                on:input=move |event| slide(event_target_value(&event))
                on:click=move |event| slide(event_target_value(&event))
            />
            <p class="range-ends small soft number" aria-hidden="true">{[0, most].map(|s| view! { <span>{words.seconds_short(s)}</span> })}</p>
            </div>
            <button type="button" class="main" disabled=move || at().is_none() on:click=done>{words.text(Key::ContinueOn)}</button>
            <button type="button" class="quiet" data-back="" on:click=move |_| when.set(None)>{words.text(Key::Back)}</button>
        </div>
    }
}
