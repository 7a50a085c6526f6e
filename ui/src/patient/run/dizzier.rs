//! The question for dizziness after movements of the head. What stays is raised as an alarm, on the page for it.

use exercises::alarm::Trouble;
use exercises::id::{ItemId, PlanId};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::trouble::AskTrouble;
use crate::shared::{AppContext, screen};

/// One question with three answers; `go_on` follows where it does not stay.
#[component]
pub fn Dizzier(during: (PlanId, ItemId), go_on: impl Fn() + Copy + Send + Sync + 'static) -> impl IntoView {
    let context = PatientContext::current();
    let stays = RwSignal::new(false);
    let shown = move || match stays.get() {
        false => screen(move || view! { <Asked stays go_on/> }),
        true => screen(move || {
            let nothing = move || stays.set(false);
            view! { <AskTrouble during=Some(during) at_once=Trouble::Dizzy nothing stop=|| ()/> }
        }),
    };
    on_cleanup(move || context.app.fault.set(None));
    shown
}

#[component]
fn Asked(stays: RwSignal<bool>, go_on: impl Fn() + Copy + Send + Sync + 'static) -> impl IntoView {
    let words = AppContext::current().words();
    view! {
        <main class="screen">
            <div class="column stack-5">
                <h1>{words.text(Key::DizzierThanBefore)}</h1>
                <p class="soft">{words.text(Key::StayUntilSettled)}</p>
                <div class="choices">
                    <button type="button" on:click=move |_| go_on()>{words.text(Key::DizzyNot)}</button>
                    <button type="button" on:click=move |_| go_on()>{words.text(Key::DizzySettles)}</button>
                    <button type="button" on:click=move |_| stays.set(true)>{words.text(Key::DizzyStays)}</button>
                </div>
            </div>
        </main>
    }
}
