//! The first question: what is wrong?

use exercises::alarm::Trouble;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// What can be wrong, gravest first; the way back comes last.
#[component]
pub fn TroubleList(
    chose: impl Fn(Trouble) + Copy + Send + 'static,
    nothing: impl Fn() + Copy + Send + 'static,
) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let busy = context.app.busy;
    let all = Trouble::OFFERED.map(|trouble| {
        // Red is only for urgent complaints.
        let class = if trouble.is_urgent() { "alarm" } else { "" };
        view! { <button type="button" class=class disabled=busy on:click=move |_| chose(trouble)>{words.trouble(trouble)}</button> }
    });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-2"><h1>{words.text(Key::WhatIsWrong)}</h1><p>{words.text(Key::UrgentAnyway)}</p></div>
                <Fault/>
                <div class="choices">{all}</div>
                <button type="button" data-back="" on:click=move |_| nothing()>{words.text(Key::NothingIsWrong)}</button>
            </div>
        </main>
    }
}
