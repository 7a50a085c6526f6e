//! What went wrong, and what to do.

use leptos::prelude::*;
use words::Key;

use super::AppContext;

/// The last failure at the top of a screen, with advice on what to do; empty if there is none.
#[component]
pub fn Fault() -> impl IntoView {
    let app = AppContext::current();
    let shown = move || {
        app.fault.get().map(|failure| {
            let refusal = app.words().failure(&failure);
            view! {
                <div class="fault stack-2">
                    <p><strong>{refusal.fault}</strong></p>
                    <p>{refusal.advice}</p>
                    <button type="button" class="quiet" on:click=move |_| app.fault.set(None)>{app.text(Key::Close)}</button>
                </div>
            }
        })
    };
    view! { <div role="alert">{shown}</div> }
}
