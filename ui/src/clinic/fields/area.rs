//! A text of several lines.

use leptos::prelude::*;

/// A labelled field of several lines with a hint below it, or, as long as there is one, a `fault` in its place. `put` is called with
/// what is typed, `left` when the field is left.
#[component]
pub fn Area(
    label: &'static str,
    #[prop(into)] value: Signal<String>,
    put: impl Fn(String) + 'static,
    left: impl Fn() + 'static,
    #[prop(optional, into)] fault: Signal<Option<String>>,
    #[prop(optional)] hint: &'static str,
    #[prop(default = 2)] rows: u8,
) -> impl IntoView {
    let wrong = Memo::new(move |_| fault.with(Option::is_some));
    view! {
        <label class="text">
            <span>{label}</span>
            <textarea
                rows=rows.to_string()
                autocomplete="off"
                aria-invalid=move || wrong.get().then_some("true")
                prop:value=value
                on:input:target=move |event| put(event.target().value())
                on:blur=move |_| left()
            ></textarea>
            <small class:warning=move || wrong.get()>{move || fault.get().unwrap_or_else(|| hint.to_owned())}</small>
        </label>
    }
}
