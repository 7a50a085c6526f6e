//! The exercises of which the person chooses the days.

use exercises::today::{Today, TodayItem, TodayWeek};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// Each with what was done this week; it begins with one press while more is to be done. Empty if there are none.
#[component]
pub fn Weeks(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let item_of = |week: &TodayWeek| {
        let same = |item: &&TodayItem| (item.plan, item.item.id) == (week.plan, week.item);
        today.items.iter().find(same).cloned()
    };
    let all: Vec<(TodayWeek, TodayItem)> = today.weeks.iter().filter_map(|week| Some((*week, item_of(week)?))).collect();
    let row = move |(week, item): (TodayWeek, TodayItem)| {
        let name = words.exercise_name(&item.exercise).to_owned();
        let so_far = words.week_so_far(week.so_far.done, week.so_far.of);
        let (plan, id) = (week.plan, week.item);
        let line = match week.offered {
            true => view! {
                <button type="button" disabled=context.app.busy on:click=move |_| context.begin(plan, id)>
                    // A space, so that a screen reader separates the two.
                    {name}" "<small class="soft">{so_far}</small>
                </button>
            }
            .into_any(),
            false => view! { <p>{name}" "<small class="soft">{so_far}</small></p> }.into_any(),
        };
        view! { <li>{line}</li> }
    };
    (!all.is_empty()).then(|| {
        view! {
            <section class="stack-2">
                <h2>{words.text(Key::OnYourDays)}</h2>
                <ul class="choices">{all.into_iter().map(row).collect_view()}</ul>
            </section>
        }
    })
}
