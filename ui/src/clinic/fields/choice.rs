//! A drop-down list.

use leptos::prelude::*;

/// A labelled drop-down list. `options` are values with their texts; `value` is the chosen one; `choose` is called with a newly
/// chosen one.
#[component]
pub fn Choice(
    label: &'static str,
    options: Vec<(String, String)>,
    #[prop(into)] value: Signal<String>,
    choose: impl Fn(String) + 'static,
) -> impl IntoView {
    let options = options.into_iter().map(|(key, words)| {
        let chosen = key.clone();
        view! { <option value=key selected=move || value.get() == chosen>{words}</option> }
    });
    view! {
        <label class="choice">
            <span>{label}</span>
            <select prop:value=value on:change:target=move |event| choose(event.target().value())>{options.collect_view()}</select>
        </label>
    }
}
