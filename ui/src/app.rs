//! The window's outermost component: the screen of the chosen place above the three places.

use leptos::prelude::*;

use crate::invoke::{Situation, call};
use crate::places::{Place, Places};

/// The whole window.
#[component]
pub fn App() -> impl IntoView {
    let place = RwSignal::new(Place::Now);
    let situation = LocalResource::new(|| call::<Situation>(&()));
    let line = move || {
        situation.get().map(|answer| match answer {
            Ok(situation) => situation.at.map_or_else(String::new, |at| format!("The time is set to {at}")),
            Err(fault) => fault.to_string(),
        })
    };
    view! {
        <div class="window">
            <main class="screen stack">
                <h1>"Carryover"</h1>
                <p class="soft" role="status">{line}</p>
            </main>
            <Places place/>
        </div>
    }
}
