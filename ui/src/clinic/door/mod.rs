//! The door of the clinic's sealed store.

mod start;
mod unlock;

use leptos::prelude::*;
use wire::house;

use crate::shared::House;
use start::Start;
use unlock::Unlock;

/// At first start the clinic is set up; later the passphrase opens its store.
#[component]
pub fn Door() -> impl IntoView {
    let house = House::here();
    let started = Memo::new(move |_| {
        house.situation.with(|situation| situation.as_ref().is_some_and(|s| s.door != house::Door::NotStarted))
    });
    view! {
        <main class="screen door">
            {move || if started.get() { view! { <Unlock/> }.into_any() } else { view! { <Start/> }.into_any() }}
        </main>
    }
}
