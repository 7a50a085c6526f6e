//! The note "Time is set to ...", if it is.

use leptos::prelude::*;

use super::AppContext;

/// A small line that says that the program's time was set on its command line; empty otherwise.
#[component]
pub fn TimeIsSet() -> impl IntoView {
    let app = AppContext::current();
    let line = move || {
        let now = app.state.with(|state| state.as_ref().filter(|s| s.at_is_set).map(|s| s.now))?;
        let words = app.words();
        let time = format!("{} {}", words.date_in_full(now.date()), words.minute(now.minute()));
        let said = words.time_set_to(&time);
        let name = said.clone();
        Some(view! { <aside class="at-is-set small soft" aria-label=name>{said}</aside> })
    };
    view! { {line} }
}
