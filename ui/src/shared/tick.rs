//! A tick box.

use leptos::prelude::*;

/// A tick box with its text beside it; the text can be pressed as well.
#[component]
pub fn Tick(
    #[prop(into)] label: String,
    #[prop(into)] value: Signal<bool>,
    put: impl Fn(bool) + 'static,
    #[prop(optional, into)] hint: String,
) -> impl IntoView {
    let hint = (!hint.is_empty()).then(|| view! { <small>{hint}</small> });
    view! {
        <label class="tick">
            <input type="checkbox" prop:checked=value on:change:target=move |event| put(event.target().checked())/>
            <span>{label}{hint}</span>
        </label>
    }
}
