//! Moving the times of an exercise to suit the person's day, as when the card was taken.

use exercises::id::{ItemId, PlanId};
use exercises::plan::Schedule;
use leptos::prelude::*;
use wire::patient::{Refit as Command, RefitRequest, ShowPlan};
use words::Key;

use crate::patient::card::WindowOfDay;
use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// The times of one exercise, and the button that saves them. They apply from tomorrow.
#[component]
pub fn Refit(plan: PlanId, item: ItemId) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    // The name of the exercise, and the times last agreed to.
    let found = RwSignal::new(None::<(String, Schedule)>);
    let schedule = RwSignal::new(None::<Schedule>);
    context.app.query::<ShowPlan>((), move |pages| {
        let Some(page) = pages.into_iter().find(|page| page.plan.header.id == plan) else { return };
        let later = page.ahead.as_ref().map_or(&page.plan, |(_, plan)| plan);
        let Some(item) = later.item(item) else { return };
        let exercise = page.exercises.iter().find(|exercise| exercise.id == item.exercise);
        let name = exercise.map(|exercise| words.exercise_name(exercise).to_owned()).unwrap_or_default();
        found.set(Some((name, item.schedule.clone())));
    });
    let fields = move || {
        found.get().map(|(name, times)| {
            let chosen = RwSignal::new(times);
            Effect::new(move || schedule.set(Some(chosen.get())));
            let said = move || words.phrase_schedule(&chosen.get());
            view! { <section class="sheet stack-2"><p>{said}</p><WindowOfDay name schedule=chosen/></section> }
        })
    };
    let over_midnight = Memo::new(move |_| {
        schedule.with(|chosen| chosen.as_ref().is_some_and(|chosen| chosen.pattern.goes_over_midnight()))
    });
    let warned = move || {
        over_midnight.get().then(|| view! { <p class="alarm-text" role="alert">{words.text(Key::TimesOverMidnight)}</p> })
    };
    let same = move || {
        schedule.get().is_none_or(|chosen| found.with(|found| found.as_ref().is_some_and(|(_, old)| *old == chosen)))
    };
    let save = move |_| {
        if let Some(schedule) = schedule.get_untracked() {
            context.app.request::<Command>(RefitRequest { plan, item, schedule }, move |_| context.close());
        }
    };
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1">
                    <p class="soft">{move || found.get().map(|(name, _)| name)}</p>
                    <h1>{words.text(Key::ChangeTimes)}</h1>
                    <p>{words.text(Key::ChangeTimesWhat)}</p>
                </div>
                {fields}
                {warned}
                <div class="page-foot">
                    <Fault/>
                    <div class="row">
                        <button type="button" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
                        <button type="button" class="main" disabled=move || same() || over_midnight.get() || context.app.busy.get() on:click=save>
                            {words.text(Key::SaveTimes)}
                        </button>
                    </div>
                </div>
            </div>
        </main>
    }
}
