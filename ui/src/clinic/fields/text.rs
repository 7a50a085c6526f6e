//! A line of text.

use leptos::prelude::*;

/// A labelled line with a hint below it. `value` is its content; `put` is called with what is typed.
#[component]
pub fn Text(
    #[prop(into)] label: String,
    #[prop(into)] value: Signal<String>,
    put: impl Fn(String) + 'static,
    #[prop(optional, into)] hint: Signal<String>,
    #[prop(optional)] most: Option<usize>,
) -> impl IntoView {
    view! {
        <label class="text">
            <span>{label}</span>
            <input
                type="text"
                autocomplete="off"
                maxlength=most.map(|most| most.to_string())
                prop:value=value
                on:input:target=move |event| put(event.target().value())
            />
            <small>{hint}</small>
        </label>
    }
}
