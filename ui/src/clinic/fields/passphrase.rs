//! A passphrase field, hidden unless the person wants to see the passphrase.

use leptos::prelude::*;

/// A labelled passphrase field. Pasting is allowed; the passphrase is stored nowhere but in `value`.
#[component]
pub fn Passphrase(
    label: &'static str,
    value: RwSignal<String>,
    #[prop(into)] shown: Signal<bool>,
    #[prop(optional)] hint: &'static str,
) -> impl IntoView {
    view! {
        <label class="text">
            <span>{label}</span>
            <input
                type=move || if shown.get() { "text" } else { "password" }
                autocomplete="off"
                autocapitalize="none"
                spellcheck="false"
                prop:value=value
                on:input:target=move |event| value.set(event.target().value())
            />
            <small>{hint}</small>
        </label>
    }
}
