//! A change of level or dose that the clinician allowed the person to make, if the rules propose one.

use exercises::today::TodayItem;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// The change, its reason, and the button that accepts it for this and the next sessions.
#[component]
pub fn NextStep(item: TodayItem) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (plan, id) = (item.plan, item.item.id);
    let shown = item.step.clone().map(|step| {
        let (question, why) = words.offered_step(&step, &item.exercise, item.start);
        view! {
            <section class="next-step sheet stack-2">
                <h2>{question}</h2>
                <p class="soft">{why}" "{words.text(Key::StepAllowed)}</p>
                <button type="button" disabled=context.app.busy on:click=move |_| context.begin_step(plan, id)>{words.text(Key::StartWithStep)}</button>
            </section>
        }
    });
    view! { {shown} }
}
