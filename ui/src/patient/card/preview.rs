//! The preview of a card before it is taken.

use exercises::id::ItemId;
use exercises::plan::Schedule;
use leptos::prelude::*;
use std::collections::BTreeMap;
use wire::patient::{CardPreview, TakeCard, TakeCardRequest};
use words::Key;

use super::item::CardItem;
use crate::patient::context::PatientContext;
use crate::patient::page::Place;

/// Everything on the card in plain words, the times to agree on, and, always in sight, the button that starts the plan.
#[component]
pub fn Preview(preview: CardPreview, back: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let agreed = RwSignal::new(BTreeMap::<u8, (ItemId, Schedule)>::new());
    let CardPreview { plan, fingerprint, known_clinic, renewed, other_keys, replaces, exercises, older, source } = preview;
    let take = move |_| {
        let agreed = agreed.with_untracked(|agreed| agreed.values().cloned().collect());
        context.app.request::<TakeCard>(TakeCardRequest { source: source.clone(), agreed }, move |today| {
            context.app.state.update(|state| {
                if let Some(state) = state {
                    state.has_plan = true;
                }
            });
            context.show(today);
            context.go(Place::Now);
        });
    };
    let older = exercises.iter().filter(|exercise| older.contains(&exercise.id)).map(|exercise| {
        view! { <p class="note">{words.older_exercise(words.exercise_name(exercise))}</p> }
    });
    let older = older.collect_view();
    let items = plan.prescription.items.iter().map(|item| {
        let exercise = exercises.iter().find(|exercise| exercise.id == item.exercise).cloned();
        view! { <CardItem plan=plan.clone() item=item.clone() exercise agreed/> }
    });
    let items = items.collect_view();
    let aftercare = plan.prescription.aftercare.iter().map(|line| view! { <li>{words.aftercare(line)}</li> }).collect_view();
    let clinic = words.text(if known_clinic { Key::KnownClinic } else { Key::NewClinic });
    view! {
        <div class="stack-5">
            <h1>{words.text(Key::OnThisCard)}</h1>
            <section class="sheet stack-2">
                <h2>{plan.header.clinic.clone()}</h2>
                <p class="number">{words.security_code_of_card(&fingerprint)}</p>
                {renewed.then(|| view! { <p class="note">{words.text(Key::RenewedKeys)}</p> })}
                {other_keys.then(|| view! { <p class="warning">{words.text(Key::OtherKeys)}</p> })}
                <p class="small soft">{clinic}</p>
                {replaces.map(|old| view! { <p>{words.replaces(old, plan.header.revision)}</p> })}
                {older}
                <p>{words.visit_on(&words.date_in_full(plan.prescription.review))}</p>
            </section>
            {items}
            {(!plan.prescription.aftercare.is_empty()).then(|| view! {
                <section class="sheet stack-2"><h2>{words.text(Key::AfterTheVisit)}</h2><ul class="lines">{aftercare}</ul></section>
            })}
            <p>{words.text(Key::RemindersAhead)}</p>
            <p class="small soft">{words.text(Key::WhoPhotographs)}</p>
            <div class="page-foot row">
                <button type="button" data-back="" on:click=move |_| back()>{words.text(Key::UseAnotherCard)}</button>
                <button type="button" class="main" disabled=context.app.busy on:click=take>{words.text(Key::StartPlan)}</button>
            </div>
        </div>
    }
}
