//! The line at the top of the three main pages: date and time, and "Something is wrong".

use leptos::prelude::*;
use words::Key;

use super::context::PatientContext;
use super::page::Page;
use crate::shared::line::TimeIsSet;

/// Date and time at the left, and at the right "Something is wrong", which can always be reached.
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
