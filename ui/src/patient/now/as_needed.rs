//! The exercises that are done whenever the person needs them.

use exercises::today::{Head, Today, TodayItem};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// Each begins with one press. Empty if there are none, or while everything is paused or the plan is over.
#[component]
pub fn AsNeeded(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let open = !matches!(today.head, Head::Stopped(_) | Head::NoPlan | Head::Over { .. });
    let wanted = |item: &&TodayItem| open && item.item.schedule.is_as_needed() && item.can_be_done();
    let all: Vec<TodayItem> = today.items.iter().filter(wanted).cloned().collect();
    let row = move |item: TodayItem| {
        let (plan, id) = (item.plan, item.item.id);
        view! {
            <li>
                <button type="button" disabled=context.app.busy on:click=move |_| context.begin(plan, id)>
                    {words.exercise_name(&item.exercise).to_owned()}
                    // A space, so that a screen reader separates the two.
                    " "<small class="soft">{words.dose_of(&item.item)}</small>
                </button>
            </li>
        }
    };
    (!all.is_empty()).then(|| {
        view! {
            <section class="stack-2">
                <h2>{words.text(Key::WhenYouNeedIt)}</h2>
                <ul class="choices">{all.into_iter().map(row).collect_view()}</ul>
            </section>
        }
    })
}
