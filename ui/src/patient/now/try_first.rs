//! After a card was taken and while nothing is due: the first exercise, to try it.

use exercises::today::{Today, TryFirst as First};
use leptos::prelude::*;
use words::Key;

use crate::patient::context::PatientContext;

/// The button that begins the exercise to try; empty if there is none.
#[component]
pub fn TryFirst(today: Today) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let shown = today.try_first.and_then(|First { plan, item: id, extra }| {
        let item = today.items.iter().find(|item| item.plan == plan && item.item.id == id)?;
        let name = words.exercise_name(&item.exercise);
        let what = if extra { words.try_first_what(name) } else { name.to_owned() };
        Some(view! {
            <section class="stack-2">
                <button type="button" class="main" aria-describedby="try-first" disabled=context.app.busy
                    on:click=move |_| context.begin(plan, id)>{words.text(Key::TryFirst)}</button>
                <p id="try-first" class="small soft">{what}</p>
            </section>
        })
    });
    view! { {shown} }
}
