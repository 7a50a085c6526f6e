//! After how long the store locks by itself.

use leptos::prelude::*;
use wire::app::LockState;
use wire::clinic::{IDLE_MINUTES, IdleRequest, SetIdle};
use words::Key;

use crate::clinic::fields::Choice;
use crate::shared::AppContext;

/// The choice of minutes; there is none without a limit.
#[component]
pub fn IdleChoice() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let options = IDLE_MINUTES.map(|minutes| (minutes.to_string(), words.idle_minutes(minutes))).to_vec();
    let chosen = Memo::new(move |_| {
        app.state.with(|state| match state.as_ref().map(|state| &state.lock) {
            Some(LockState::Open { idle_minutes, .. }) => idle_minutes.to_string(),
            _ => String::new(),
        })
    });
    let choose = move |typed: String| {
        if let Ok(minutes) = typed.parse() {
            app.request::<SetIdle>(IdleRequest { minutes }, move |state| app.state.set(Some(state)));
        }
    };
    view! {
        <section class="sheet stack">
            <Choice label=app.text(Key::IdleChoice) options value=chosen choose/>
            <p class="small soft">{app.text(Key::IdleWhat)}</p>
        </section>
    }
}
