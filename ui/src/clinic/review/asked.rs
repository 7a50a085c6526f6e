//! A question that the clinician answers for a proposal.

use leptos::prelude::*;
use words::{Key, Words};

/// A list of answers, at first without one.
#[component]
pub fn Asked(
    words: Words,
    label: &'static str,
    options: Vec<(String, String)>,
    choose: impl Fn(String) + 'static,
) -> impl IntoView {
    let options = options.into_iter().map(|(value, text)| view! { <option value=value>{text}</option> });
    view! {
        <label class="asked-here">
            <span>{label}</span>
            <select on:change:target=move |event| choose(event.target().value())>
                <option value="">{words.text(Key::ReviewNotAnswered)}</option>
                {options.collect_view()}
            </select>
        </label>
    }
}
