//! The door of the clinic's sealed store.

mod start;
mod unlock;

use leptos::prelude::*;
use wire::app;

use crate::shared::AppContext;
use start::Start;
use unlock::Unlock;

/// At first start the clinic is set up; later the passphrase opens its store.
#[component]
pub fn Lock() -> impl IntoView {
    let app = AppContext::current();
    let started =
        Memo::new(move |_| app.state.with(|state| state.as_ref().is_some_and(|s| s.lock != app::LockState::NotStarted)));
    view! {
        <main class="screen door">
            {move || if started.get() { view! { <Unlock/> }.into_any() } else { view! { <Start/> }.into_any() }}
        </main>
    }
}
