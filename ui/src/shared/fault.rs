//! What went wrong, and what to do.

use leptos::prelude::*;
use words::Key;

use super::House;

/// The last fault at the head of a screen, with the advice what to do; nothing when there is none.
#[component]
pub fn Fault() -> impl IntoView {
    let house = House::here();
    let shown = move || {
        house.fault.get().map(|failure| {
            let refusal = house.words().failure(&failure);
            view! {
                <div class="fault stack-2">
                    <p><strong>{refusal.fault}</strong></p>
                    <p>{refusal.advice}</p>
                    <button type="button" class="quiet" on:click=move |_| house.fault.set(None)>{house.text(Key::Close)}</button>
                </div>
            }
        })
    };
    view! { <div role="alert">{shown}</div> }
}
