//! The question before the window closes if the program could not stay in a tray: what happens to the reminders.

use leptos::prelude::*;
use wire::device::{Leave, Leaving};
use words::Key;

use super::context::PatientContext;
use crate::shared::Fault;

/// Stay in the background, close, or neither.
#[component]
pub fn Closing() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    let leave = move |leaving| context.app.request::<Leave>(leaving, move |()| context.closing.set(false));
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-2"><h1>{text(Key::ClosingTitle)}</h1><p>{text(Key::ClosingWhat)}</p></div>
                <Fault/>
                <div class="stack">
                    <button type="button" class="main" on:click=move |_| leave(Leaving::Background)>{text(Key::ClosingKeep)}</button>
                    <button type="button" on:click=move |_| leave(Leaving::End)>{text(Key::ClosingEnd)}</button>
                    <button type="button" class="quiet" data-back="" on:click=move |_| leave(Leaving::GoOn)>{text(Key::Back)}</button>
                </div>
            </div>
        </main>
    }
}
