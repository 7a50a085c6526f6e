//! Choosing an exercise outside its slots.

use exercises::today::TodayItem;
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::Fault;

/// A button for every exercise; one that is paused says why.
#[component]
pub fn Choose() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let items = context.today.with_untracked(|today| today.as_ref().map(|today| today.items.clone()).unwrap_or_default());
    let items: Vec<TodayItem> = items.into_iter().filter(|item| item.in_phase).collect();
    let row = move |item: TodayItem| {
        let (plan, id) = (item.plan, item.item.id);
        let held = item.paused.map(|trouble| {
            view! { <p class="alarm-text">{words.exercise_paused_because(words.trouble(trouble))}</p> }
        });
        let off = Signal::derive(move || context.app.busy.get());
        let blocked = held.is_some();
        view! {
            <li class="stack-1">
                <button type="button" disabled=move || blocked || off.get() on:click=move |_| context.begin(plan, id)>
                    {words.exercise_name(&item.exercise).to_owned()}
                    // A space, so that a screen reader separates the two.
                    " "<small class="soft">{words.dose_of(&item.item)}{item.clinic.clone().map(|clinic| format!(". {clinic}"))}</small>
                </button>
                {held}
            </li>
        }
    };
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><h1>{words.text(Key::WhichOne)}</h1><p class="soft">{words.text(Key::ExtraWhat)}</p></div>
                <Fault/>
                <ul class="choices">{items.into_iter().map(row).collect_view()}</ul>
                <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{words.text(Key::Back)}</button>
            </div>
        </main>
    }
}
