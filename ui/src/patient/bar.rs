//! The line at the head of the three places: when it is, and "Something is wrong".

use leptos::prelude::*;
use words::Key;

use super::context::PatientContext;
use super::page::Page;
use crate::shared::line::TimeIsSet;

/// Day and time at the left; at the right, always within reach, "Something is wrong".
#[component]
pub fn Bar() -> impl IntoView {
    let context = PatientContext::current();
    let when = move || {
        context.today.with(|today| {
            let now = today.as_ref()?.now;
            let words = context.app.words();
            Some(words.day_at_time(&words.weekday(now.date()), &words.minute(now.minute())))
        })
    };
    view! {
        <header class="bar">
            <p class="soft number">{when}</p>
            <button type="button" class="alarm" on:click=move |_| context.open(Page::Trouble(None))>
                {context.app.text(Key::SomethingWrong)}
            </button>
        </header>
        <TimeIsSet/>
    }
}
