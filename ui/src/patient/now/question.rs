//! One question of the day.

use exercises::ask::Question;
use leptos::prelude::*;
use words::Key;

use crate::patient::asked::Asked;
use crate::patient::desk::Desk;

/// The first open question; put away, it waits for the next opening of the window.
#[component]
pub fn OneQuestion(questions: Vec<Question>) -> impl IntoView {
    let desk = Desk::here();
    let first = questions.into_iter().next();
    let shown = move || {
        let question = first.clone().filter(|_| !desk.put_away.get())?;
        Some(view! {
            <div class="sheet stack">
                <Asked question then=|| ()/>
                <button type="button" class="quiet" on:click=move |_| desk.put_away.set(true)>{desk.house.text(Key::NotNow)}</button>
            </div>
        })
    };
    view! { {shown} }
}
