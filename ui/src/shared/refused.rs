//! The window if the data folder cannot be opened.

use leptos::prelude::*;

use super::AppContext;

/// What is wrong with the data folder, and what to do; empty until the shell has answered.
#[component]
pub fn Refused() -> impl IntoView {
    let app = AppContext::current();
    let said = move || {
        app.fault.get().map(|failure| {
            let refusal = app.words().failure(&failure);
            view! { <h1>{refusal.fault}</h1><p>{refusal.advice}</p> }
        })
    };
    view! { <main class="screen"><div class="column stack-5" role="alert">{said}</div></main> }
}
