//! A number with a step down and a step up.

use leptos::prelude::*;

use crate::shared::AppContext;

/// A small number between two buttons. `step` is told whether it goes up.
#[component]
pub fn Stepper(
    label: &'static str,
    #[prop(into)] value: Signal<i64>,
    step: impl Fn(bool) + Copy + 'static,
) -> impl IntoView {
    let words = AppContext::current().words();
    let less = words.step_less(&label);
    let more = words.step_more(&label);
    view! {
        <div class="stepper" role="group" aria-label=label>
            <span aria-hidden="true">{label}</span>
            <div>
                <button type="button" aria-label=less on:click=move |_| step(false)>"−"</button>
                <output class="number">{value}</output>
                <button type="button" aria-label=more on:click=move |_| step(true)>"+"</button>
            </div>
        </div>
    }
}
